// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.pattern.symmetry.Rational;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Checks that pieces cover a block: none outside, no overlap by geometry, the whole area by exact arithmetic. */
final class BlockChecks {
  private static final Messages MESSAGES = Messages.of(Block.class);
  private static final GeometryFactory FACTORY = new GeometryFactory();
  /** Chords are this near to their arcs, units. */
  private static final double CHORD = 1e-5;
  /** An overlap of straight pieces below this is rounding, square units. */
  private static final double DUST = 1e-9;
  /** An overlap of curved pieces below this is between chords of one arc, square units. */
  private static final double CURVED_DUST = 1e-4;

  private final String block;
  private final int grid;

  BlockChecks(String block, int grid) {
    this.block = block;
    this.grid = grid;
  }

  void check(List<BlockPiece> pieces) throws InputException {
    List<Polygon> shapes = new ArrayList<>();
    Box whole = new Box(0, 0, grid, grid).grown(1e-9);
    for (BlockPiece piece : pieces) {
      if (!whole.holds(piece.contour().box())) {
        throw error("block.leaves", "piece", shapes.size() + 1, "colour", piece.colour(), "grid", grid);
      }
      shapes.add(shape(piece));
      if (!shapes.get(shapes.size() - 1).isValid() || piece.area().value() <= 0) {
        throw error("block.crosses", "piece", shapes.size(), "colour", piece.colour());
      }
    }
    for (int i = 0; i < shapes.size(); i++) {
      for (int j = 0; j < i; j++) {
        overlap(pieces, shapes, j, i);
      }
    }
    covered(pieces, shapes);
  }

  private static Polygon shape(BlockPiece piece) {
    List<Coordinate> corners = new ArrayList<>();
    for (Vec point : piece.contour().points(CHORD)) {
      corners.add(new Coordinate(point.x(), point.y()));
    }
    corners.add(corners.get(0).copy());
    return corners.size() < 4 ? FACTORY.createPolygon() : FACTORY.createPolygon(corners.toArray(Coordinate[]::new));
  }

  private void overlap(List<BlockPiece> pieces, List<Polygon> shapes, int first, int second) throws InputException {
    Envelope both = shapes.get(first).getEnvelopeInternal().intersection(shapes.get(second).getEnvelopeInternal());
    boolean straight = pieces.get(first).contour().straight() && pieces.get(second).contour().straight();
    double dust = straight ? DUST : CURVED_DUST;
    if (both.getArea() <= dust) {
      return;
    }
    Geometry shared = OverlayNGRobust.overlay(shapes.get(first), shapes.get(second), OverlayNG.INTERSECTION);
    if (shared.getArea() > dust) {
      Point at = shared.getInteriorPoint();
      throw error("block.overlap", "first", first + 1, "second", second + 1, "colour", pieces.get(first).colour(),
          "other", pieces.get(second).colour(), "x", number(at.getX()), "y", number(at.getY()));
    }
  }

  /** Without overlaps the block is covered exactly if the areas add up exactly. */
  private void covered(List<BlockPiece> pieces, List<Polygon> shapes) throws InputException {
    ExactArea sum = pieces.stream().map(BlockPiece::area).reduce(ExactArea.NONE, ExactArea::plus);
    Rational wanted = Rational.of((long) grid * grid);
    if (sum.straight().equals(wanted) && sum.round().sign() == 0) {
      return;
    }
    Geometry square = FACTORY.toGeometry(new Envelope(0, grid, 0, grid));
    Geometry union = OverlayNGRobust.union(FACTORY.buildGeometry(shapes));
    Geometry bare = OverlayNGRobust.overlay(square, union, OverlayNG.DIFFERENCE);
    Point at = bare.isEmpty() ? square.getInteriorPoint() : bare.getInteriorPoint();
    throw error("block.bare", "area", number(wanted.value() - sum.value()), "whole", wanted, "x", number(at.getX()),
        "y", number(at.getY()));
  }

  private InputException error(String key, Object... values) {
    return new InputException(block, MESSAGES.text(key, values), MESSAGES.text(key + ".remedy", values));
  }

  private static String number(double value) {
    return BigDecimal.valueOf(Math.rint(value * 1e4) / 1e4 + 0.0).stripTrailingZeros().toPlainString();
  }
}
