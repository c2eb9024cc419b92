// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.setout.TileSpec;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/**
 * Rectangles of several sizes from a table of cells on a square raster. The smallest piece is the field tile; the raster is
 * the tile and a joint, so a cell of n by m squares is n (tile + joint) - joint wide. A table is {@code x y width height}
 * for each cell, in squares, separated by semicolons; the repeat is {@code x y; x y}, the two directions in squares.
 */
final class TableBond implements Bond {
  private static final Messages TEXTS = Messages.of(TableBond.class);
  private static final int MOST_SQUARES = 400;

  private final String kind;
  private final String cells;
  private final String repeat;

  /** A bond whose table is given, or is asked for in the settings where the texts are empty. */
  TableBond(String kind, String cells, String repeat) {
    this.kind = kind;
    this.cells = cells;
    this.repeat = repeat;
  }

  @Override
  public String kind() {
    return kind;
  }

  @Override
  public String label() {
    return TEXTS.text("bond." + kind);
  }

  @Override
  public List<BondSetting> settings() {
    return List.of(new BondSetting("cells", TEXTS.text("setting.cells"), cells, TEXTS.text("setting.cells.hint"))
        .of(BondSetting.Form.ROWS, TEXTS.text("cells.x"), TEXTS.text("cells.y"), TEXTS.text("cells.width"),
            TEXTS.text("cells.height")),
        new BondSetting("repeat", TEXTS.text("setting.repeat"), repeat, TEXTS.text("setting.repeat.hint"))
            .of(BondSetting.Form.ROWS, TEXTS.text("cells.x"), TEXTS.text("cells.y")));
  }

  @Override
  public BondRequest sample() {
    return BondRequest.sample(90, 90, 0, cells.isEmpty()
        ? Map.of("cells", "0 0 2 1; 2 0 1 1; 0 1 1 1; 1 1 2 1", "repeat", "3 0; 0 2") : Map.of());
  }

  /** A table that is asked for begins with that of the sample. */
  @Override
  public Map<String, String> start(double width, double height, TileSpec tile, double joint) {
    return sample().settings();
  }

  @Override
  public boolean takesOffset() {
    return false;
  }

  @Override
  public Pattern lay(BondRequest request) throws InputException {
    BondSettings settings = new BondSettings(request);
    int[][] table = table("cells", settings.text("cells", cells), 4);
    int[][] directions = table("repeat", settings.text("repeat", repeat), 2);
    if (directions.length != 2) {
      throw BondSettings.refused("repeat", "table.directions");
    }
    checkFilled(table, directions);
    double across = request.tile().width() + request.joint();
    double up = request.tile().height() + request.joint();
    List<LatticePattern.Place> places = new ArrayList<>();
    for (int[] cell : table) {
      Contour face = Contour.rectangle(cell[0] * across, cell[1] * up, cell[2] * across - request.joint(),
          cell[3] * up - request.joint());
      places.add(new LatticePattern.Place(face, cell[2] == 1 && cell[3] == 1 ? "" : cell[2] + "x" + cell[3]));
    }
    List<Vec> centres = new ArrayList<>();
    places.forEach(place -> centres.add(place.face().box().centre()));
    Vec corner = places.get(0).face().box().centre();
    return new LatticePattern(new Vec(directions[0][0] * across, directions[0][1] * up),
        new Vec(directions[1][0] * across, directions[1][1] * up), places, up / 2, centres.isEmpty() ? List.of(corner)
            : centres);
  }

  private static int[][] table(String name, String text, int columns) throws InputException {
    List<int[]> rows = new ArrayList<>();
    for (String row : text.split(";")) {
      if (row.isBlank()) {
        continue;
      }
      String[] words = row.trim().split("[\\s,]+");
      int[] numbers = new int[columns];
      for (int i = 0; i < columns; i++) {
        try {
          numbers[i] = Integer.parseInt(i < words.length ? words[i] : "");
        } catch (NumberFormatException e) {
          throw BondSettings.refused(name, "table.row", "row", row.trim(), "columns", columns);
        }
      }
      if (words.length != columns || columns == 4 && (numbers[2] < 1 || numbers[3] < 1)) {
        throw BondSettings.refused(name, "table.row", "row", row.trim(), "columns", columns);
      }
      rows.add(numbers);
    }
    if (rows.isEmpty()) {
      throw BondSettings.refused(name, "table.empty");
    }
    return rows.toArray(int[][]::new);
  }

  /** Every square of the plane must be covered exactly once. */
  private static void checkFilled(int[][] cells, int[][] directions) throws InputException {
    int a = directions[0][0];
    int b = directions[0][1];
    int c = directions[1][0];
    int d = directions[1][1];
    int squares = Math.abs(a * d - b * c);
    if (squares == 0 || squares > MOST_SQUARES) {
      throw BondSettings.refused("repeat", "table.repeat", "most", MOST_SQUARES);
    }
    List<Long> covered = new ArrayList<>();
    for (int[] cell : cells) {
      for (int x = cell[0]; x < cell[0] + cell[2]; x++) {
        for (int y = cell[1]; y < cell[1] + cell[3]; y++) {
          // The class of a square modulo the repeat: its lattice coordinates times the determinant, reduced.
          long i = Math.floorMod((long) Integer.signum(a * d - b * c) * (x * d - y * c), (long) squares);
          long j = Math.floorMod((long) Integer.signum(a * d - b * c) * (a * y - b * x), (long) squares);
          covered.add(i * squares + j);
        }
      }
    }
    long different = covered.stream().distinct().count();
    if (different != covered.size()) {
      throw BondSettings.refused("cells", "table.overlap");
    }
    if (different != squares) {
      throw BondSettings.refused("cells", "table.hole", "covered", different, "squares", squares);
    }
  }
}
