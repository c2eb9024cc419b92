// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

import java.util.List;

/**
 * How a line is drawn. Widths follow the steps of ISO 128 (0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1.0 mm).
 *
 * @param width mm
 * @param grey 0 black to 1 white
 * @param dashes lengths of dash and gap in turn, mm; empty for an unbroken line
 */
public record Pen(double width, double grey, List<Double> dashes) {
  /** For hatching, dimensions and leaders. */
  public static final Pen THIN = new Pen(0.18, 0, List.of());

  /** For joints and edges of tiles. */
  public static final Pen MEDIUM = new Pen(0.25, 0, List.of());

  /** For edges of panels and openings, and frames. */
  public static final Pen THICK = new Pen(0.5, 0, List.of());

  /** For what must be seen first. */
  public static final Pen HEAVY = new Pen(0.7, 0, List.of());

  public Pen {
    dashes = List.copyOf(dashes);
  }

  /** The same pen with dashes and gaps in turn, mm. */
  public Pen dashed(Double... lengths) {
    return new Pen(width, grey, List.of(lengths));
  }

  /** The same pen in a grey, 0 black to 1 white. */
  public Pen grey(double shade) {
    return new Pen(width, shade, dashes);
  }
}
