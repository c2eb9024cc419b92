// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.cut;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import muralbench.base.length.LengthUnit;
import muralbench.setout.BondSpec;
import muralbench.setout.MuralSetOut;
import muralbench.setout.MuralSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.Piece;
import muralbench.setout.PieceKind;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.Cell;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;

/** Pieces for the tests, made without a set-out: a face, what is left of it and where it lies on the wall. */
final class Cuts {
  private final List<Piece> pieces = new ArrayList<>();
  private final TileSpec tile;

  Cuts(double width, double height) {
    tile = new TileSpec("T", width, height, 8, 0, -1);
  }

  /** Adds a piece given on its face; key is its number. */
  Cuts add(Contour face, Contour outline, Motion placed, Contour... holes) {
    return add(PieceKind.TRIMMED, "T", face, outline, placed, holes);
  }

  Cuts add(PieceKind kind, String tileId, Contour face, Contour outline, Motion placed, Contour... holes) {
    List<Contour> onWall = List.of(holes).stream().map(hole -> hole.moved(placed)).toList();
    double area = outline.area() - List.of(holes).stream().mapToDouble(Contour::area).sum();
    int number = pieces.size() + 1;
    pieces.add(new Piece("P-" + number, 1, number, kind, tileId, area, outline.moved(placed), onWall,
        new Cell(0, number, face), placed));
    return this;
  }

  List<CutGroup> groups() {
    Contour wall = Contour.rectangle(0, 0, 1000, 1000);
    PanelSpec panel = new PanelSpec("P", "", "wall", "fixed", tile, 3, 0, wall, List.of(), BondSpec.grid(),
        new OriginSpec.Balanced());
    MuralSpec mural = new MuralSpec("", "", "", LengthUnit.INCH, "interior-dry", List.of(panel));
    return CutList.of(new MuralSetOut(mural, List.of(new PanelSetOut(panel, Vec.ZERO, 1e6, List.of(wall), pieces))));
  }

  /** The groups as lists of keys. */
  List<List<String>> keys() {
    return groups().stream().map(CutGroup::keys).toList();
  }

  /** A shape turned about the middle of the face. */
  static Contour turned(Contour shape, Contour face, double degrees) {
    Box box = face.box();
    return shape.moved(Motion.turn(degrees, box.centre()));
  }

  static Contour polygon(double... coordinates) {
    List<Vec> corners = new ArrayList<>();
    for (int i = 0; i < coordinates.length; i += 2) {
      corners.add(new Vec(coordinates[i], coordinates[i + 1]));
    }
    return Contour.polygon(corners);
  }

  /** A polygon mirrored left to right on a face of the given width, still counter-clockwise. */
  static Contour mirrored(Contour polygon, double width) {
    List<Vec> corners = new ArrayList<>(polygon.points(1).stream().map(p -> new Vec(width - p.x(), p.y())).toList());
    Collections.reverse(corners);
    return Contour.polygon(corners);
  }

  /** A regular polygon about (r, r) with its first side at the bottom. */
  static Contour regular(int corners, double radius) {
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = -Math.PI / 2 - Math.PI / corners + 2 * Math.PI * i / corners;
      points.add(new Vec(radius + radius * Math.cos(angle), radius + radius * Math.sin(angle)));
    }
    return Contour.polygon(points);
  }
}
