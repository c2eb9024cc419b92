// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import muralbench.base.length.LengthUnit;
import muralbench.model.Mural;
import muralbench.model.Opening;
import muralbench.model.Panel;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.PieceKind;
import muralbench.setout.geometry.Box;
import org.eclipse.emf.ecore.EObject;

/** Collects the lines on the wall to which things that are moved are drawn. */
public final class SnapLines {
  private static final double[] INCH_STEPS = {1.0 / 16, 1.0 / 8, 1.0 / 4, 1.0 / 2, 1, 2, 6};
  private static final double[] MILLIMETRE_STEPS = {1, 5, 10, 50, 100};
  private static final double REACH_PIXELS = 6;
  private static final double STEP_PIXELS = 3;

  private final TreeSet<Double> xs = new TreeSet<>();
  private final TreeSet<Double> ys = new TreeSet<>();

  private SnapLines() {}

  /**
   * The edges and middles of all panels and openings, the floor, and for an opening the tile edges of its panel.
   *
   * @param moved what is moved; it and its openings give no lines
   * @param setOut of the panel the moved openings lie in, if it is ready
   */
  public static SnapLines around(Mural mural, Collection<? extends EObject> moved, Optional<PanelSetOut> setOut) {
    SnapLines lines = new SnapLines();
    lines.ys.add(0.0);
    for (Panel panel : mural.getPanels()) {
      if (!moved.contains(panel)) {
        lines.add(panel);
        panel.getOpenings().stream().filter(opening -> !moved.contains(opening)).forEach(lines::add);
      }
    }
    if (moved.stream().allMatch(Opening.class::isInstance)) {
      setOut.ifPresent(lines::addTileEdges);
    }
    return lines;
  }

  private void add(EObject placed) {
    Placement.frame(placed).ifPresent(frame -> {
      xs.addAll(List.of(frame.x(), Frame.clean(frame.middleX()), frame.right()));
      ys.addAll(List.of(frame.y(), Frame.clean(frame.middleY()), frame.top()));
    });
  }

  private void addTileEdges(PanelSetOut setOut) {
    for (Piece piece : setOut.pieces()) {
      if (piece.kind() == PieceKind.WHOLE && piece.placed().sin() * piece.placed().cos() == 0) {
        Box box = piece.box();
        xs.addAll(List.of(Frame.clean(box.minX()), Frame.clean(box.maxX())));
        ys.addAll(List.of(Frame.clean(box.minY()), Frame.clean(box.maxY())));
      }
    }
  }

  /** The lines across x, mm, ascending. */
  public List<Double> xs() {
    return new ArrayList<>(xs);
  }

  /** The lines across y, mm, ascending. */
  public List<Double> ys() {
    return new ArrayList<>(ys);
  }

  /** Snapping to these lines at a zoom of so many pixels to a millimetre, else to fractions of the unit. */
  public Snapping at(double pixelsPerMillimetre, LengthUnit unit) {
    return new Snapping(xs(), ys(), REACH_PIXELS / pixelsPerMillimetre, step(pixelsPerMillimetre, unit));
  }

  /** The finest grid whose lines lie far enough apart on the screen, mm; never finer than 1/16 in or 1 mm. */
  public static double step(double pixelsPerMillimetre, LengthUnit unit) {
    double[] steps = unit == LengthUnit.INCH ? INCH_STEPS : MILLIMETRE_STEPS;
    for (double step : steps) {
      if (step * unit.millimetres() * pixelsPerMillimetre >= STEP_PIXELS) {
        return step * unit.millimetres();
      }
    }
    return steps[steps.length - 1] * unit.millimetres();
  }
}
