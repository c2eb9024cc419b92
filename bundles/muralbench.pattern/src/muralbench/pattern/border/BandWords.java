// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;

/** Layouts and hints in plain words. */
public final class BandWords {
  private static final Messages TEXTS = Messages.of(BandWords.class);
  /** Below this a number is rounding dust, mm. */
  private static final double DUST = 1e-6;

  private final LengthUnit units;

  /** Words with lengths in a unit. */
  public BandWords(LengthUnit units) {
    this.units = units;
  }

  static String doesNotClose(Border border, List<String> hints, LengthUnit units) {
    BandWords words = new BandWords(units);
    String key = border.joint().min() == border.joint().max() ? "closes.not.fixed" : "closes.not";
    String problem = TEXTS.text(key, "min", words.fine(border.joint().min()), "max", words.fine(border.joint().max()));
    return problem + " " + (hints.isEmpty() ? TEXTS.text("closes.nothing")
        : TEXTS.text("closes.instead", "ways", String.join(TEXTS.text("closes.or"), hints)));
  }

  /** What a layout is made of, such as {@code joint 1/8 in; band moved in by 1/16 in; left and right 7 tiles; ...}. */
  public String describe(BandLayout layout) {
    List<String> parts = new ArrayList<>();
    parts.add(TEXTS.text("layout.joint", "joint", fine(layout.joint())));
    if (Math.abs(layout.move()) > DUST) {
      parts.add(move("layout", layout.move()));
    }
    if (layout.means().contains(Means.SCALE)) {
      parts.add(scale("layout", layout.scale()));
    }
    for (int row = 0; row < layout.border().rows().size(); row++) {
      parts.addAll(row(layout, row));
    }
    return String.join(TEXTS.text("layout.and"), parts);
  }

  /** What a layout on a curve is made of, with the size of its blanks. */
  public String describe(CurveLayout layout) {
    List<String> parts = new ArrayList<>();
    parts.add(TEXTS.text("layout.joint", "joint", fine(layout.joint())));
    if (Math.abs(layout.move()) > DUST) {
      parts.add(move("layout", layout.move()));
    }
    parts.add(TEXTS.text("curve.pieces", "pieces", layout.wedges(), "length", fine(layout.wedgeLength()), "width",
        fine(layout.outerChord()), "height", fine(layout.blankHeight())));
    if (layout.legTiles() > 0) {
      parts.add(TEXTS.text("curve.legs", "tiles", layout.legTiles(), "length", fine(layout.legTile())));
    }
    if (layout.foot() > 0) {
      parts.add(TEXTS.text("curve.foot", "length", fine(layout.foot())));
    }
    return String.join(TEXTS.text("layout.and"), parts);
  }

  /** The sides of a row with equal numbers in one text each. */
  private List<String> row(BandLayout layout, int row) {
    List<String> texts = new ArrayList<>();
    for (RunClass run : RunClass.of(layout.border(), row)) {
      String sides = run.sides().stream().map(layout.border().path()::sideName)
          .collect(Collectors.joining(TEXTS.text("layout.sides")));
      String text = pieces(layout.run(row, run.sides().get(0)), layout.border().rows().get(row));
      texts.add(layout.border().rows().size() == 1 ? TEXTS.text("layout.run", "sides", sides, "pieces", text)
          : TEXTS.text("layout.row", "row", row + 1, "sides", sides, "pieces", text));
    }
    return texts;
  }

  private String pieces(RunLayout run, BandRow row) {
    StringBuilder text = new StringBuilder(TEXTS.text(run.whole() == 1 ? "pieces.one" : "pieces", "tiles", run.whole()));
    if (row.repeat() > 1) {
      text.append(TEXTS.text(run.repeats() == 1 ? "pieces.repeat" : "pieces.repeats", "repeats", run.repeats()));
    }
    if (run.centre() > 0) {
      text.append(TEXTS.text("pieces.centre", "length", fine(run.centre())));
    }
    if (run.end() > 0) {
      text.append(TEXTS.text("pieces.ends", "length", fine(run.end())));
    }
    return text.toString();
  }

  String joint(Found found) {
    return TEXTS.text("hint.joint", "joint", fine(found.joint())) + also(found, Means.JOINT);
  }

  String moved(Found found) {
    return move("hint", found.move()) + also(found, Means.MOVE);
  }

  String scaled(Found found) {
    return scale("hint", found.scale()) + also(found, Means.SCALE);
  }

  String centre(Found found, Border border) {
    return TEXTS.text("hint.centre", "lengths", Runs.of(border, found).stream().filter(run -> run.centre() > 0)
        .map(run -> fine(run.centre())).distinct().collect(Collectors.joining(TEXTS.text("layout.sides"))))
        + also(found, Means.CENTRE);
  }

  String ends(Found found, Border border) {
    return TEXTS.text("hint.ends", "lengths", Runs.of(border, found).stream()
        .filter(run -> run.end() > 0 && !border.rows().get(run.row()).plain()).map(run -> fine(run.end())).distinct()
        .collect(Collectors.joining(TEXTS.text("layout.sides")))) + also(found, Means.ENDS);
  }

  /** The other numbers that a hint goes with. */
  private String also(Found found, Means told) {
    List<String> others = new ArrayList<>();
    if (told != Means.JOINT && Means.JOINT.in(found.mask())) {
      others.add(TEXTS.text("hint.joint", "joint", fine(found.joint())));
    }
    if (told != Means.MOVE && Means.MOVE.in(found.mask())) {
      others.add(move("hint", found.move()));
    }
    if (told != Means.SCALE && Means.SCALE.in(found.mask())) {
      others.add(scale("hint", found.scale()));
    }
    return others.isEmpty() ? "" : TEXTS.text("hint.also", "others", String.join(TEXTS.text("hint.and"), others));
  }

  private String move(String key, double by) {
    return TEXTS.text(key + (by > 0 ? ".in" : ".out"), "by", fine(Math.abs(by)));
  }

  private static String scale(String key, double scale) {
    return TEXTS.text(key + (scale > 1 ? ".longer" : ".shorter"), "percent",
        Math.round(Math.abs(scale - 1) * 10000) / 100.0);
  }

  private String fine(double length) {
    return LengthText.fine(length, units);
  }
}
