// SPDX-License-Identifier: EPL-2.0
package muralbench.export;

/** The ids of the exporters that come with the program; never translated, kept from release to release. */
public final class ExporterIds {
  /** Key sheets for the installer, PDF. */
  public static final String KEY_SHEETS = "key-sheets";

  /**
   * The cutting list for the tile cutter: {@code cutting-list.pdf}, {@code cutting-list.csv}, {@code cutting-list.xlsx}
   * and, with every piece, {@code pieces.csv}, with the pieces that share a tile, if any, {@code made-up.csv}, and with
   * what to order, {@code order.csv}. One exporter, since they belong together and share their numbering.
   */
  public static final String CUTTING_LIST = "cutting-list";

  /** Curved cuts in full size, {@code templates.pdf}. */
  public static final String TEMPLATES = "templates";

  /** One drawing for each panel, {@code panel-ID.svg}. */
  public static final String SVG = "svg";

  /** The pieces for other programs, {@code pieces.json}. */
  public static final String PIECES = "pieces";

  private ExporterIds() {}
}
