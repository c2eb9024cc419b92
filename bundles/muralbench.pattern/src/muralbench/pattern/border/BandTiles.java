// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.pattern.border.Sequence.Step;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/**
 * Lays a band: from the numbers of a layout to tiles on the wall. Rows come from the outer edge inwards; in each row
 * the tiles run clockwise from the lower left corner. On every side the sequence starts anew at the corner; with
 * {@linkplain Corner#MIRRORED mirrored} corners every other side is the mirror image of the one before. A cut end
 * shows the part of the neighbouring repeat that would lie there.
 */
public final class BandTiles {
  private static final Messages TEXTS = Messages.of(BandTiles.class);

  private final BandLayout layout;
  private final List<BorderTile> tiles = new ArrayList<>();
  private int row;
  private RowMotifs motifs;
  private int number;

  private BandTiles(BandLayout layout) {
    this.layout = layout;
  }

  /**
   * All tiles of a band.
   *
   * @param motifs what is painted on each row, from the outer edge inwards
   * @throws InputException if there is not one sequence per row, or a sequence is not as long as the row's repeat
   */
  public static List<BorderTile> lay(BandLayout layout, List<RowMotifs> motifs) throws InputException {
    check(layout.border().rows(), motifs);
    BandTiles band = new BandTiles(layout);
    for (int row = 0; row < motifs.size(); row++) {
      band.row(row, motifs.get(row));
    }
    return List.copyOf(band.tiles);
  }

  private static void check(List<BandRow> rows, List<RowMotifs> motifs) throws InputException {
    if (rows.size() != motifs.size()) {
      throw refused("/rows", "motifs.count", "rows", rows.size(), "motifs", motifs.size());
    }
    for (int i = 0; i < rows.size(); i++) {
      int steps = motifs.get(i).run().repeat();
      if (!rows.get(i).plain() && steps != rows.get(i).repeat()) {
        throw refused("/rows/" + i + "/repeat", "motifs.repeat", "repeat", rows.get(i).repeat(), "steps", steps);
      }
    }
  }

  private static InputException refused(String place, String key, Object... values) {
    return new InputException(place, TEXTS.text(key, values), TEXTS.text(key + ".remedy", values));
  }

  private void row(int index, RowMotifs painted) {
    row = index;
    motifs = painted;
    number = 0;
    List<BandSide> sides = layout.rowPath(index).sides();
    for (int i = 0; i < sides.size(); i++) {
      if (layout.border().corner().ownTile() && sides.get(i).start() != BandEnd.FREE) {
        corner(i, sides.get(i));
      }
      side(i, sides.get(i));
    }
  }

  private void corner(int side, BandSide of) {
    double size = layout.border().rows().get(row).cornerSize();
    boolean inner = of.start() == BandEnd.REFLEX;
    double from = inner ? -size : 0;
    add(side, 0, BorderPiece.CORNER, inner ? motifs.innerCorner() : motifs.corner(), -1,
        TileTurn.quarter(of.quarters()), box(of, from, from + size, size), face(of, from, from + size, size));
  }

  private void side(int index, BandSide of) {
    Border border = layout.border();
    RunLayout run = layout.run(row, index);
    boolean back = border.corner() == Corner.MIRRORED && index % 2 == 1;
    Sequence sequence = back ? motifs.run().mirrored() : motifs.run();
    EndTake start = EndTake.of(border, row, of, true);
    double way = start.fixed() + start.joints() * run.joint();
    int last = run.pieces();
    int place = run.end() > 0 ? -1 - run.outside(sequence.repeat()) : 0;
    for (int position = 1; position <= last; position++) {
      boolean cut = run.end() > 0 && (position == 1 || position == last);
      boolean centre = run.centre() > 0 && position == 1 + (run.whole() + (run.end() > 0 ? 2 : 0)) / 2;
      double length = centre ? run.centre() : cut ? run.end() : run.tile();
      double from = cut && position == 1 ? way + length - run.tile() : way;
      double to = centre ? way + length : from + run.tile();
      Spot spot = new Spot(index, of, position, way, way + length, from, to);
      if (centre) {
        put(spot, BorderPiece.CENTRE, motifs.centre(), -1, TileTurn.AS_DRAWN, last);
      } else {
        Step step = sequence.at(place);
        put(spot, cut ? BorderPiece.CUT : BorderPiece.WHOLE, step.motif(),
            Math.floorMod(back ? -1 - place : place, sequence.repeat()), step.turn(), last);
        place++;
      }
      way += length + run.joint();
    }
  }

  /** A place on a side: the face from {@code start} to {@code end}, the whole tile from {@code from} to {@code to}. */
  private record Spot(int side, BandSide of, int position, double start, double end, double from, double to) {}

  private void put(Spot spot, BorderPiece piece, String motif, int step, TileTurn turn, int last) {
    double width = layout.border().rows().get(row).width();
    boolean mitred = layout.border().corner() == Corner.MITRED;
    BandSide of = spot.of();
    double deepStart = spot.start() + slant(mitred && spot.position() == 1, of.start(), width);
    double deepEnd = spot.end() - slant(mitred && spot.position() == last, of.end(), width);
    double highStart = spot.start() + (deepStart < spot.start() ? width : 0);
    double highEnd = spot.end() - (deepEnd > spot.end() ? width : 0);
    // At an inner corner the cut begins a row's width inside the tile and ends at its edge.
    Contour face = quadrilateral(of, highStart, Math.max(deepStart, spot.start()), highEnd,
        Math.min(deepEnd, spot.end()), width);
    boolean slanted = deepStart != spot.start() || deepEnd != spot.end();
    add(spot.side(), spot.position(), slanted ? BorderPiece.MITRE : piece, motif, step,
        turn.then(TileTurn.quarter(of.quarters())), box(of, spot.from(), spot.to(), width), face);
  }

  private static double slant(boolean mitred, BandEnd end, double width) {
    if (!mitred || end == BandEnd.FREE) {
      return 0;
    }
    return end == BandEnd.CONVEX ? width : -width;
  }

  private void add(int side, int position, BorderPiece piece, String motif, int step, TileTurn turn, Box cell,
      Contour face) {
    number++;
    tiles.add(new BorderTile(row + 1, number, side + 1, position, piece, motif, step, turn, cell, face));
  }

  private static Box box(BandSide of, double from, double to, double depth) {
    return Box.of(of.at(from, 0), of.at(to, depth));
  }

  private static Contour face(BandSide of, double from, double to, double depth) {
    return quadrilateral(of, from, from, to, to, depth);
  }

  /** The face between two ways at the outer and two at the inner edge; what shrinks to a point is left out. */
  private static Contour quadrilateral(BandSide of, double outerStart, double innerStart, double outerEnd,
      double innerEnd, double depth) {
    List<Vec> corners = new ArrayList<>();
    for (Vec corner : List.of(of.at(outerStart, 0), of.at(outerEnd, 0), of.at(innerEnd, depth),
        of.at(innerStart, depth))) {
      if (corners.isEmpty() || corner.distance(corners.get(corners.size() - 1)) > LeastHarm.NEAR) {
        corners.add(corner);
      }
    }
    return Contour.polygon(corners).counterClockwise();
  }
}
