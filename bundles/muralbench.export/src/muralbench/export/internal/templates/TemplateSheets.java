// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.templates;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.export.ExportContext;
import muralbench.export.internal.LabelSpot;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Canvas.Align;
import muralbench.export.internal.pdf.Lettering;
import muralbench.export.internal.pdf.Pen;
import muralbench.export.internal.pdf.Placing;
import muralbench.export.internal.pdf.PrintDocument;
import muralbench.export.internal.pdf.SheetFoot;
import muralbench.export.internal.pdf.SheetFrame;
import muralbench.export.internal.pdf.SheetSize;
import muralbench.export.internal.pdf.TextFit;
import muralbench.export.internal.pdf.TitleBlock;
import muralbench.export.internal.pdf.TitleBlock.Field;
import muralbench.export.internal.pdf.Type;
import muralbench.export.internal.templates.TemplatePlan.Part;
import muralbench.setout.MuralSpec;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Vec;

/** Templates on paper: pieces with thick edges, the tile they are cut from dashed, the number of the cut inside. */
final class TemplateSheets {
  private static final Messages TEXT = Messages.of(TemplateSheets.class);
  private static final Pen TILE = Pen.THIN.dashed(2.0, 1.2);
  private static final Type BODY = Type.plain(3);
  private static final Type NAME = Type.bold(2.4);
  private static final Type WORDS = Type.plain(1.9);
  private static final double LARGEST = 5;
  private static final double CROSS = 3;

  private final ExportContext context;
  private final SheetSize size;
  private final SheetFoot foot;
  private final Box body;
  private final Lettering lettering;

  private TemplateSheets(ExportContext context, Lettering lettering) {
    this.context = context;
    this.lettering = lettering;
    size = SheetSize.of(context.paper(), false);
    foot = new SheetFoot(size);
    body = foot.body().grown(-SheetFoot.INSET);
  }

  /** Writes the document and leaves the stream open. */
  static void write(ExportContext context, List<CutGroup> groups, OutputStream out) throws IOException {
    try (Lettering lettering = Lettering.open()) {
      new TemplateSheets(context, lettering).print(groups, out);
    }
  }

  private void print(List<CutGroup> groups, OutputStream out) throws IOException {
    List<Part> parts = TemplatePlan.of(groups, body);
    int count = parts.stream().mapToInt(Part::sheet).max().orElse(0) + 1;
    String title = TEXT.text("document.title", "title", context.setOut().spec().title());
    try (PrintDocument document = new PrintDocument(title, TEXT.text("purpose"), context.date(), lettering)) {
      for (int sheet = 0; sheet < count; sheet++) {
        Canvas canvas = document.sheet(size, Integer.toString(sheet + 1));
        foot.draw(canvas, TEXT.text("use"), TEXT.text("caution"), titleBlock(sheet, count));
        for (Part part : parts) {
          if (part.sheet() == sheet) {
            draw(canvas, part);
          }
        }
        if (parts.isEmpty()) {
          canvas.text(TEXT.text("none"), BODY, body.centre(), Align.CENTRE);
        }
        SheetFrame.draw(canvas);
      }
      document.save(out);
    }
  }

  private void draw(Canvas canvas, Part part) throws IOException {
    CutGroup group = part.group();
    Placing placing = new Placing(1, new Vec(part.shown().minX(), part.shown().minY()), part.corner());
    Box window = placing.of(part.shown());
    canvas.clipped(window.grown(0.5), () -> {
      if (group.fromBlank()) {
        canvas.box(placing.of(group.face().box()), TILE);
      } else {
        canvas.stroke(List.of(placing.of(group.face())), TILE);
      }
      canvas.stroke(List.of(placing.of(group.outline())), Pen.THICK);
      canvas.stroke(placing.of(group.holes()), Pen.THICK);
      number(canvas, part, placing);
    });
    if (part.of() > 1) {
      crosses(canvas, window);
    }
    words(canvas, part);
  }

  private void number(Canvas canvas, Part part, Placing placing) throws IOException {
    CutGroup group = part.group();
    String text = Integer.toString(group.number());
    double proportion = lettering.width(text, Type.bold(1)) * 1.4;
    LabelSpot spot = LabelSpot.roomy(group.outline(), group.holes(), proportion, 2 * LARGEST);
    Type type = Type.bold(Math.min(LARGEST, spot.height() / 2));
    Vec middle = placing.of(spot.middle());
    if (type.height() > 1.5 && part.of() == 1) {
      canvas.text(text, type, new Vec(middle.x(), middle.y() - type.height() / 2), Align.CENTRE);
    }
  }

  /** Crosses at the corners of what a sheet shows of a divided template; those of neighbours are laid over each other. */
  private static void crosses(Canvas canvas, Box window) throws IOException {
    for (double x : new double[] {window.minX(), window.maxX()}) {
      for (double y : new double[] {window.minY(), window.maxY()}) {
        canvas.lines(List.of(new Line(new Vec(x - CROSS, y), new Vec(x + CROSS, y)),
            new Line(new Vec(x, y - CROSS), new Vec(x, y + CROSS))), Pen.THIN);
      }
    }
  }

  private void words(Canvas canvas, Part part) throws IOException {
    CutGroup group = part.group();
    double room = part.place().width();
    TextFit fit = new TextFit(lettering);
    int pieces = group.keys().size();
    String name = part.of() > 1
        ? TEXT.text("name.part", "number", group.number(), "count", pieces, "part", part.part(), "of", part.of())
        : TEXT.text(pieces == 1 ? "name.one" : "name", "number", group.number(), "count", pieces);
    Box box = group.outline().box();
    String from = TEXT.text(group.fromBlank() ? "from.blank" : "from.tile", "tile", group.tile(), "width",
        shown(box.width()), "height", shown(box.height()));
    String keys = TEXT.text("keys", "first", group.keys().get(0), "last", group.keys().get(pieces - 1));
    Vec at = new Vec(part.place().minX(), part.corner().y());
    canvas.text(fit.shortened(name, NAME, room), NAME, at.plus(new Vec(0, -4)), Align.LEFT);
    canvas.text(fit.shortened(from, WORDS, room), WORDS, at.plus(new Vec(0, -7.4)), Align.LEFT);
    canvas.text(fit.shortened(pieces == 1 ? group.keys().get(0) : keys, WORDS, room), WORDS,
        at.plus(new Vec(0, -10.6)), Align.LEFT);
  }

  private String shown(double length) {
    return LengthText.shown(length, context.units());
  }

  private TitleBlock titleBlock(int number, int count) {
    MuralSpec mural = context.setOut().spec();
    return new TitleBlock(List.of(
        List.of(field("about.project", mural.title(), 0.5), field("about.client", mural.client(), 0.3),
            field("about.revision", mural.revision(), 0.2)),
        List.of(field("about.document", TEXT.text("label"), 0.3), field("about.scale", "1:1", 0.2),
            field("about.date", context.date().toString(), 0.3),
            field("about.sheet", TEXT.text("sheet.of", "number", number + 1, "count", count), 0.2))));
  }

  private static Field field(String name, String value, double share) {
    return new Field(TEXT.text(name), value, share);
  }
}
