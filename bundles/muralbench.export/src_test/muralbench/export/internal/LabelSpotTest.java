// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;

class LabelSpotTest {
  private static final Contour SQUARE = Contour.rectangle(10, 20, 100, 100);

  @Test
  void isTheMiddleOfAWholeTile() {
    LabelSpot spot = LabelSpot.in(SQUARE, List.of(), 4);
    assertEquals(new Vec(60, 70), spot.middle());
    assertEquals(25, spot.height(), 1e-9);
  }

  @Test
  void standsBesideAHole() {
    Contour hole = Contour.circle(new Vec(60, 70), 30).reversed();
    LabelSpot spot = LabelSpot.in(SQUARE, List.of(hole), 3);
    // Below or above the hole there are 20 mm, and the hole curves away from the label.
    assertTrue(spot.height() > 19 && spot.height() < 21, spot.toString());
    assertTrue(Math.abs(spot.middle().y() - 70) > 35, spot.toString());
  }

  @Test
  void fillsTheWiderArmOfAnAngle() {
    Contour angle = Contour.polygon(List.of(new Vec(0, 0), new Vec(100, 0), new Vec(100, 40), new Vec(20, 40),
        new Vec(20, 100), new Vec(0, 100)));
    LabelSpot spot = LabelSpot.in(angle, List.of(), 2);
    assertEquals(40, spot.height(), 0.5);
    assertEquals(20, spot.middle().y(), 0.5);
  }

  @Test
  void aSmallLabelStandsWhereItHasRoomAround() {
    // Half a disc, flat side down: the largest label of these proportions would lie right on the flat side.
    Contour half = new Contour(List.of(new Line(new Vec(-100, 0), new Vec(100, 0)),
        Arc.circular(Vec.ZERO, 100, 0, Math.PI)));
    LabelSpot spot = LabelSpot.roomy(half, List.of(), 6, 10);
    assertEquals(10, spot.height());
    assertTrue(spot.middle().y() > 35, spot.toString());
    assertTrue(LabelSpot.in(half, List.of(), 6).middle().y() < 20);
  }

  @Test
  void aLabelIsAsLargeAsThereIsRoom() {
    assertEquals(LabelSpot.in(SQUARE, List.of(), 4), LabelSpot.roomy(SQUARE, List.of(), 4, 80));
  }

  @Test
  void leavesNoRoomInASliver() {
    Contour sliver = Contour.polygon(List.of(new Vec(0, 0), new Vec(100, 0), new Vec(0, 0.001)));
    assertTrue(LabelSpot.in(sliver, List.of(), 4).height() < 0.001);
  }
}
