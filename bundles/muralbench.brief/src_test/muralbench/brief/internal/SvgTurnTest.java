// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import muralbench.brief.internal.svg.SvgOutline;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SvgTurnTest {
  /** Doubled, with user point (10, 100) as the point 0, 0 of the wall. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "M 10 100 L 15 90 l 1 -2|M 0 0 L 10 20 l 2 4", " m 10 100 1 2 h 3 v -4 z|m 0 0 2 -4 h 6 v 8 z",
    "M10 100 H 20 V 80 Z m 1 1|M 0 0 H 20 V 40 Z m 2 -2",
    "M10 100 A 5 6 30 0 1 20 90 a 1 2 -30 1 0 3 4|M 0 0 A 10 12 -30 0 0 20 20 a 2 4 30 1 1 6 -8",
    "M10 100 C 11 99 12 98 13 97 s 1 1 2 2 Q 10 100 10 99 t 1 0|M 0 0 C 2 2 4 4 6 6 s 2 -2 4 -4 Q 0 0 0 2 t 2 0"})
  void aPathWithYDownIsTurnedUp(String data, String turned) throws Exception {
    assertEquals(turned, PathScale.turnedUp(new SvgOutline(data, BigDecimal.valueOf(2), BigDecimal.TEN,
        BigDecimal.valueOf(100)), "/p"));
  }
}
