// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import muralbench.base.Messages;
import muralbench.base.length.LengthUnit;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Pen;
import muralbench.export.internal.pdf.Placing;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.OpeningSpec;
import muralbench.setout.PanelGap;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/** Draws the elevation of the whole wall, or the plan of the whole floor, with its panels named. */
final class WallDrawing {
  private static final double GROUND = 0.9;
  /** Kept free at both ends of names of panels, mm. */
  private static final double OFF_EDGE = 0.8;
  private static final Type FLOOR = Type.plain(2.1);

  private final Canvas canvas;
  private final WallPlan.View plan;
  private final KeyLetters letters;
  private final Messages texts;

  WallDrawing(Canvas canvas, WallPlan.View plan, KeyLetters letters, Messages texts) {
    this.canvas = canvas;
    this.plan = plan;
    this.letters = letters;
    this.texts = texts;
  }

  void draw(LengthUnit units) throws IOException {
    Placing placing = plan.placing();
    List<Box> boxes = plan.drawn().stream().map(panel -> panel.spec().outline().box()).toList();
    DimensionDrawing dimensions = new DimensionDrawing(canvas, placing, plan.window(), WallPlan.GUTTER, units);
    dimensions.across(RunningDimensions.acrossWall(boxes));
    dimensions.up(plan.wall() ? RunningDimensions.upWall(boxes) : RunningDimensions.upFloor(boxes));
    for (PanelSetOut panel : plan.drawn()) {
      Contour edge = placing.of(panel.spec().outline());
      canvas.fill(List.of(edge), GROUND);
      for (OpeningSpec opening : panel.spec().openings()) {
        Contour hole = placing.of(opening.outline());
        canvas.fill(List.of(hole), 1);
        canvas.lines(Diagonals.of(hole), Pen.THIN);
        canvas.stroke(List.of(hole), Pen.MEDIUM);
      }
      canvas.stroke(List.of(edge), Pen.THICK);
    }
    if (plan.wall()) {
      floor(placing.of(plan.window()), placing.y(0));
    }
    name(units);
    // The ground of a name that just fits would eat into the edges.
    canvas.stroke(plan.drawn().stream().map(panel -> placing.of(panel.spec().outline())).toList(), Pen.THICK);
  }

  private void floor(Box shown, double y) throws IOException {
    canvas.line(new Vec(shown.minX() - WallPlan.GUTTER, y), new Vec(shown.maxX() + WallPlan.GUTTER, y), Pen.HEAVY);
    Vec end = new Vec(shown.maxX() + WallPlan.GUTTER + FLOOR.height() + 1, y);
    canvas.textUpwards(texts.text("floor.name"), FLOOR, end, Canvas.Align.LEFT);
  }

  /** Names every panel: id and title or the id alone in it, or the id beside it. */
  private void name(LengthUnit units) throws IOException {
    Box drawing = plan.slot();
    Box shown = plan.placing().of(plan.window());
    Box free = new Box(shown.minX() - WallPlan.GUTTER, shown.minY(), drawing.maxX() - 1, drawing.maxY() - 8);
    Board board = new Board(free);
    KeyPlacer placer = new KeyPlacer(plan.placing(), board, free, shown);
    for (PanelSetOut panel : plan.drawn()) {
      board.addPiece(new Shape(plan.placing().of(edges(panel.spec()))));
    }
    new GapDrawing(canvas, plan.placing(), board, units).draw(PanelGap.of(plan.drawn()));
    List<PanelSpec> left = new ArrayList<>();
    for (PanelSetOut panel : plan.drawn()) {
      PanelSpec spec = panel.spec();
      List<Contour> edges = edges(spec);
      Shape shape = new Shape(plan.placing().of(edges));
      if (!placer.inside(room(edges, PrintTexts.name(spec)), shape, 1.3)
          && !placer.inside(room(edges, spec.id()), shape, 1.3)) {
        left.add(spec);
      }
    }
    for (PanelSpec spec : left) {
      placer.outside(room(List.of(spec.outline()), spec.id()), spec.outline().box().centre());
    }
    new LabelDrawing(canvas).draw(placer.labels(), GROUND);
  }

  private static List<Contour> edges(PanelSpec spec) {
    List<Contour> edges = new ArrayList<>(List.of(spec.outline()));
    spec.openings().forEach(opening -> edges.add(opening.outline()));
    return edges;
  }

  /** Writes what the view is above it. */
  void caption(String text) throws IOException {
    canvas.text(text, FLOOR, new Vec(plan.slot().minX() + 3, plan.slot().maxY() - 4), Canvas.Align.LEFT);
  }

  private KeyRoom room(List<Contour> edges, String name) throws IOException {
    KeyRoom.Words words = letters.words(name);
    KeyRoom.Words roomy = new KeyRoom.Words(name, words.width() + 2 * OFF_EDGE, words.height());
    return KeyRoom.in(edges.get(0), edges.subList(1, edges.size()), roomy);
  }
}
