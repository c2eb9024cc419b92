// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.pattern.symmetry.FriezeGroup;
import muralbench.pattern.symmetry.Isometry;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * A band drawn point by point: tiles of 6 by 4 laid without joints, a colour at every whole point of each tile, edges
 * included. Where tiles meet, a point has the colours of all of them; the motif goes on if it is always one.
 */
final class DrawnBand {
  static final int LENGTH = 6;
  static final int WIDTH = 4;

  final Map<Vec, Set<Integer>> colours = new HashMap<>();
  final List<BorderTile> tiles;
  private final Map<Vec, Integer> arrivals = new HashMap<>();
  private final int[][] motif;
  private final int[][] cornerDrawing;

  /** A band of a group with a random motif that fits its neighbours in the run, and nothing else. */
  DrawnBand(FriezeGroup group, Corner corner, Through through, int width, int height, double endShare, boolean swing,
      long seed) throws InputException {
    Random random = new Random(seed);
    motif = motif(group, random);
    cornerDrawing = random(WIDTH, random);
    Sequence sequence = Sequence.of(group, "motif");
    Border border = new Border(BandPath.rectangle(new Box(0, 0, width, height)),
        List.of(BandRow.of(LENGTH, WIDTH, sequence.repeat())), corner, through, JointRange.fixed(0),
        endShare > 0 ? Permits.NONE.ends(endShare) : Permits.NONE);
    BandLayout layout = ClosingSolver.solve(border, LengthUnit.MILLIMETRE).best().orElseThrow();
    tiles = BandTiles.lay(layout, List.of(RowMotifs.of(sequence)));
    tiles.stream().filter(tile -> tile.piece() != BorderPiece.CORNER).forEach(this::paint);
    for (BorderTile tile : tiles) {
      if (tile.piece() == BorderPiece.CORNER) {
        corner(tile, swing);
      }
    }
  }

  private static int[][] random(int length, Random random) {
    int[][] drawing = new int[length + 1][WIDTH + 1];
    for (int[] column : drawing) {
      for (int y = 0; y <= WIDTH; y++) {
        column[y] = random.nextInt(1000000);
      }
    }
    return drawing;
  }

  /** Points [x][y], y up. */
  private static int[][] motif(FriezeGroup group, Random random) {
    int[][] drawn = random(LENGTH, random);
    for (int x = 0; x <= LENGTH; x++) {
      boolean end = x == 0 || x == LENGTH;
      boolean fold = Sequence.needsMirroredMotif(group)
          || end && (group == FriezeGroup.SPINNING_HOP || group == FriezeGroup.SPINNING_SIDLE && x == LENGTH);
      for (int y = 0; fold && y < WIDTH / 2; y++) {
        drawn[x][WIDTH - y] = drawn[x][y];
      }
    }
    for (int y = 0; y <= WIDTH; y++) {
      if (group == FriezeGroup.HOP || group == FriezeGroup.JUMP) {
        drawn[LENGTH][y] = drawn[0][y];
      } else if (group == FriezeGroup.STEP) {
        drawn[LENGTH][y] = drawn[0][WIDTH - y];
      }
    }
    return drawn;
  }

  private void paint(BorderTile tile) {
    Isometry placed = tile.turn().on(tile.cell());
    Polygon face = Faces.of(tile.face());
    for (int x = 0; x <= LENGTH; x++) {
      for (int y = 0; y <= WIDTH; y++) {
        Vec point = rounded(placed.of(new Vec(x, y)));
        if (face.distance(new GeometryFactory().createPoint(new Coordinate(point.x(), point.y()))) < 1e-9) {
          add(point, motif[x][y]);
        }
      }
    }
  }

  /**
   * A corner tile: its own drawing, or one on which every line swings round the inner corner, taken from the side
   * that arrives from below. In the drawing the outer edges are left and top, the inner corner is at the lower right.
   */
  private void corner(BorderTile tile, boolean swing) {
    Isometry placed = tile.turn().on(tile.cell());
    for (int x = 0; x <= WIDTH; x++) {
      for (int y = 0; y <= WIDTH; y++) {
        int depth = WIDTH - Math.max(WIDTH - x, y);
        Vec below = rounded(placed.of(new Vec(depth, 0)));
        int colour = swing ? arriving(below, rounded(placed.of(new Vec(depth, -1)))) : cornerDrawing[x][y];
        add(rounded(placed.of(new Vec(x, y))), colour);
      }
    }
  }

  /** The colour that the arriving run has at the edge; at the inner corner only its own, not the leaving run's. */
  private int arriving(Vec edge, Vec before) {
    if (!colours.containsKey(before)) {
      throw new AssertionError("no run arrives at " + edge);
    }
    return arrivals.get(edge);
  }

  private void add(Vec point, int colour) {
    colours.computeIfAbsent(point, key -> new TreeSet<>()).add(colour);
    arrivals.putIfAbsent(point, colour);
  }

  private static Vec rounded(Vec point) {
    return new Vec(Math.rint(point.x()) + 0.0, Math.rint(point.y()) + 0.0);
  }

  /** The designs on the tiles of some sides: drawings that a turn does not make equal. */
  Set<String> designs(int side, int step) {
    Set<String> designs = new TreeSet<>();
    for (BorderTile tile : tiles) {
      if (tile.position() > 0 && (tile.side() - side) % step == 0) {
        String one = text(tile.turn().mirrored(), false);
        String other = text(tile.turn().mirrored(), true);
        designs.add(one.compareTo(other) < 0 ? one : other);
      }
    }
    return designs;
  }

  private String text(boolean mirrored, boolean halfTurn) {
    StringBuilder text = new StringBuilder();
    for (int x = 0; x <= LENGTH; x++) {
      for (int y = 0; y <= WIDTH; y++) {
        text.append(motif[mirrored != halfTurn ? LENGTH - x : x][halfTurn ? WIDTH - y : y]).append(' ');
      }
    }
    return text.toString();
  }

  /** Points where neighbours disagree. */
  List<Vec> breaks() {
    List<Vec> breaks = new ArrayList<>();
    colours.forEach((point, own) -> {
      if (own.size() > 1) {
        breaks.add(point);
      }
    });
    return breaks;
  }

  /** Whether a movement takes every point to one with the same colours. */
  boolean same(UnaryOperator<Vec> move) {
    return colours.entrySet().stream().allMatch(entry -> entry.getValue().equals(colours.get(move.apply(entry.getKey()))));
  }
}
