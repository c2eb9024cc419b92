// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.export.internal.cuts.MadeUpList.Numbered;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Canvas.Align;
import muralbench.export.internal.pdf.Lettering;
import muralbench.export.internal.pdf.Pen;
import muralbench.export.internal.pdf.TextColumn;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;
import muralbench.setout.order.MadePiece;
import muralbench.setout.order.MadeTile;

/** How some tiles are sawn alike: a drawing with a letter for each piece, and the keys of the pieces of each tile. */
final class MadeUpCard {
  private static final Messages TEXT = Messages.of(MadeUpCard.class);
  private static final Type HEAD = Type.bold(3.6);
  private static final Type WORDS = Type.plain(2.1);
  private static final Type LETTER = Type.plain(2.6);
  private static final double INSET = 3;
  private static final double HEAD_LINE = 7.2;
  private static final double DRAWN = 36;
  /** Tiles on one card; more go on in a further card. */
  private static final int MOST = 24;
  private static final double SHADE = 0.85;

  private final List<Numbered> tiles;
  private final LengthUnit unit;
  private final double scale;
  private final TextColumn words;

  private MadeUpCard(List<Numbered> tiles, LengthUnit unit, double width, Lettering lettering) throws IOException {
    this.tiles = tiles;
    this.unit = unit;
    double room = width - 2 * INSET;
    scale = Math.min(room / first().width(), DRAWN / first().height());
    words = TextColumn.of(words(), WORDS, room, lettering);
  }

  /** The cards for tiles that are sawn alike. */
  static List<MadeUpCard> of(List<Numbered> tiles, LengthUnit unit, double width, Lettering lettering)
      throws IOException {
    List<MadeUpCard> cards = new ArrayList<>();
    for (int from = 0; from < tiles.size(); from += MOST) {
      cards.add(new MadeUpCard(tiles.subList(from, Math.min(tiles.size(), from + MOST)), unit, width, lettering));
    }
    return cards;
  }

  private MadeTile first() {
    return tiles.get(0).tile();
  }

  /** Height of the card, mm. */
  double height() {
    return INSET + HEAD_LINE + first().height() * scale + INSET + words.height() + INSET;
  }

  /** Draws the card in a place. */
  void draw(Canvas canvas, Box place) throws IOException {
    canvas.box(place, Pen.THIN);
    Vec top = new Vec(place.minX() + INSET, place.maxY() - INSET);
    String head = TEXT.text(tiles.size() == 1 ? "made.head.one" : "made.head", "count", tiles.size());
    canvas.text(head, HEAD, top.plus(new Vec(0, 2.6 - HEAD_LINE)), Align.LEFT);
    canvas.text(TEXT.text("made.tile", "tile", first().tile(), "width", shown(first().width()), "height",
        shown(first().height())), WORDS, new Vec(place.maxX() - INSET, top.y() + 2.6 - HEAD_LINE), Align.RIGHT);
    double low = top.y() - HEAD_LINE - first().height() * scale;
    tile(canvas, new Vec(top.x(), low));
    words.draw(canvas, new Vec(top.x(), low - INSET));
  }

  /** The tile with its waste in grey. */
  private void tile(Canvas canvas, Vec corner) throws IOException {
    Box face = placed(new Box(0, 0, first().width(), first().height()), corner);
    canvas.fill(face, SHADE);
    for (int i = 0; i < first().pieces().size(); i++) {
      Box piece = placed(first().pieces().get(i).place(), corner);
      canvas.fill(piece, 1);
      canvas.box(piece, Pen.MEDIUM);
      canvas.text(letter(i), LETTER, piece.centre().minus(new Vec(0, LETTER.height() / 2)), Align.CENTRE);
    }
    canvas.box(face, Pen.THICK);
  }

  private Box placed(Box box, Vec corner) {
    return new Box(corner.x() + box.minX() * scale, corner.y() + box.minY() * scale, corner.x() + box.maxX() * scale,
        corner.y() + box.maxY() * scale);
  }

  private List<String> words() {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < first().pieces().size(); i++) {
      Box place = first().pieces().get(i).place();
      lines.add(TEXT.text("made.piece", "letter", letter(i), "width", shown(place.width()), "height",
          shown(place.height()), "left", shown(place.minX()), "below", shown(place.minY())));
    }
    for (Numbered tile : tiles) {
      lines.add(TEXT.text("made.keys", "number", tile.number(), "keys", IntStream.range(0, tile.tile().pieces().size())
          .mapToObj(i -> key(i, tile.tile().pieces().get(i))).collect(Collectors.joining(", "))));
    }
    return lines;
  }

  private static String key(int number, MadePiece piece) {
    return TEXT.text("made.key." + piece.quarters(), "letter", letter(number), "key", piece.key());
  }

  private static String letter(int piece) {
    return String.valueOf((char) ('a' + piece));
  }

  private String shown(double length) {
    return LengthText.shown(length, unit);
  }
}
