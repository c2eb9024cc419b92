// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.Piece;
import muralbench.setout.PieceKind;
import muralbench.setout.check.internal.SmallCuts;
import muralbench.setout.fit.Alternative.Kind;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.NarrowWidth;

/** Measures a set-out against the present one and puts it into words. */
final class FitWords {
  private static final Messages TEXTS = Messages.of(FitWords.class);
  private static final double EXACT = 1e-6;

  private final PanelSetOut present;
  private final LengthUnit units;

  FitWords(PanelSetOut present, LengthUnit units) {
    this.present = present;
    this.units = units;
  }

  Alternative alternative(Kind kind, PanelSetOut setOut) {
    OptionalDouble smallest = setOut.pieces().stream().filter(piece -> piece.kind() != PieceKind.WHOLE)
        .mapToDouble(piece -> NarrowWidth.of(piece.outline(), piece.holes())).min();
    int small = SmallCuts.count(setOut);
    boolean across = wholeAtEnds(setOut, Box::minX, Box::maxX);
    boolean up = wholeAtEnds(setOut, Box::minY, Box::maxY);
    String ends = setOut.cut() == 0 ? "" : TEXTS.text("ends." + (across ? "across" : "") + (up ? "up" : ""));
    String consequence = String.join(" ", ends, cuts(setOut, smallest, small), tiles(setOut), effect(kind, setOut))
        .replace("  ", " ").strip();
    return new Alternative(kind, setOut, smallest, small, across, up, TEXTS.text("title." + kind.name()),
        change(kind, setOut), consequence);
  }

  /** Whether the pieces at both ends of the tiled area are as long along the axis as their faces. */
  private static boolean wholeAtEnds(PanelSetOut setOut, ToDoubleFunction<Box> low, ToDoubleFunction<Box> high) {
    Box ends = setOut.tiled().stream().map(Contour::box).reduce(Box::and).orElseThrow();
    boolean atLow = false;
    boolean atHigh = false;
    for (Piece piece : setOut.pieces()) {
      Box box = piece.box();
      boolean here = low.applyAsDouble(box) < low.applyAsDouble(ends) + EXACT;
      boolean there = high.applyAsDouble(box) > high.applyAsDouble(ends) - EXACT;
      atLow |= here;
      atHigh |= there;
      if (here || there) {
        Box face = piece.face().box();
        if (length(face, low, high) - length(box, low, high) > EXACT) {
          return false;
        }
      }
    }
    return atLow && atHigh;
  }

  private static double length(Box box, ToDoubleFunction<Box> low, ToDoubleFunction<Box> high) {
    return high.applyAsDouble(box) - low.applyAsDouble(box);
  }

  private String cuts(PanelSetOut setOut, OptionalDouble smallest, int small) {
    if (smallest.isEmpty()) {
      return TEXTS.text("cuts.none");
    }
    String key = setOut.cut() == 1 ? "one" : small == 0 ? "good" : small == setOut.cut() ? "poor" : "some";
    return TEXTS.text("cuts." + key, "cuts", setOut.cut(), "small", small,
        "width", LengthText.shown(smallest.getAsDouble(), units));
  }

  private String tiles(PanelSetOut setOut) {
    int more = setOut.tilesToOrder() - present.tilesToOrder();
    String key = more == 0 ? "tiles.same" : more > 0 ? "tiles.more" : "tiles.fewer";
    return setOut == present ? "" : TEXTS.text(Math.abs(more) == 1 ? key + ".one" : key, "count", Math.abs(more));
  }

  private String effect(Kind kind, PanelSetOut setOut) {
    return switch (kind) {
      case PRESENT, TRIM, START -> "";
      case JOINT -> TEXTS.text(setOut.spec().joint() > present.spec().joint() ? "effect.wider" : "effect.narrower");
      case EDGE -> TEXTS.text(setOut.spec().openings().isEmpty() ? "effect.margin" : "effect.margin.openings");
      case SIZE -> TEXTS.text("effect.size");
    };
  }

  private String change(Kind kind, PanelSetOut setOut) {
    PanelSpec spec = setOut.spec();
    PanelSpec now = present.spec();
    return switch (kind) {
      case PRESENT -> TEXTS.text("change.none");
      case TRIM -> TEXTS.text("change.trim");
      case START -> start(setOut.origin().x() - present.origin().x(), setOut.origin().y() - present.origin().y());
      case JOINT -> TEXTS.text("change.joint", "before", fine(now.joint()), "after", fine(spec.joint()));
      case EDGE -> TEXTS.text("change.margin", "before", fine(now.edgeGap()), "after", fine(spec.edgeGap()));
      case SIZE -> TEXTS.text("change.size", "before", size(now), "after", size(spec));
    };
  }

  private String size(PanelSpec spec) {
    Box box = spec.outline().box();
    return fine(box.width()) + " × " + fine(box.height());
  }

  /** Where the first face goes, without a direction in which nothing is seen to move. */
  private String start(double right, double up) {
    List<String> ways = new ArrayList<>();
    if (LengthText.rounded(right, units) != 0) {
      ways.add(way(right > 0 ? "way.right" : "way.left", right));
    }
    if (LengthText.rounded(up, units) != 0 || ways.isEmpty()) {
      ways.add(way(up < 0 ? "way.down" : "way.up", up));
    }
    return TEXTS.text(ways.size() == 1 ? "change.start" : "change.start.both", "one", ways.get(0), "other",
        ways.get(ways.size() - 1));
  }

  private String way(String key, double length) {
    return TEXTS.text(key, "off", LengthText.shown(Math.abs(length), units));
  }

  private String fine(double length) {
    return LengthText.fine(length, units);
  }
}
