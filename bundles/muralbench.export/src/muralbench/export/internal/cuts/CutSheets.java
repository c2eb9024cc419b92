// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import muralbench.base.Messages;
import muralbench.base.length.LengthUnit;
import muralbench.export.ExportContext;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Lettering;
import muralbench.export.internal.pdf.PrintDocument;
import muralbench.export.internal.pdf.SheetFoot;
import muralbench.export.internal.pdf.SheetFrame;
import muralbench.export.internal.pdf.SheetSize;
import muralbench.export.internal.pdf.TitleBlock;
import muralbench.export.internal.pdf.TitleBlock.Field;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.MuralSpec;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.geometry.Box;

/**
 * The cutting list on paper. The cards of the shapes fill columns from top to bottom and from left to right; below them
 * stand the check line, what to heed, and the title block.
 */
final class CutSheets {
  private static final Messages TEXT = Messages.of(CutSheets.class);
  private static final Type BODY = Type.plain(3);
  private static final double NARROWEST = 80;

  /** What draws a card in its place. */
  private interface Drawn {
    void draw(Canvas canvas, Box place) throws IOException;
  }

  /** A card in its place, and on which sheet. */
  private record Placed(int sheet, Drawn card, Box place) {}

  private final ExportContext context;
  private final SheetSize size;
  private final SheetFoot foot;
  private final Box body;
  private final int columns;
  private final Lettering lettering;
  private final List<Placed> placed = new ArrayList<>();
  private boolean shares;
  private int sheet;
  private int column;
  private double used;

  private CutSheets(ExportContext context, Lettering lettering) {
    this.context = context;
    this.lettering = lettering;
    size = SheetSize.of(context.paper(), false);
    foot = new SheetFoot(size);
    body = foot.body();
    columns = Math.max(1, (int) (body.width() / NARROWEST));
  }

  /** Writes the document and leaves the stream open. */
  static void write(ExportContext context, List<CutGroup> groups, MadeUpList shared, OutputStream out)
      throws IOException {
    try (Lettering lettering = Lettering.open()) {
      CutSheets sheets = new CutSheets(context, lettering);
      for (CutGroup group : groups) {
        sheets.place(new CutCard(group, context.units(), sheets.width(), lettering));
      }
      sheets.shares = !shared.layouts().isEmpty();
      for (List<MadeUpList.Numbered> layout : shared.layouts()) {
        for (MadeUpCard card : MadeUpCard.of(layout, context.units(), sheets.width(), lettering)) {
          sheets.place(card);
        }
      }
      sheets.print(out);
    }
  }

  private double width() {
    return body.width() / columns;
  }

  private void place(CutCard card) {
    if (used > 0 && used + card.height() + KeyLots.FEWEST * KeyLots.LINE > body.height()) {
      nextColumn();
    }
    int from = part(card, card.height(), 0);
    while (from < card.keys().lines()) {
      nextColumn();
      from = part(card, CutCard.furtherHeight(), from);
    }
  }

  private void place(MadeUpCard card) {
    if (used > 0 && used + card.height() > body.height()) {
      nextColumn();
    }
    take(card::draw, card.height());
  }

  private void take(Drawn card, double height) {
    double left = body.minX() + column * width();
    double top = body.maxY() - used;
    placed.add(new Placed(sheet, card, new Box(left, top - height, left + width(), top)));
    used += height;
  }

  /** Places as many lines of keys as there is room for; answers the first that is left. */
  private int part(CutCard card, double height, int from) {
    double free = body.height() - used - height - card.keys().height(from, from);
    int to = card.keys().part(from, Math.max(KeyLots.FEWEST, (int) (free / KeyLots.LINE)));
    take((canvas, place) -> card.draw(canvas, place, from, to), height + card.keys().height(from, to));
    return to;
  }

  private void nextColumn() {
    used = 0;
    column++;
    if (column == columns) {
      column = 0;
      sheet++;
    }
  }

  private void print(OutputStream out) throws IOException {
    MuralSpec mural = context.setOut().spec();
    try (PrintDocument document =
        new PrintDocument(TEXT.text("document.title", "title", mural.title()), TEXT.text("purpose"), context.date(),
            lettering)) {
      for (int i = 0; i <= sheet; i++) {
        print(document.sheet(size, Integer.toString(i + 1)), i);
      }
      document.save(out);
    }
  }

  private void print(Canvas canvas, int number) throws IOException {
    foot(canvas, number);
    for (Placed card : placed) {
      if (card.sheet() == number) {
        card.card().draw(canvas, card.place());
      }
    }
    if (placed.isEmpty()) {
      canvas.text(TEXT.text("none"), BODY, body.centre(), Canvas.Align.CENTRE);
    }
    SheetFrame.draw(canvas);
  }

  private void foot(Canvas canvas, int number) throws IOException {
    String rounding = context.units() == LengthUnit.INCH ? "rounding.in" : "rounding.mm";
    String measures = TEXT.text(shares ? "measures.shared" : "measures") + ' ' + TEXT.text(rounding);
    foot.draw(canvas, measures, TEXT.text("caution"), titleBlock(number));
  }

  private TitleBlock titleBlock(int number) {
    MuralSpec mural = context.setOut().spec();
    String units = context.units() == LengthUnit.INCH ? "units.in" : "units.mm";
    return new TitleBlock(List.of(
        List.of(field("about.project", mural.title(), 0.5), field("about.client", mural.client(), 0.3),
            field("about.revision", mural.revision(), 0.2)),
        List.of(field("about.document", TEXT.text("label"), 0.3), field("about.units", TEXT.text(units), 0.2),
            field("about.date", context.date().toString(), 0.3),
            field("about.sheet", TEXT.text("sheet.of", "number", number + 1, "count", sheet + 1), 0.2))));
  }

  private static Field field(String name, String value, double share) {
    return new Field(TEXT.text(name), value, share);
  }
}
