// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import muralbench.setout.geometry.Vec;

/**
 * Paragraphs one below the other in lines of a given width.
 *
 * @param lines the lines from top to bottom, an empty one being half as high
 * @param type letters
 */
public record TextColumn(List<String> lines, Type type) {
  public TextColumn {
    lines = List.copyOf(lines);
  }

  /** Breaks paragraphs into lines of at most {@code width} mm. */
  public static TextColumn of(List<String> paragraphs, Type type, double width, Lettering lettering)
      throws IOException {
    TextFit fit = new TextFit(lettering);
    List<String> lines = new ArrayList<>();
    for (String paragraph : paragraphs) {
      lines.addAll(fit.wrapped(paragraph, type, width));
    }
    return new TextColumn(lines, type);
  }

  /** Height from the top of the first line to the foot of the last, mm. */
  public double height() {
    return lines.stream().mapToDouble(this::step).sum();
  }

  /** Draws the lines below {@code top}, the upper left corner. */
  public void draw(Canvas canvas, Vec top) throws IOException {
    double y = top.y();
    for (String line : lines) {
      y -= step(line);
      canvas.text(line, type, new Vec(top.x(), y + type.leading() - type.height()), Canvas.Align.LEFT);
    }
  }

  private double step(String line) {
    return line.isEmpty() ? type.leading() / 2 : type.leading();
  }
}
