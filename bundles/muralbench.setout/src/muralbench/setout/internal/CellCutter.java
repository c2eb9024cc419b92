// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import muralbench.setout.PieceKind;
import muralbench.setout.SetOut;
import muralbench.setout.bond.Cell;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/** Cuts the cells of a bond with the edges of a region. */
final class CellCutter {
  /** A corner points inwards if the sine of its bend is below minus this. */
  private static final double REFLEX = 1e-6;
  /** A curve that leaves its chord by no more than this is straight to anyone who cuts it, mm. */
  private static final double STRAIGHT = 0.01;

  private final CutRegion region;
  private final Motion placed;

  /** A cutter; {@code placed} goes from the bond's coordinates to the wall plane. */
  CellCutter(CutRegion region, Motion placed) {
    this.region = region;
    this.placed = placed;
  }

  /** What is left of the cell, or null if nothing is. */
  CutCell cut(Cell cell) {
    Contour face = cell.face().moved(placed);
    Envelope box = envelope(face);
    if (!region.edgeMeets(box)) {
      return region.holds(EdgeGrid.middle(box)) ? new CutCell(cell, List.of(uncut(face))) : null;
    }
    return cut(cell, face, box);
  }

  /** As {@link #cut}, but null also for a cell that no edge of the region comes near. */
  CutCell cutAtEdge(Cell cell) {
    Contour face = cell.face().moved(placed);
    Envelope box = envelope(face);
    return region.edgeMeets(box) ? cut(cell, face, box) : null;
  }

  private CutCell cut(Cell cell, Contour face, Envelope box) {
    Polygon polygon = Rings.polygon(face, SetOut.CHORD_ERROR);
    Geometry around = region.around(box);
    List<CutCell.Part> parts = new ArrayList<>();
    if (!around.isEmpty()) {
      for (Polygon part : Rings.polygons(TiledRegion.overlay(around, polygon, OverlayNG.INTERSECTION))) {
        if (part.getArea() > SetOut.DUST_AREA) {
          parts.add(part(part, face, polygon.getArea()));
        }
      }
    }
    return parts.isEmpty() ? null : new CutCell(cell, parts);
  }

  /** The box around a face in the wall plane. */
  static Envelope envelope(Contour face) {
    if (!face.straight()) {
      Box around = face.box();
      return new Envelope(around.minX(), around.maxX(), around.minY(), around.maxY());
    }
    Envelope box = new Envelope();
    for (Segment side : face.segments()) {
      box.expandToInclude(side.start().x(), side.start().y());
    }
    return box;
  }

  /** A face that no edge cuts; one with curved sides is still cut to shape from a blank. */
  private static CutCell.Part uncut(Contour face) {
    return new CutCell.Part(face.straight() ? PieceKind.WHOLE : PieceKind.CURVED, face.area(), face, List.of());
  }

  private CutCell.Part part(Polygon part, Contour face, double faceArea) {
    double dust = SetOut.DUST_AREA + (face.straight() ? 0 : SetOut.CHORD_ERROR * face.length());
    if (part.getNumInteriorRing() == 0 && faceArea - part.getArea() <= dust) {
      return uncut(face);
    }
    CurveRestorer known = face.straight() ? region.curves() : region.curves().and(face);
    Contour outline = known.restore(part.getExteriorRing().getCoordinates());
    double area = outline.area();
    List<Contour> holes = new ArrayList<>();
    for (int i = 0; i < part.getNumInteriorRing(); i++) {
      Contour hole = known.restore(part.getInteriorRingN(i).getCoordinates());
      if (hole.area() > SetOut.DUST_AREA) {
        holes.add(hole.reversed());
        area -= hole.area();
      }
    }
    holes.sort(Comparator.comparing(Contour::box, Box.FROM_LEFT));
    return new CutCell.Part(kind(outline, holes), area, outline, holes);
  }

  /** Whether a side leaves its chord by more than a saw could show. */
  private static boolean bent(Segment side) {
    if (side.straight()) {
      return false;
    }
    Vec chord = side.end().minus(side.start());
    double length = chord.length();
    return length < STRAIGHT || Math.abs(chord.cross(side.at(0.5).minus(side.start()))) / length > STRAIGHT;
  }

  private static PieceKind kind(Contour outline, List<Contour> holes) {
    if (!holes.isEmpty()) {
      return PieceKind.PIERCED;
    }
    if (outline.segments().stream().anyMatch(CellCutter::bent)) {
      return PieceKind.CURVED;
    }
    List<Segment> sides = outline.segments();
    for (int i = 0; i < sides.size(); i++) {
      Vec in = sides.get(i).tangent(1);
      Vec out = sides.get((i + 1) % sides.size()).tangent(0);
      if (in.cross(out) < -REFLEX * in.length() * out.length()) {
        return PieceKind.NOTCHED;
      }
    }
    return PieceKind.TRIMMED;
  }
}
