// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.model.LevelLineOutline;
import muralbench.model.LevelStation;
import muralbench.model.MeasuredOutline;
import muralbench.model.Outline;
import muralbench.setout.geometry.Vec;
import muralbench.setout.survey.AdjustedWall;
import muralbench.setout.survey.MeasuredWalls;
import muralbench.setout.survey.MeasuredWalls.FourSides;
import muralbench.setout.survey.MeasuredWalls.Station;

/**
 * Makes out the walls that were measured on site.
 *
 * @param ranges refuses values that cannot be
 */
record SurveyReader(Ranges ranges) {
  /** The wall behind an outline; none if it was not measured on site. */
  Optional<AdjustedWall> survey(Outline outline) throws InputException {
    try {
      if (outline instanceof MeasuredOutline measured) {
        return Optional.of(fourSides(measured));
      }
      return outline instanceof LevelLineOutline line ? Optional.of(levelLine(line)) : Optional.empty();
    } catch (InputException e) {
      // The survey knows which measurement it was, but not of which panel or opening.
      throw new InputException(ranges.place(), e.problem(), e.remedy(), e);
    }
  }

  private AdjustedWall fourSides(MeasuredOutline measured) throws InputException {
    Vec corner = new Vec(ranges.position("x", measured.getX()), ranges.position("y", measured.getY()));
    FourSides sides = new FourSides(ranges.positive("bottom", measured.getBottom()),
        ranges.positive("right", measured.getRight()), ranges.positive("top", measured.getTop()),
        ranges.positive("left", measured.getLeft()), ranges.positive("rising", measured.getRising()),
        ranges.positive("falling", measured.getFalling()));
    double accuracy = ranges.positive("accuracy", measured.getAccuracy());
    double rise = ranges.position("rise", measured.getRise());
    if (Math.abs(rise) >= sides.bottom()) {
      throw ranges.error("read.rise", "rise", ranges.length(rise), "bottom", ranges.length(sides.bottom()));
    }
    return MeasuredWalls.fourSides(sides, corner, rise, accuracy);
  }

  private AdjustedWall levelLine(LevelLineOutline line) throws InputException {
    Vec end = new Vec(ranges.position("line.x", line.getX()), ranges.position("line.y", line.getY()));
    List<Station> stations = new ArrayList<>();
    for (LevelStation station : line.getStations()) {
      stations.add(new Station(ranges.position("along", station.getAlong()), ranges.position("down", station.getDown()),
          ranges.position("up", station.getUp())));
    }
    return AdjustedWall.unchecked(MeasuredWalls.levelLine(stations, end));
  }
}
