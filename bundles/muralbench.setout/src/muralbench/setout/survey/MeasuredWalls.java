// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.survey;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.setout.geometry.Vec;

/** The two usual ways to take up a wall, made ready for {@link Survey}. */
public final class MeasuredWalls {
  /**
   * Four sides and two diagonals, mm, all above 0.
   *
   * @param bottom from the lower left to the lower right corner
   * @param right from the lower right to the upper right corner
   * @param top from the upper right to the upper left corner
   * @param left from the upper left to the lower left corner
   * @param rising diagonal from the lower left to the upper right corner
   * @param falling diagonal from the upper left to the lower right corner
   */
  public record FourSides(double bottom, double right, double top, double left, double rising, double falling) {}

  /**
   * One station on the level line.
   *
   * @param along distance from the left end of the line, mm
   * @param down from the line down to the lower edge, mm
   * @param up from the line up to the upper edge, mm
   */
  public record Station(double along, double down, double up) {}

  private MeasuredWalls() {}

  /**
   * The wall of four sides and two diagonals, corners counter-clockwise from the lower left one.
   *
   * @param lowerLeft where the lower left corner is
   * @param rise how much higher the lower right corner is than the lower left one, by the level, mm
   * @param accuracy what the tape is good for, mm
   * @throws InputException if no figure has these sides
   */
  public static AdjustedWall fourSides(FourSides wall, Vec lowerLeft, double rise, double accuracy)
      throws InputException {
    List<Measurement> measurements = List.of(new Measurement.Tape("bottom", 0, 1, wall.bottom()),
        new Measurement.Tape("right", 1, 2, wall.right()), new Measurement.Tape("top", 2, 3, wall.top()),
        new Measurement.Tape("left", 3, 0, wall.left()), new Measurement.Tape("rising", 0, 2, wall.rising()),
        new Measurement.Tape("falling", 3, 1, wall.falling()));
    checkTriangle("rising", wall.bottom(), wall.right(), wall.rising(), accuracy);
    checkTriangle("rising", wall.top(), wall.left(), wall.rising(), accuracy);
    checkTriangle("falling", wall.bottom(), wall.left(), wall.falling(), accuracy);
    checkTriangle("falling", wall.top(), wall.right(), wall.falling(), accuracy);
    double tilt = Math.asin(Math.max(-1, Math.min(1, rise / wall.bottom())));
    Vec along = new Vec(Math.cos(tilt), Math.sin(tilt));
    Vec up = new Vec(-along.y(), along.x());
    Vec lowerRight = lowerLeft.plus(along.times(wall.bottom()));
    Vec upperRight = apex(lowerLeft, along, up, wall.bottom(), wall.rising(), wall.right());
    Vec upperLeft = apex(lowerLeft, along, up, wall.bottom(), wall.left(), wall.falling());
    AdjustedWall level = Survey.adjust(turned(List.of(lowerLeft, lowerRight, upperRight, upperLeft), lowerLeft, -tilt),
        measurements, accuracy);
    return new AdjustedWall(turned(level.corners(), lowerLeft, tilt), level.misfits(), level.spare(), accuracy);
  }

  private static List<Vec> turned(List<Vec> points, Vec about, double angle) {
    List<Vec> turned = new ArrayList<>();
    for (Vec point : points) {
      Vec from = point.minus(about);
      turned.add(about.plus(new Vec(Math.cos(angle) * from.x() - Math.sin(angle) * from.y(),
          Math.sin(angle) * from.x() + Math.cos(angle) * from.y())));
    }
    return turned;
  }

  /** The point above a base at given distances from its two ends. */
  private static Vec apex(Vec start, Vec along, Vec up, double base, double fromStart, double fromEnd) {
    double x = (base * base + fromStart * fromStart - fromEnd * fromEnd) / (2 * base);
    double y = Math.sqrt(Math.max(1, fromStart * fromStart - x * x));
    return start.plus(along.times(x)).plus(up.times(y));
  }

  private static void checkTriangle(String diagonal, double one, double other, double across, double accuracy)
      throws InputException {
    double slack = Survey.SUSPECT * accuracy;
    if (across > one + other + slack || one > across + other + slack || other > across + one + slack) {
      Messages texts = Messages.of(MeasuredWalls.class);
      throw new InputException(diagonal, texts.text("survey.triangle", "diagonal", texts.text("survey." + diagonal)),
          texts.text("survey.triangle.remedy"));
    }
  }

  /**
   * The wall of a chain of stations along a level line: the lower edge from left to right, then the upper edge back.
   *
   * @param leftEnd the left end of the level line
   * @throws InputException if there are fewer than two stations, or they do not go to the right, or an upper edge is not
   *     above the lower one
   */
  public static List<Vec> levelLine(List<Station> stations, Vec leftEnd) throws InputException {
    Messages texts = Messages.of(MeasuredWalls.class);
    if (stations.size() < 2) {
      throw new InputException("", texts.text("survey.stations"), texts.text("survey.stations.remedy"));
    }
    List<Vec> corners = new ArrayList<>();
    double before = Double.NEGATIVE_INFINITY;
    for (Station station : stations) {
      if (!(station.along() > before) || !(station.up() + station.down() > 0)) {
        throw new InputException("", texts.text("survey.station", "number", corners.size() + 1),
            texts.text("survey.station.remedy"));
      }
      before = station.along();
      corners.add(leftEnd.plus(new Vec(station.along(), -station.down())));
    }
    for (int i = stations.size() - 1; i >= 0; i--) {
      corners.add(leftEnd.plus(new Vec(stations.get(i).along(), stations.get(i).up())));
    }
    return corners;
  }
}
