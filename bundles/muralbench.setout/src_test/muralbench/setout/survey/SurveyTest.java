// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import muralbench.base.InputException;
import muralbench.setout.geometry.Vec;
import muralbench.setout.survey.MeasuredWalls.FourSides;
import muralbench.setout.survey.MeasuredWalls.Station;
import org.junit.jupiter.api.Test;

class SurveyTest {
  @Test
  void aSquareWallComesOutSquare() throws Exception {
    // Euclid's 3-4-5, a thousandfold.
    AdjustedWall wall = MeasuredWalls.fourSides(new FourSides(4000, 3000, 4000, 3000, 5000, 5000), Vec.ZERO, 0, 1);

    assertEquals(4000, wall.corners().get(2).x(), 1e-6);
    assertEquals(3000, wall.corners().get(2).y(), 1e-6);
    assertEquals(0, wall.outOfSquare(0), 1e-6);
    assertEquals(1, wall.spare());
    assertTrue(wall.suspects().isEmpty());
  }

  @Test
  void aLeaningWallKeepsItsTrueCorners() throws Exception {
    Vec[] real = {new Vec(0, 0), new Vec(2400, 0), new Vec(2412, 1810), new Vec(-6, 1790)};
    AdjustedWall wall = MeasuredWalls.fourSides(new FourSides(real[0].distance(real[1]), real[1].distance(real[2]),
        real[2].distance(real[3]), real[3].distance(real[0]), real[0].distance(real[2]),
        real[3].distance(real[1])), Vec.ZERO, 0, 1.5);

    for (int i = 0; i < 4; i++) {
      assertEquals(0, wall.corners().get(i).distance(real[i]), 1e-6);
    }
    assertEquals(12, wall.outOfSquare(1), 1e-6);
    assertEquals(-20, wall.outOfLevel(2), 1e-6);
  }

  @Test
  void anErrorIsSharedOutByLeastSquares() throws Exception {
    // In a square of side a the one condition is that the diagonals fit the sides. Its slopes are 1/sqrt(2) for each side
    // and -1 for each diagonal (half of each sum), so an error e in one diagonal leaves e/4 on each diagonal and
    // e/(4 sqrt(2)) on each side: worked by hand, to first order.
    double side = 3000;
    double diagonal = side * Math.sqrt(2);
    AdjustedWall wall = MeasuredWalls.fourSides(new FourSides(side, side, side, side, diagonal + 4, diagonal), Vec.ZERO,
        0, 2);

    for (Misfit misfit : wall.misfits()) {
      boolean across = misfit.measurement().name().equals("rising") || misfit.measurement().name().equals("falling");
      assertEquals(across ? 1 : Math.sqrt(0.5), Math.abs(misfit.off()), 0.01, misfit.toString());
    }
    assertFalse(wall.misfits().stream().anyMatch(Misfit::suspect));
  }

  @Test
  void aMeasurementThatCannotBeRightIsFlagged() throws Exception {
    AdjustedWall wall = MeasuredWalls.fourSides(new FourSides(4000, 3000, 4000, 3000, 5040, 5000), Vec.ZERO, 0, 1.5);

    assertTrue(wall.suspects().stream().anyMatch(misfit -> misfit.measurement().name().equals("rising")));
  }

  @Test
  void aFloorThatRisesTurnsTheWall() throws Exception {
    AdjustedWall wall = MeasuredWalls.fourSides(new FourSides(4000, 3000, 4000, 3000, 5000, 5000), new Vec(100, 50), 40,
        1);

    assertEquals(40, wall.outOfLevel(0), 1e-6);
    assertEquals(new Vec(100, 50), wall.corners().get(0));
    assertEquals(5000, wall.corners().get(0).distance(wall.corners().get(2)), 1e-6);
  }

  @Test
  void aDiagonalThatCannotCloseItsTriangleIsRefused() {
    InputException e = assertThrows(InputException.class, () -> MeasuredWalls
        .fourSides(new FourSides(4000, 3000, 4000, 3000, 7100, 5000), Vec.ZERO, 0, 1.5));

    assertEquals("rising", e.place());
  }

  @Test
  void tooFewMeasurementsAreRefused() {
    List<Measurement> two = List.of(new Measurement.Tape("a", 0, 1, 3), new Measurement.Tape("b", 1, 2, 4));

    assertThrows(InputException.class,
        () -> Survey.adjust(List.of(Vec.ZERO, new Vec(3, 0), new Vec(3, 4)), two, 1));
  }

  @Test
  void aChainOnALevelLineGoesRoundTheWall() throws Exception {
    List<Vec> corners = MeasuredWalls.levelLine(List.of(new Station(0, 1000, 1400), new Station(1500, 1012, 1405),
        new Station(3000, 1020, 1390)), new Vec(0, 1000));

    assertEquals(List.of(new Vec(0, 0), new Vec(1500, -12), new Vec(3000, -20), new Vec(3000, 2390),
        new Vec(1500, 2405), new Vec(0, 2400)), corners);
  }

  @Test
  void stationsThatGoBackAreRefused() {
    assertThrows(InputException.class,
        () -> MeasuredWalls.levelLine(List.of(new Station(100, 1, 1), new Station(50, 1, 1)), Vec.ZERO));
    assertThrows(InputException.class, () -> MeasuredWalls.levelLine(List.of(new Station(100, 1, 1)), Vec.ZERO));
  }
}
