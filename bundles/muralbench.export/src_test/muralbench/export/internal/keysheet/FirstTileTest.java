// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import muralbench.setout.BondSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PieceKind;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;

class FirstTileTest {
  @Test
  void standsInTheLowestCourseWithWholeTilesNearTheMiddle() throws Exception {
    FirstTile first = FirstTile.of(TrialWalls.round());
    assertEquals(PieceKind.WHOLE, first.piece().kind());
    assertEquals(270 * 25.4, first.piece().box().centre().x(), 3.1 * 25.4);
  }

  @Test
  void datumIsItsLowerLeftCorner() throws Exception {
    FirstTile first = FirstTile.of(TrialWalls.splash());
    assertEquals(first.piece().box().minX(), first.datum().x(), 1e-9);
    assertEquals(first.piece().box().minY(), first.datum().y(), 1e-9);
  }

  @Test
  void ringsStartWithTheDiscInTheirMiddle() throws Exception {
    FirstTile first = FirstTile.of(TrialWalls.rings());
    assertEquals("G-01-01", first.piece().key());
    assertEquals(0, first.datum().distance(new Vec(380 * 25.4, 60 * 25.4)), 1e-6);
  }

  @Test
  void givenStartIsTaken() throws Exception {
    Vec start = new Vec(12.25 * 25.4, 12.25 * 25.4);
    PanelSetOut panel = TrialWalls.panel("P", "", 6, TrialWalls.rectangle(0, 0, 48, 36), BondSpec.grid(),
        new OriginSpec.At(start));
    assertEquals(0, FirstTile.of(panel).datum().distance(start), 1e-6);
  }
}
