// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Canvas.Align;
import muralbench.export.internal.pdf.Lettering;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.cut.CutGroup.Lot;
import muralbench.setout.geometry.Vec;

/**
 * The keys of a shape in lots: how the tile is laid, with an arrow to its top, and below it the keys in columns, read
 * line by line. Every key is written once, whole.
 */
final class KeyLots {
  /** Height of a line, mm. */
  static final double LINE = 3.5;
  /** The fewest lines that may be parted from the rest: how the tile is laid and some keys. */
  static final int FEWEST = 2;
  private static final Type TYPE = Type.plain(2.1);
  private static final Type HEAD = Type.bold(1.9);
  private static final double ARROW = 3.1;
  private static final double INDENT = 4;
  private static final double GAP = 3;
  private static final double FOOT = 0.9;

  /** A lot as it is headed; without an arrow if the tile can be laid in one way only. */
  private record Head(String text, boolean arrow, double turn) {}

  /** A line: keys, or none where the head of the lot stands. */
  private record Line(Head head, List<String> keys) {}

  private final List<Line> lines = new ArrayList<>();
  private final double width;
  private final double step;

  KeyLots(CutGroup group, double width, Lettering lettering) throws IOException {
    this.width = width;
    double widest = 0;
    for (String key : group.keys()) {
      widest = Math.max(widest, lettering.width(key, TYPE));
    }
    step = widest + GAP;
    int columns = Math.max(1, (int) ((width + GAP) / step));
    Optional<String> all = LotText.ofAll(group);
    if (all.isPresent()) {
      add(new Head(all.get(), false, 0), group.keys(), columns);
    } else {
      for (Lot lot : group.lots()) {
        add(new Head(LotText.of(lot), true, lot.turn()), lot.keys(), columns);
      }
    }
  }

  private void add(Head head, List<String> keys, int columns) {
    lines.add(new Line(head, List.of()));
    for (int from = 0; from < keys.size(); from += columns) {
      lines.add(new Line(head, keys.subList(from, Math.min(keys.size(), from + columns))));
    }
  }

  /** The number of lines. */
  int lines() {
    return lines.size();
  }

  /** Where to part the lines from {@code from} on, if there is room for some: never below the head of a lot. */
  int part(int from, int room) {
    int to = Math.min(lines.size(), from + room);
    return to < lines.size() && to - from > 1 && lines.get(to - 1).keys().isEmpty() ? to - 1 : to;
  }

  /** Height of some lines, with that in which a lot is headed again where it goes on. */
  double height(int from, int to) {
    return (to - from + (headed(from) ? 0 : 1)) * LINE;
  }

  private boolean headed(int line) {
    return lines.get(line).keys().isEmpty();
  }

  /** Draws some lines below {@code top}, the upper left corner. */
  void draw(Canvas canvas, Vec top, int from, int to) throws IOException {
    double y = top.y();
    if (!headed(from)) {
      y -= LINE;
      head(canvas, lines.get(from).head(), new Vec(top.x(), y));
    }
    for (Line line : lines.subList(from, to)) {
      y -= LINE;
      if (line.keys().isEmpty()) {
        head(canvas, line.head(), new Vec(top.x(), y));
      }
      for (int i = 0; i < line.keys().size(); i++) {
        canvas.text(line.keys().get(i), TYPE, new Vec(top.x() + i * step, y + FOOT), Align.LEFT);
      }
    }
  }

  private void head(Canvas canvas, Head head, Vec foot) throws IOException {
    double indent = head.arrow() ? INDENT : 0;
    if (head.arrow()) {
      UpArrow.draw(canvas, foot.plus(new Vec(ARROW / 2, LINE / 2)), head.turn(), ARROW);
    }
    double needed = canvas.lettering().width(head.text(), HEAD);
    Type fitting = HEAD.stretched(Math.min(1, (width - indent) / needed));
    canvas.text(head.text(), fitting, foot.plus(new Vec(indent, FOOT)), Align.LEFT);
  }
}
