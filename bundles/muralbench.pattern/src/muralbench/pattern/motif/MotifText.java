// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.PathData;
import muralbench.setout.geometry.PathData.PathDataException;
import muralbench.setout.geometry.Segment;

/**
 * A motif as plain text, one thing a line. A remark starts with #; a name of several words, or with a #, stands in
 * quotation marks; paths follow the grammar of SVG 1.1, with y up from the lower left corner.
 *
 * <pre>
 * motif "Reed and knot"
 * tile 1 1            width and height of one tile, units of the drawing
 * tiles 2             how many side by side; 1 if left out
 * ground white        the colour where no region is
 * region leaf green   M 0 0 L 0.5 0 L 0 0.5 Z
 * line vein           M 0.1 0.1 L 0.2 0.2
 * </pre>
 */
public final class MotifText {
  private static final Messages MESSAGES = Messages.of(Motif.class);

  private final String source;
  private String name;
  private double width;
  private double height;
  private int tiles = 1;
  private String ground = "";
  private final List<Region> regions = new ArrayList<>();
  private final List<DrawnLine> lines = new ArrayList<>();

  private MotifText(String source) {
    this.source = source;
  }

  /**
   * Reads a motif.
   *
   * @param source name of the file or field, for messages
   * @param text the text
   * @throws InputException naming the line and the remedy
   */
  public static Motif parse(String source, String text) throws InputException {
    MotifText reader = new MotifText(source);
    int number = 0;
    for (String line : text.split("\\R")) {
      number++;
      String bare = withoutRemark(line).strip();
      if (!bare.isEmpty()) {
        reader.line(number, bare);
      }
    }
    return reader.motif();
  }

  private static String withoutRemark(String line) {
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      quoted ^= line.charAt(i) == '"';
      if (line.charAt(i) == '#' && !quoted) {
        return line.substring(0, i);
      }
    }
    return line;
  }

  private void line(int number, String line) throws InputException {
    Words words = new Words(number, line);
    switch (words.next()) {
      case "motif" -> name = words.last("motif NAME");
      case "tile" -> {
        width = words.number("tile WIDTH HEIGHT");
        height = words.number("tile WIDTH HEIGHT");
      }
      case "tiles" -> tiles = words.whole("tiles COUNT");
      case "ground" -> ground = words.last("ground COLOUR");
      case "region" -> {
        String region = words.required("region NAME COLOUR PATH");
        String colour = words.required("region NAME COLOUR PATH");
        regions.add(new Region(region, colour, words.path("region NAME COLOUR PATH")));
      }
      case "line" -> {
        String drawn = words.required("line NAME PATH");
        words.lines("line NAME PATH").forEach(segments -> lines.add(new DrawnLine(drawn, segments)));
      }
      default -> throw error("text.word", "line", number, "word", line.split("\\s+")[0]);
    }
  }

  private Motif motif() throws InputException {
    if (name == null) {
      throw error("text.missing", "word", "name", "form", "motif NAME");
    }
    if (ground.isEmpty()) {
      throw error("text.missing", "word", "ground", "form", "ground COLOUR");
    }
    if (width == 0) {
      throw error("text.missing", "word", "tile", "form", "tile WIDTH HEIGHT");
    }
    return Motif.of(name, width, height, tiles, ground, regions, lines);
  }

  private InputException error(String key, Object... values) {
    return new InputException(source, MESSAGES.text(key, values), MESSAGES.text(key + ".remedy", values));
  }

  /** The words of one line. */
  private final class Words {
    private final int number;
    private String rest;

    Words(int number, String line) {
      this.number = number;
      rest = line;
    }

    String next() throws InputException {
      String word;
      if (rest.startsWith("\"")) {
        int close = rest.indexOf('"', 1);
        if (close < 0) {
          throw error("text.quote", "line", number);
        }
        word = rest.substring(1, close);
        rest = rest.substring(close + 1).strip();
      } else {
        word = rest.split("\\s+", 2)[0];
        rest = rest.substring(word.length()).strip();
      }
      return word;
    }

    String required(String form) throws InputException {
      String word = next();
      if (word.isBlank()) {
        throw error("text.parts", "line", number, "count", "too few", "form", form);
      }
      return word;
    }

    String last(String form) throws InputException {
      String word = required(form);
      if (!rest.isEmpty()) {
        throw error("text.parts", "line", number, "count", "too many", "form", form);
      }
      return word;
    }

    double number(String form) throws InputException {
      String word = required(form);
      try {
        double value = Double.parseDouble(word);
        if (value > 0 && value < 1e6) {
          return value;
        }
      } catch (NumberFormatException e) {
        // Told below as any other word that is no number.
      }
      throw error("text.number", "line", number, "text", word);
    }

    int whole(String form) throws InputException {
      double value = number(form);
      if (value != Math.rint(value)) {
        throw error("text.whole", "line", number, "text", MotifText.number(value));
      }
      return (int) value;
    }

    List<Contour> path(String form) throws InputException {
      try {
        return PathData.parse(data(form));
      } catch (PathDataException e) {
        throw error("text.path", "line", number, "fault", e.getMessage());
      }
    }

    List<List<Segment>> lines(String form) throws InputException {
      try {
        return PathData.parseLines(data(form));
      } catch (PathDataException e) {
        throw error("text.path", "line", number, "fault", e.getMessage());
      }
    }

    private String data(String form) throws InputException {
      if (rest.isEmpty()) {
        throw error("text.parts", "line", number, "count", "too few", "form", form);
      }
      return rest;
    }
  }

  /** The motif as text that reads back the same. */
  public static String print(Motif motif) {
    StringBuilder out = new StringBuilder();
    out.append("motif ").append(quoted(motif.name())).append("\ntile ").append(number(motif.width() / motif.tiles()))
        .append(' ').append(number(motif.height())).append("\ntiles ").append(motif.tiles()).append("\nground ")
        .append(quoted(motif.ground())).append('\n');
    for (Region region : motif.regions()) {
      out.append("region ").append(quoted(region.name())).append(' ').append(quoted(region.colour()));
      region.contours().forEach(contour -> out.append(' ').append(PathData.print(contour)));
      out.append('\n');
    }
    for (DrawnLine line : motif.lines()) {
      out.append("line ").append(quoted(line.name())).append(' ').append(path(line.segments())).append('\n');
    }
    return out.toString();
  }

  /** An open line as path data: printed as a contour closed by a straight line, and that line left out. */
  private static String path(List<Segment> segments) {
    List<Segment> closed = new ArrayList<>(segments);
    closed.add(new Line(segments.get(segments.size() - 1).end(), segments.get(0).start()));
    String data = PathData.print(new Contour(closed));
    return data.substring(0, data.length() - 1);
  }

  private static String quoted(String word) {
    return '"' + word.replace('"', '\'') + '"';
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
