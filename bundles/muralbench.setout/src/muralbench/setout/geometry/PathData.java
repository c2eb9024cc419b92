// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import java.util.List;

/** Path data in the grammar of SVG 1.1 (section 8.3), read with y up. */
public final class PathData {
  /** A path that cannot be read; the message says what was expected and at which character. */
  public static final class PathDataException extends Exception {
    private static final long serialVersionUID = 1L;

    PathDataException(String message) {
      super(message);
    }
  }

  private PathData() {}

  /**
   * Reads path data; every subpath becomes a closed contour, joined by a straight line where it was left open.
   * Arcs follow the implementation notes of SVG 1.1 (F.6): out-of-range radii are scaled up, a zero radius gives a
   * line. As y is up, a sweep flag of 1 runs counter-clockwise. What has no length is left out.
   *
   * @return at least one contour
   * @throws PathDataException if the text does not follow the grammar
   */
  public static List<Contour> parse(String data) throws PathDataException {
    return new PathReader(data, true).contours();
  }

  /**
   * Reads path data as lines; a subpath stays open unless the data closes it. Otherwise as {@link #parse}.
   *
   * @return at least one line, each of at least one segment
   * @throws PathDataException if the text does not follow the grammar
   */
  public static List<List<Segment>> parseLines(String data) throws PathDataException {
    return new PathReader(data, false).lines();
  }

  /** The contour as path data, numbers exact, arcs as arcs; y up. */
  public static String print(Contour contour) {
    return PathPrinter.print(contour);
  }
}
