// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import muralbench.base.Messages;
import muralbench.base.length.LengthUnit;

/**
 * A scale that has a name: for millimetres those of ISO 5455, for inches those of the scale rulers of the building
 * trades (common practice).
 *
 * @param reduction how many times smaller the drawing is than the work; below 1 the drawing is larger
 * @param name as printed in the title block
 */
record DrawingScale(double reduction, String name) {
  private static final int[] INCHES_TO_THE_FOOT = {4, 8, 12, 16, 24, 48};
  private static final int[] METRIC = {1, 2, 5, 10, 20, 50};
  private static final int[] ENLARGED = {2, 5, 10};
  private static final List<String> RULERS = List.of("3", "1-1/2", "1", "3/4", "1/2", "1/4");

  /** The scales for work that is set out piece by piece, largest drawing first. */
  static List<DrawingScale> forPanels(LengthUnit units) {
    if (units == LengthUnit.MILLIMETRE) {
      return IntStream.of(METRIC).mapToObj(DrawingScale::ratio).toList();
    }
    Stream<DrawingScale> feet =
        IntStream.range(0, RULERS.size()).mapToObj(i -> toTheFoot(RULERS.get(i), INCHES_TO_THE_FOOT[i]));
    return Stream.concat(Stream.of(ratio(1), ratio(2)), feet).toList();
  }

  /** The scales for work too small to be read at its own size, smallest drawing first. */
  static List<DrawingScale> enlarged() {
    return IntStream.of(ENLARGED)
        .mapToObj(times -> new DrawingScale(1.0 / times, texts().text("scale.enlarged", "times", times))).toList();
  }

  /** The scales for a whole wall, largest drawing first. */
  static List<DrawingScale> forWalls(LengthUnit units) {
    Stream<DrawingScale> smaller = units == LengthUnit.MILLIMETRE
        ? Stream.of(ratio(100), ratio(200), ratio(500), ratio(1000), ratio(10_000))
        : Stream.of(toTheFoot("1/8", 96), toTheFoot("1/16", 192), ratio(480), ratio(960), ratio(9600));
    return Stream.concat(forPanels(units).stream().skip(2), smaller).toList();
  }

  private static DrawingScale ratio(int reduction) {
    return new DrawingScale(reduction, texts().text("scale.ratio", "reduction", reduction));
  }

  private static DrawingScale toTheFoot(String inches, int reduction) {
    return new DrawingScale(reduction, texts().text("scale.foot", "inches", inches, "reduction", reduction));
  }

  private static Messages texts() {
    return Messages.of(DrawingScale.class);
  }
}
