// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.geometry;

import muralbench.model.LevelLineOutline;
import muralbench.model.LevelStation;
import muralbench.model.MeasuredOutline;
import muralbench.model.MuralFactory;
import muralbench.model.Outline;

/** Outlines from site measurements. They can be moved; only measuring again changes their size. */
public final class MeasuredShapes {
  private static final MuralFactory MAKE = MuralFactory.eINSTANCE;

  private MeasuredShapes() {}

  /** A wall with the sides and diagonals of a frame. */
  public static Outline measured(Frame frame) {
    MeasuredOutline wall = MAKE.createMeasuredOutline();
    double diagonal = Frame.clean(Math.hypot(frame.width(), frame.height()));
    wall.setX(frame.x());
    wall.setY(frame.y());
    wall.setBottom(frame.width());
    wall.setRight(frame.height());
    wall.setTop(frame.width());
    wall.setLeft(frame.height());
    wall.setRising(diagonal);
    wall.setFalling(diagonal);
    return wall;
  }

  /** A level line at half the height of a frame, with stations at its ends. */
  public static Outline levelLine(Frame frame) {
    LevelLineOutline line = MAKE.createLevelLineOutline();
    double half = Frame.clean(frame.height() / 2);
    line.setX(frame.x());
    line.setY(Frame.clean(frame.y() + half));
    line.getStations().add(station(0, half));
    line.getStations().add(station(frame.width(), half));
    return line;
  }

  private static LevelStation station(double along, double half) {
    LevelStation station = MAKE.createLevelStation();
    station.setAlong(along);
    station.setDown(half);
    station.setUp(half);
    return station;
  }

  /** Moves an outline from site measurements along with its frame; stretching leaves it as it is. */
  static void move(Outline outline, Frame from, Frame to) {
    double dx = from.sameSize(to) ? to.x() - from.x() : 0;
    double dy = from.sameSize(to) ? to.y() - from.y() : 0;
    if (outline instanceof MeasuredOutline wall) {
      wall.setX(Frame.clean(wall.getX() + dx));
      wall.setY(Frame.clean(wall.getY() + dy));
    } else if (outline instanceof LevelLineOutline line) {
      line.setX(Frame.clean(line.getX() + dx));
      line.setY(Frame.clean(line.getY() + dy));
    }
  }
}
