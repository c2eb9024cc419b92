// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.pattern.symmetry.Rational;

/** Reads the lines of one block. */
final class BlockReader {
  private static final Messages MESSAGES = BlockText.MESSAGES;
  private static final int LARGEST_GRID = 64;
  private static final List<String> WORDS = List.of("also", "grid", "colour", "radius", "shape", "rectangle", "geese");
  private static final List<String> DIRECTIONS = List.of("up", "right", "down", "left");

  private final String source;
  private final String name;
  private final List<String> otherNames = new ArrayList<>();
  private final Map<String, String> colours = new LinkedHashMap<>();
  private final List<BlockPiece> pieces = new ArrayList<>();
  private final Map<UnitKind, Integer> units = new EnumMap<>(UnitKind.class);
  private Rational radius = Rational.of(3, 4);
  private int grid;
  private int rows;

  BlockReader(String source, String name) {
    this.source = source;
    this.name = name;
  }

  void line(int number, String line) throws InputException {
    String[] words = line.split("\\s+");
    try {
      switch (words[0]) {
        case "also" -> otherNames.add(line.substring(4).strip());
        case "grid" -> grid = whole(words[1]);
        case "colour" -> colours.put(letter(words[1]), line.substring(line.indexOf(words[1]) + 1).strip());
        case "radius" -> radius = upToOne(Rational.parse(words[1]));
        case "shape" -> shape(words);
        case "rectangle" -> rectangle(words);
        case "geese" -> geese(words);
        default -> row(number, words);
      }
    } catch (NumberFormatException | IndexOutOfBoundsException | ArithmeticException e) {
      throw error("text.form", "line", number, "form", form(words[0]));
    }
  }

  private static String form(String word) {
    return switch (word) {
      case "grid" -> "grid UNITS";
      case "colour" -> "colour LETTER NAME";
      case "radius" -> "radius UNITS, at most 1";
      case "shape" -> "shape COLOUR X,Y X,Y X,Y ...";
      case "rectangle" -> "rectangle COLOUR X,Y WIDTH,HEIGHT";
      default -> "geese X,Y up|right|down|left COLOUR COLOUR";
    };
  }

  private static int whole(String text) {
    int value = Integer.parseInt(text);
    if (value < 1 || value > LARGEST_GRID) {
      throw new NumberFormatException(text);
    }
    return value;
  }

  private static String letter(String text) {
    if (text.length() != 1 || !Character.isUpperCase(text.charAt(0))) {
      throw new NumberFormatException(text);
    }
    return text;
  }

  private static Rational upToOne(Rational value) {
    if (value.sign() <= 0 || value.compareTo(Rational.ONE) > 0) {
      throw new NumberFormatException(value.toString());
    }
    return value;
  }

  private void row(int number, String[] words) throws InputException {
    boolean unit = words[0].equals(".") || new UnitText(0, 0, radius).read(words[0]) != null;
    if (!unit || rows == grid) {
      throw error(unit || WORDS.contains(words[0]) || rows == grid ? "text.word" : "text.unit", "line", number, "word",
          words[0]);
    }
    rows++;
    if (words.length != grid) {
      throw error("text.row", "row", rows, "count", words.length, "grid", grid);
    }
    for (int column = 0; column < grid; column++) {
      if (!words[column].equals(".")) {
        unit(number, words[column], column);
      }
    }
  }

  private void unit(int number, String word, int column) throws InputException {
    UnitText.Unit unit = new UnitText(column, grid - rows, radius).read(word);
    if (unit == null) {
      throw error("text.unit", "line", number, "word", word);
    }
    add(unit.kind(), unit.pieces());
  }

  private void add(UnitKind kind, List<BlockPiece> of) {
    pieces.addAll(of);
    units.merge(kind, 1, Integer::sum);
  }

  private void shape(String[] words) {
    List<Corner> corners = new ArrayList<>();
    for (int i = 2; i < words.length; i++) {
      corners.add(Corner.parse(words[i]));
    }
    if (corners.size() < 3) {
      throw new NumberFormatException("corners");
    }
    add(UnitKind.SHAPE, List.of(BlockPiece.polygon(letter(words[1]), UnitKind.SHAPE, corners)));
  }

  private void rectangle(String[] words) {
    Corner at = Corner.parse(words[2]);
    Corner size = Corner.parse(words[3]);
    List<Corner> corners = List.of(at, at.plus(size.x(), Rational.ZERO), at.plus(size.x(), size.y()),
        at.plus(Rational.ZERO, size.y()));
    add(UnitKind.SHAPE, List.of(BlockPiece.polygon(letter(words[1]), UnitKind.SHAPE, corners)));
  }

  private void geese(String[] words) {
    Corner at = Corner.parse(words[1]);
    int direction = DIRECTIONS.indexOf(words[2]);
    if (direction < 0) {
      throw new NumberFormatException(words[2]);
    }
    boolean upright = direction % 2 == 0;
    // The corners of the two units, counter-clockwise from the start of the side the triangle stands on.
    long width = upright ? 2 : 1;
    List<Corner> box = List.of(at, plus(at, width, 0), plus(at, width, 3 - width), plus(at, 0, 3 - width));
    int first = (4 - direction) % 4;
    Corner a = box.get(first);
    Corner b = box.get((first + 1) % 4);
    Corner c = box.get((first + 2) % 4);
    Corner d = box.get((first + 3) % 4);
    Corner tip = new Corner(c.x().plus(d.x()).times(Rational.of(1, 2)), c.y().plus(d.y()).times(Rational.of(1, 2)));
    UnitKind kind = UnitKind.FLYING_GEESE;
    String sky = letter(words[4]);
    add(kind, List.of(BlockPiece.polygon(letter(words[3]), kind, List.of(a, b, tip)),
        BlockPiece.polygon(sky, kind, List.of(b, c, tip)), BlockPiece.polygon(sky, kind, List.of(a, tip, d))));
  }

  private static Corner plus(Corner corner, long right, long up) {
    return corner.plus(Rational.of(right), Rational.of(up));
  }

  Block block() throws InputException {
    String place = name.isEmpty() ? source : source + ", " + name;
    if (name.isEmpty() || grid == 0 || rows != grid) {
      String missing = name.isEmpty() ? "name" : grid == 0 ? "grid" : "rows";
      throw new InputException(place, MESSAGES.text("text.missing", "what", missing),
          MESSAGES.text("text.missing.remedy", "what", missing));
    }
    List<BlockPiece> named = new ArrayList<>();
    for (BlockPiece piece : pieces) {
      String colour = colours.getOrDefault(piece.colour(), "");
      if (colour.isEmpty()) {
        throw new InputException(place, MESSAGES.text("text.colour", "letter", piece.colour()),
            MESSAGES.text("text.colour.remedy", "letter", piece.colour()));
      }
      named.add(new BlockPiece(colour, piece.kind(), piece.contour(), piece.area()));
    }
    return Block.of(name, otherNames, grid, named, units);
  }

  private InputException error(String key, Object... values) {
    Object[] all = Arrays.copyOf(values, values.length + 2);
    all[values.length] = "grid";
    all[values.length + 1] = grid;
    return new InputException(source + ", " + name, MESSAGES.text(key, all), MESSAGES.text(key + ".remedy", all));
  }
}
