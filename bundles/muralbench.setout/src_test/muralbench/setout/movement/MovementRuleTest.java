// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** TCNA Handbook EJ171 as published by the trade; lengths in inches. */
class MovementRuleTest {
  private static final double IN = 25.4;
  private static final double FOOT = 12 * IN;

  @ParameterizedTest
  @CsvSource({"interior-dry, 25", "interior-wet, 12", "exterior, 12", "exterior-frost, 12"})
  void allowsTheGreatestPublishedSpacing(String exposure, double feet) {
    assertEquals(feet * FOOT, MovementRule.of(exposure, "wall").greatestSpacing(), 1e-9);
  }

  /** 3/8 in at 8 ft, 1/2 in at 12 ft; the handbook's own example is 115 °F: 1/16 in more. Between them: wider. */
  @ParameterizedTest
  @CsvSource({"8, 100, 0.375", "8, 130, 0.5", "12, 100, 0.5", "12, 115, 0.5625", "12, 130, 0.625", "12, 145, 0.6875",
      "8.1, 60, 0.5", "12, 101, 0.5625", "12, 116, 0.625"})
  void widensOutdoorsWithSpacingAndSwing(double feet, double swing, double inches) {
    assertEquals(inches * IN, MovementRule.of("exterior", "wall").leastWidth(feet * FOOT, swing, IN / 8), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"wall, 0.125, 0.125, 0.25", "wall, 0.3125, 0.125, 0.3125", "floor, 0.125, 0.25, 0.25",
      "floor, 0.375, 0.375, 0.375"})
  void isNarrowerIndoors(String surface, double joint, double least, double width) {
    MovementRule rule = MovementRule.of("interior-dry", surface);
    assertEquals(least * IN, rule.leastWidth(25 * FOOT, 140, joint * IN), 1e-9);
    assertEquals(width * IN, rule.width(25 * FOOT, 140, joint * IN), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"30, 2", "12, 0", "12.01, 1", "24, 1", "0.5, 0"})
  void countsBaysLessOne(double feet, int joints) {
    assertEquals(joints, MovementRule.of("exterior", "wall").fewest(feet * FOOT));
  }
}
