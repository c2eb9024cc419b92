// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.board;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PanelMassTest {
  private static final double IN = 25.4;

  /** Worked by hand: 12 tiles of 8 x 8 in, 8 mm thick, on fibre cement and plywood; 7.93 + 2.03 + 6.43 + 5.57 kg. */
  @Test
  void addsTileAdhesiveAndBoards() {
    double area = 24.25 * 32.375 * IN * IN;
    PanelMass mass = PanelMass.of(12 * 64 * IN * IN, area, 8, PanelMass.TILE, PanelMass.BACKER + PanelMass.PLYWOOD);
    assertEquals(7.93, mass.tile(), 0.005);
    assertEquals(2.03, mass.adhesive(), 0.005);
    assertEquals(6.43 + 5.57, mass.board(), 0.01);
    assertEquals(22.0, mass.total(), 0.05);
  }

  /** Worked by hand: 96 tiles of 6 x 6 x 3/8 in in porcelain, without a board: 59.2 kg. */
  @Test
  void weighsAMuralOnAWall() {
    PanelMass mass = PanelMass.of(96 * 36 * IN * IN, 73.375 * 48.875 * IN * IN, 9.525, PanelMass.PORCELAIN, 0);
    assertEquals(49.91, mass.tile(), 0.005);
    assertEquals(59.2, mass.total(), 0.05);
  }

  /** 18 kg/m² for 9 mm is printed in summaries of BS 5385-1:2018; the others are worked by hand. */
  @ParameterizedTest
  @CsvSource({"9, 2.0, 18", "9.525, 2.35, 22.38", "12.7, 2.35, 29.84"})
  void weighsASquareMetreOfTile(double thickness, double density, double mass) {
    assertEquals(mass, PanelMass.of(1e6, 1e6, thickness, density, 0).tile(), 0.006);
  }
}
