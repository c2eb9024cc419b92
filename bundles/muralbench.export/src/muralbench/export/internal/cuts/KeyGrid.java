// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.io.IOException;
import java.util.List;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Canvas.Align;
import muralbench.export.internal.pdf.Lettering;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.geometry.Vec;

/** Keys in columns, read line by line. Every key is written once, whole. */
final class KeyGrid {
  /** Height of a line, mm. */
  static final double LINE = 3.5;
  private static final Type TYPE = Type.plain(2.1);
  private static final double GAP = 3;

  private final List<String> keys;
  private final int columns;
  private final double step;

  KeyGrid(List<String> keys, double width, Lettering lettering) throws IOException {
    this.keys = List.copyOf(keys);
    double widest = 0;
    for (String key : keys) {
      widest = Math.max(widest, lettering.width(key, TYPE));
    }
    step = widest + GAP;
    columns = Math.max(1, (int) ((width + GAP) / step));
  }

  /** The number of lines. */
  int lines() {
    return (keys.size() + columns - 1) / columns;
  }

  /** Draws some lines below {@code top}, the upper left corner. */
  void draw(Canvas canvas, Vec top, int from, int to) throws IOException {
    for (int i = from * columns; i < Math.min(keys.size(), to * columns); i++) {
      int line = i / columns - from;
      Vec foot = new Vec(top.x() + i % columns * step, top.y() - (line + 1) * LINE + 0.9);
      canvas.text(keys.get(i), TYPE, foot, Align.LEFT);
    }
  }
}
