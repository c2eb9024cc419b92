// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.setout.geometry.Vec;

/**
 * How far one corner of a wall is out of square, or one of its sides out of level or out of plumb.
 *
 * @param kind which of the three
 * @param place the corner, such as {@code lower-left}, or the side: {@code bottom}, {@code right}, {@code top},
 *     {@code left}
 * @param off how far, mm. Square: what the side after the corner, counter-clockwise, leans from square at its end, above
 *     0 if the corner is wider than a right angle. Level: how much higher the right end of the side is. Plumb: how much
 *     farther right its upper end is
 * @param over the length of that side, mm
 */
public record OutOfTrue(Kind kind, String place, double off, double over) {
  /** What can be out of true. */
  public enum Kind {
    /** A corner that should be a right angle. */
    SQUARE,
    /** A lower or upper side that should be level. */
    LEVEL,
    /** A left or right side that should be plumb. */
    PLUMB
  }

  private static final List<String> CORNERS = List.of("lower-left", "lower-right", "upper-right", "upper-left");
  private static final List<String> SIDES = List.of("bottom", "right", "top", "left");
  private static final Messages TEXTS = Messages.of(OutOfTrue.class);

  /** All corners and sides of a wall, those farthest off first. */
  public static List<OutOfTrue> of(AdjustedWall wall) {
    List<Vec> corners = wall.fourCorners();
    AdjustedWall four = AdjustedWall.unchecked(corners);
    List<OutOfTrue> all = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Vec along = corners.get((i + 1) % corners.size()).minus(corners.get(i));
      Vec ahead = i < 2 ? along : along.times(-1);
      Kind kind = i % 2 == 0 ? Kind.LEVEL : Kind.PLUMB;
      all.add(new OutOfTrue(Kind.SQUARE, CORNERS.get(i), four.outOfSquare(i), along.length()));
      all.add(new OutOfTrue(kind, SIDES.get(i), kind == Kind.LEVEL ? ahead.y() : ahead.x(), along.length()));
    }
    all.sort(Comparator.comparingDouble((OutOfTrue one) -> -Math.abs(one.off)));
    return all;
  }

  /**
   * As {@link #of(AdjustedWall)}, without what is too little to be shown in these units; of a floor only its corners,
   * as nothing of it is to be plumb.
   */
  public static List<OutOfTrue> of(AdjustedWall wall, boolean floor, LengthUnit units) {
    return of(wall).stream().filter(one -> LengthText.rounded(one.off, units) != 0)
        .filter(one -> !floor || one.kind == Kind.SQUARE).toList();
  }

  /** In words, one after the other. */
  public static String words(List<OutOfTrue> all, LengthUnit units) {
    return all.stream().map(one -> one.words(units)).collect(Collectors.joining("; "));
  }

  /** In words, such as {@code lower right corner 12 mm wider than square over 1810 mm}. */
  public String words(LengthUnit units) {
    String key = "true." + kind.name().toLowerCase(Locale.ROOT) + (off > 0 ? ".more" : ".less");
    return TEXTS.text(key, "place", TEXTS.text("true." + place), "off", LengthText.shown(Math.abs(off), units), "over",
        LengthText.shown(over, units));
  }
}
