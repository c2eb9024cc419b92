// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

import muralbench.export.Paper;
import muralbench.setout.geometry.Box;

/**
 * A sheet of paper the way round it is read.
 *
 * @param width mm
 * @param height mm
 */
public record SheetSize(double width, double height) {
  /** Room for filing on the left; older practice of ISO 5457. */
  public static final double FILING_MARGIN = 20;

  /** The other three margins; older practice of ISO 5457 for A2 to A4. */
  public static final double MARGIN = 10;

  /** The sheet of a paper, upright or lying. */
  public static SheetSize of(Paper paper, boolean landscape) {
    return landscape ? new SheetSize(paper.height(), paper.width()) : new SheetSize(paper.width(), paper.height());
  }

  /** Whether the sheet is wider than high. */
  public boolean landscape() {
    return width > height;
  }

  /** The rectangle inside the margins, where the frame is drawn. */
  public Box frame() {
    return new Box(FILING_MARGIN, MARGIN, width - MARGIN, height - MARGIN);
  }
}
