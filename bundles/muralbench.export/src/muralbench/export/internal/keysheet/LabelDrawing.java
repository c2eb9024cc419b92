// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.util.List;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Pen;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/** Draws placed texts on ground of their own; a text with a leader stands in a box. */
final class LabelDrawing {
  private static final double DOT = 0.4;

  private final Canvas canvas;

  LabelDrawing(Canvas canvas) {
    this.canvas = canvas;
  }

  /** Draws texts; {@code ground} is the grey behind those without a leader, 1 for white. */
  void draw(List<Label> labels, double ground) throws IOException {
    for (Label label : labels) {
      if (label.leader().isPresent()) {
        canvas.lines(List.of(label.leader().get()), Pen.THIN);
        canvas.fill(List.of(Contour.circle(label.leader().get().start(), DOT)), 0);
      }
    }
    for (Label label : labels) {
      draw(label, ground);
    }
  }

  private void draw(Label label, double ground) throws IOException {
    canvas.fill(label.place(), label.leader().isPresent() ? 1 : ground);
    if (label.leader().isPresent()) {
      canvas.box(label.place(), Pen.THIN);
    }
    Box box = label.box();
    if (label.upwards()) {
      canvas.textUpwards(label.text(), label.type(), new Vec(box.maxX(), box.centre().y()), Canvas.Align.CENTRE);
    } else {
      canvas.text(label.text(), label.type(), new Vec(box.centre().x(), box.minY()), Canvas.Align.CENTRE);
    }
  }
}
