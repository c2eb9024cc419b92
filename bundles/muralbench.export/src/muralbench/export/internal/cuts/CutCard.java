// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.io.IOException;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.export.internal.PlainNumber;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Canvas.Align;
import muralbench.export.internal.pdf.Lettering;
import muralbench.export.internal.pdf.Pen;
import muralbench.export.internal.pdf.TextFit;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;

/**
 * Everything about one shape of cut piece: number, quantity, kind, size, drawing and keys. Keys that do not fit go on
 * in a card of their own.
 */
final class CutCard {
  private static final Messages TEXT = Messages.of(CutCard.class);
  private static final Type NUMBER = Type.bold(3.6);
  private static final Type WORDS = Type.plain(2.1);
  private static final Type KEYS_HEAD = Type.bold(1.9);
  private static final Type SCALE = Type.plain(1.7);
  private static final double INSET = 3;
  private static final double NUMBER_LINE = 7.2;
  private static final double WORD_LINE = 3.7;
  private static final double KEYS_LINE = 4;

  private final CutGroup group;
  private final LengthUnit unit;
  private final double width;
  private final CutDrawing drawing;
  private final CutCurves curves;
  private final KeyLots keys;

  CutCard(CutGroup group, LengthUnit unit, double width, Lettering lettering) throws IOException {
    this.group = group;
    this.unit = unit;
    this.width = width;
    double room = width - 2 * INSET;
    CutGeometry geometry = CutGeometry.of(group);
    drawing = new CutDrawing(group, geometry, unit, room, lettering);
    curves = new CutCurves(group, geometry, unit, room, lettering);
    keys = new KeyLots(group, room, lettering);
  }

  /** The keys and how their tiles are laid. */
  KeyLots keys() {
    return keys;
  }

  /** Height of the first card without its keys, mm. */
  double height() {
    return INSET + NUMBER_LINE + 2 * WORD_LINE + drawing.height() + curves.height() + KEYS_LINE + INSET;
  }

  /** Height of a card that only goes on with keys, without these, mm. */
  static double furtherHeight() {
    return INSET + NUMBER_LINE + INSET;
  }

  /** Draws the card in a place, with the lines of keys from {@code from} up to before {@code to}. */
  void draw(Canvas canvas, Box place, int from, int to) throws IOException {
    canvas.box(place, Pen.THIN);
    Vec top = new Vec(place.minX() + INSET, place.maxY() - INSET);
    top = from == 0 ? first(canvas, top) : further(canvas, top);
    keys.draw(canvas, top, from, to);
  }

  private Vec first(Canvas canvas, Vec top) throws IOException {
    Vec at = down(top, NUMBER_LINE);
    String number = TEXT.text("card.number", "number", group.number());
    canvas.text(number, NUMBER, at.plus(new Vec(0, 2.6)), Align.LEFT);
    Vec right = new Vec(top.x() + width - 2 * INSET, at.y() + 2.6);
    String pieces = group.keys().size() == 1 ? "card.piece" : "card.pieces";
    canvas.text(TEXT.text(pieces, "count", group.keys().size()), NUMBER, right, Align.RIGHT);
    at = words(canvas, at, TEXT.text("kind." + group.kind().word()), TEXT.text("card.tile", "tile", group.tile()));
    String uncut = group.fromBlank() ? "card.blank.size" : "card.tile.size";
    at = words(canvas, at, size("card.piece.size", group.outline().box()), size(uncut, group.face().box()));
    drawing.draw(canvas, at);
    at = down(at, drawing.height());
    curves.draw(canvas, at);
    at = down(at, curves.height() + KEYS_LINE);
    canvas.text(TEXT.text("card.keys"), KEYS_HEAD, at.plus(new Vec(0, 1)), Align.LEFT);
    canvas.text(TEXT.text("card.scale", "scale", scale()), SCALE, new Vec(right.x(), at.y() + 1), Align.RIGHT);
    return at;
  }

  private Vec further(Canvas canvas, Vec top) throws IOException {
    Vec at = down(top, NUMBER_LINE);
    canvas.text(TEXT.text("card.further", "number", group.number()), Type.bold(2.6), at.plus(new Vec(0, 2.6)),
        Align.LEFT);
    return at;
  }

  private Vec words(Canvas canvas, Vec top, String left, String right) throws IOException {
    Vec at = down(top, WORD_LINE);
    double room = width - 2 * INSET;
    canvas.text(left, WORDS, at.plus(new Vec(0, 1)), Align.LEFT);
    double free = room - canvas.lettering().width(left, WORDS) - 3;
    String fitting = new TextFit(canvas.lettering()).shortened(right, WORDS, free);
    canvas.text(fitting, WORDS, at.plus(new Vec(room, 1)), Align.RIGHT);
    return at;
  }

  private String size(String key, Box box) {
    return TEXT.text(key, "width", Ordinates.text(box.width(), unit), "height",
        LengthText.shown(box.height(), unit));
  }

  private String scale() {
    double reduction = drawing.reduction();
    return reduction >= 1 ? "1:" + PlainNumber.rounded(reduction, 1)
        : PlainNumber.rounded(1 / reduction, 1) + ":1";
  }

  private static Vec down(Vec from, double by) {
    return new Vec(from.x(), from.y() - by);
  }
}
