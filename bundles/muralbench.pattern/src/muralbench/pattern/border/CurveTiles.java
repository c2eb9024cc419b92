// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.List;
import muralbench.pattern.border.Sequence.Step;
import muralbench.pattern.symmetry.Isometry;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;

/**
 * Lays a band on a curve. Pieces are made with the centre at (0, 0) and the middle of the arc up, and then moved to
 * the wall; right ends are mirror images of left ends.
 */
public final class CurveTiles {
  private final CurveLayout layout;
  private final Sequence sequence;
  private final Wedges wedges;
  private final Springing springing;
  private final Motion placed;
  private final List<CurveTile> tiles = new ArrayList<>();

  private CurveTiles(CurveLayout layout, Sequence sequence) {
    this.layout = layout;
    this.sequence = sequence;
    wedges = layout.pieces();
    Curve curve = layout.border().curve();
    springing = curve.legs() ? Springing.of(curve, layout.border().row().width(), layout.move()) : null;
    placed = Motion.turn(Math.toDegrees(curve.middle()) - 90, Vec.ZERO).then(Motion.shift(curve.centre()));
  }

  /**
   * All pieces of a band on a curve. The sequence runs on from the left leg over the arc into the right leg, where
   * each of the three holds whole repeats.
   *
   * @throws IllegalArgumentException if the sequence is not as long as the row's repeat
   */
  public static List<CurveTile> lay(CurveLayout layout, Sequence sequence) {
    if (sequence.repeat() != layout.border().row().repeat()) {
      throw new IllegalArgumentException("a sequence of " + sequence.repeat() + " tiles");
    }
    CurveTiles band = new CurveTiles(layout, sequence);
    band.leftLeg();
    band.arc();
    band.rightLeg();
    return List.copyOf(band.tiles);
  }

  private void arc() {
    for (int i = 0; i < layout.wedges(); i++) {
      double angle = middleOf(i);
      add(BorderPiece.WEDGE, i, angle, middle(angle), wedge(i, angle));
    }
  }

  /** The angle of the middle of a piece from the crown to the left, radians; on a circle the first is at the crown. */
  private double middleOf(int index) {
    if (layout.border().curve().full()) {
      return -index * wedges.angle();
    }
    return (layout.wedges() - 1 - 2 * index) * wedges.angle() / 2;
  }

  private Vec middle(double angle) {
    return at(angle, (wedges.outer() + wedges.inner()) / 2);
  }

  private static Vec at(double angle, double radius) {
    return new Vec(-radius * Math.sin(angle), radius * Math.cos(angle));
  }

  private Contour wedge(int index, double angle) {
    double outer = wedges.halfAngle(wedges.outer());
    double inner = wedges.halfAngle(wedges.inner());
    double left = angle + inner;
    double right = angle - inner;
    if (springing != null && index == 0) {
      left = Springing.angle(springing.arcInner(layout.joint()));
    }
    if (springing != null && index == layout.wedges() - 1) {
      right = -Springing.angle(springing.arcInner(layout.joint()));
    }
    Arc rim = Arc.circular(Vec.ZERO, wedges.outer(), Math.PI / 2 + angle - outer, 2 * outer);
    Arc hollow = Arc.circular(Vec.ZERO, wedges.inner(), Math.PI / 2 + left, right - left);
    return new Contour(List.of(rim, new Line(rim.end(), hollow.start()), hollow, new Line(hollow.end(), rim.start())));
  }

  private void leftLeg() {
    List<Contour> faces = springing == null ? List.of() : legFaces();
    for (int i = 0; i < faces.size(); i++) {
      leg(faces.get(i), i, i - cutFeet(), Math.PI / 2, false);
    }
  }

  private void rightLeg() {
    List<Contour> faces = springing == null ? List.of() : legFaces();
    for (int i = faces.size() - 1; i >= 0; i--) {
      leg(mirrored(faces.get(i)), i, faces.size() - 1 - i, -Math.PI / 2, true);
    }
  }

  private int cutFeet() {
    return layout.foot() > 0 ? 1 : 0;
  }

  private void leg(Contour face, int fromFoot, int place, double angle, boolean right) {
    boolean cut = fromFoot == 0 && layout.foot() > 0;
    boolean slanted = fromFoot == layout.legTiles() + cutFeet() - 1 && Math.abs(springing.slope()) > LeastHarm.NEAR;
    Box box = face.box();
    double length = cut ? layout.border().row().length() : layout.legTile();
    // The outer edge is whole; of a cut foot the upper part is left.
    double top = outerTop(face, right);
    Vec middle = new Vec(box.centre().x(), top - length / 2);
    add(cut ? BorderPiece.CUT : slanted ? BorderPiece.MITRE : BorderPiece.WHOLE, place, angle, middle, face);
  }

  private static double outerTop(Contour face, boolean right) {
    Box box = face.box();
    return face.segments().stream().map(segment -> segment.start())
        .filter(point -> point.x() == (right ? box.maxX() : box.minX())).mapToDouble(Vec::y).max().orElseThrow();
  }

  /** The faces of the left leg from its foot up. */
  private List<Contour> legFaces() {
    double left = springing.outer().x();
    double right = springing.inner().x();
    double bottom = layout.border().curve().footHeight() - layout.border().curve().centre().y();
    List<Contour> faces = new ArrayList<>();
    for (int i = 0; i < layout.legTiles() + cutFeet(); i++) {
      double top = bottom + (i == 0 && layout.foot() > 0 ? layout.foot() : layout.legTile());
      double innerTop = top - (i == layout.legTiles() + cutFeet() - 1 ? springing.slope() : 0);
      faces.add(Contour.polygon(List.of(new Vec(left, bottom), new Vec(right, bottom), new Vec(right, innerTop),
          new Vec(left, top))));
      bottom = top + layout.joint();
    }
    return faces;
  }

  private static Contour mirrored(Contour face) {
    return Contour.polygon(face.points(1).stream().map(point -> new Vec(-point.x(), point.y())).toList())
        .counterClockwise();
  }

  private void add(BorderPiece piece, int place, double angle, Vec middle, Contour face) {
    Step step = sequence.at(place);
    BandRow row = layout.border().row();
    Isometry drawn = step.turn().on(new Box(-row.length() / 2, -row.width() / 2, row.length() / 2, row.width() / 2));
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    Isometry onCurve = drawn.then(new Isometry(cos, -sin, sin, cos, middle));
    Isometry onWall = onCurve.then(new Isometry(placed.cos(), -placed.sin(), placed.sin(), placed.cos(), placed.shift()));
    double degrees = Math.toDegrees(angle + layout.border().curve().middle()) - 90 + 90 * step.turn().quarters();
    tiles.add(new CurveTile(tiles.size() + 1, piece, step.motif(), Math.floorMod(place, sequence.repeat()),
        step.turn().mirrored(), degrees, onWall, face.moved(placed).counterClockwise()));
  }
}
