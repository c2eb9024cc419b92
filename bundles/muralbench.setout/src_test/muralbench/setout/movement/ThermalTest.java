// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Coefficients from makers' catalogues (porcelain), a ceramics reference (tile), a concrete trade magazine (concrete)
 * and the Forensic Structural Engineering Handbook (brick); the rest is worked out by hand.
 */
class ThermalTest {
  @ParameterizedTest
  @CsvSource({"7e-6, 1.422, 5.69", "8.1e-6, 1.646, 6.58", "9.9e-6, 2.012, 8.05", "7.2e-6, 1.463, 5.85"})
  void growsOverTwelveFeetAndAHundredDegreesFahrenheit(double coefficient, double growth, double width) {
    double grown = Thermal.growth(coefficient, 12 * 304.8, Thermal.celsius(100));
    assertEquals(growth, grown, 0.0005);
    assertEquals(width, Thermal.sealantWidth(grown, 25), 0.005);
  }

  @Test
  void growsOverThreeMetresAndSixtyDegrees() {
    assertEquals(1.260, Thermal.growth(7e-6, 3000, 60), 1e-12);
  }

  @Test
  void needsAsMuchWidthForShrinkingAndLessForABetterSealant() {
    assertEquals(4, Thermal.sealantWidth(-2, 50), 1e-12);
  }

  @Test
  void refusesASealantThatCannotMove() {
    assertThrows(IllegalArgumentException.class, () -> Thermal.sealantWidth(1, 0));
  }
}
