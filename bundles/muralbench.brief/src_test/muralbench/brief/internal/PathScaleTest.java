// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Duration;
import muralbench.base.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PathScaleTest {
  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  /** Grammar of SVG 1.1, section 8.3.9; the compact forms are from its section 8.3.1 and the notes on numbers there. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "M 1 2|M 2 4", "m1,2z|m 2 4 z", "M1 2L3 4|M 2 4 L 6 8", "M 1 2 3 4|M 2 4 6 8", "M1-2l-3-4|M 2 -4 l -6 -8",
    "M.6.5|M 1.2 1", "M 0.6.5|M 1.2 1", "M1e1 2E-1|M 20 0.4", "M1.,2|M 2 4", "M+1+2|M 2 4",
    "M0 0H5V6h7v8|M 0 0 H 10 V 12 h 14 v 16",
    "M0 0H1 2 3|M 0 0 H 2 4 6", "M0 0C1 2 3 4 5 6 7 8 9 10 11 12|M 0 0 C 2 4 6 8 10 12 14 16 18 20 22 24",
    "M0 0c1,2,3,4,5,6s1,2,3,4q1,2,3,4t1,2|M 0 0 c 2 4 6 8 10 12 s 2 4 6 8 q 2 4 6 8 t 2 4",
    "M0 0A1 2 30 0 1 3 4|M 0 0 A 2 4 30 0 1 6 8", "M0 0a25,25 -30 0150,-25|M 0 0 a 50 50 -30 0 1 100 -50",
    "M0 0a1 1 0 00.5.5|M 0 0 a 2 2 0 0 0 1 1", "M0 0A1 1 0 0 1 2 2 1 1 0 1 0 3 3|M 0 0 A 2 2 0 0 1 4 4 2 2 0 1 0 6 6",
    "M0 0zM1 1Z|M 0 0 z M 2 2 Z", "M -0.0 0|M 0 0"})
  void scalesLengthsOnly(String data, String scaled) throws Exception {
    assertEquals(scaled, PathScale.scale(data, TWO, "/p"));
  }

  @Test
  void numbersAreMultipliedExactly() throws Exception {
    assertEquals("M 2.54 0.79375", PathScale.scale("M 0.1 0.03125", new BigDecimal("25.4"), "/p"));
  }

  @Test
  void factorOneLeavesTheTextAlone() throws Exception {
    assertEquals(" M1e0,2\n3 4z ", PathScale.scale(" M1e0,2\n3 4z ", BigDecimal.ONE, "/p"));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
    "L 1 2|1|M or m", "1 2|1|M or m", "~ ~|2|M or m", "M 1|4|at its end", "M|2|at its end", "M 1 2 3|8|at its end",
    "M 1 2 X|7|command letter", "M 1 2 Z 3|9|command letter", "M 1 2 L a b|9|number", "M 1 2,|7|number",
    "M 1 2, L 3 4|8|number", "M 1,,2|5|number", "M 0 0 A 1 1 0 2 0 3 3|15|flag", "M 0 0 A 1 1 0 0|16|at its end",
    "M 0 0 L NaN 1|9|number", "M 0 0 L 1 .|11|number", "M 0 0 é|7|command letter",
    "M 0 0 ſ 1 1 1 1|7|command letter"})
  void saysWhereTheGrammarIsBroken(String data, int character, String expected) {
    InputException e = assertThrows(InputException.class, () -> PathScale.scale(data, TWO, "/p/path"));
    assertEquals("/p/path", e.place());
    assertTrue(e.problem().contains("at character " + character + ":"), e.getMessage());
    assertTrue(e.problem().contains(expected), e.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1e300", "1e999999999999", "1e-400", "9999999999999999"})
  void numbersBeyondAnyWall(String number) {
    InputException e = assertThrows(InputException.class, () -> PathScale.scale("M 0 " + number, TWO, "/p"));
    assertTrue(e.problem().contains("beyond anything"), e.getMessage());
  }

  @Test
  void aPathOfAMillionNumbersEnds() {
    String data = "M 0 0" + " L 1.5 2.5".repeat(500_000);
    assertTimeoutPreemptively(Duration.ofSeconds(60), () -> PathScale.scale(data, TWO, "/p"));
  }
}
