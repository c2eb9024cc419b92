// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import muralbench.base.length.LengthUnit;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;

class CurveStationsTest {
  private static final Box TILE = new Box(0, 0, 152.4, 152.4);

  private static final Datum FROM_LOWER_LEFT = new Datum(TILE, false, false);

  @Test
  void anInchTileHasALineEveryInch() {
    assertEquals(25.4, CurveStations.step(TILE, LengthUnit.INCH), 1e-12);
    assertEquals(25, CurveStations.step(TILE, LengthUnit.MILLIMETRE), 1e-12);
    assertEquals(200, CurveStations.step(new Box(0, 0, 600, 1200), LengthUnit.MILLIMETRE), 1e-12);
  }

  @Test
  void stationsLieOnTheCircleAtWholeInches() {
    Arc arc = Arc.circular(new Vec(70, -100), 200, Math.toRadians(60), Math.toRadians(50));
    List<Vec> stations = CurveStations.of(arc, 25.4, FROM_LOWER_LEFT);
    assertEquals(2 + 6, stations.size(), stations.toString());
    for (Vec station : stations.subList(1, stations.size() - 1)) {
      assertEquals(Math.rint(station.x() / 25.4), station.x() / 25.4, 1e-9);
      // The equation of the circle, not the code that walks it.
      assertEquals(-100 + Math.sqrt(200 * 200 - Math.pow(station.x() - 70, 2)), station.y(), 1e-9);
    }
  }

  @Test
  void aSteepCurveIsMeasuredFromTheLowerEdge() {
    Arc arc = Arc.circular(new Vec(-100, 60), 200, Math.toRadians(-15), Math.toRadians(30));
    List<Vec> stations = CurveStations.of(arc, 25.4, FROM_LOWER_LEFT);
    for (Vec station : stations.subList(1, stations.size() - 1)) {
      assertEquals(Math.rint(station.y() / 25.4), station.y() / 25.4, 1e-9);
    }
    assertTrue(stations.size() > 4);
  }

  @Test
  void stationsStandAtWholeInchesFromTheEdgeThatIsMeasuredFrom() {
    Arc arc = Arc.circular(new Vec(70, -100), 200, Math.toRadians(60), Math.toRadians(50));
    List<Vec> stations = CurveStations.of(arc, 25.4, new Datum(new Box(0, 0, 150, 150), true, false));
    for (Vec station : stations.subList(1, stations.size() - 1)) {
      assertEquals(Math.rint((150 - station.x()) / 25.4), (150 - station.x()) / 25.4, 1e-9);
    }
    assertTrue(stations.get(0).x() > stations.get(stations.size() - 1).x());
  }

  @Test
  void stationsRunFromLeftToRight() {
    Arc arc = Arc.circular(new Vec(70, -100), 200, Math.toRadians(60), Math.toRadians(50));
    List<Vec> stations = CurveStations.of(arc, 25.4, FROM_LOWER_LEFT);
    assertTrue(stations.get(0).x() < stations.get(stations.size() - 1).x());
  }
}
