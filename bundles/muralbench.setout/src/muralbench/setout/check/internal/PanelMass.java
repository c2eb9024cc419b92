// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;

/**
 * The mass of a panel that can be taken down, kg.
 *
 * @param tile the tile
 * @param adhesive adhesive and grout
 * @param board backing boards
 */
record PanelMass(double tile, double adhesive, double board) {
  /** Adhesive and grout, kg/m²: the middle of 3 to 5 in an adhesive maker's technical note. */
  static final double ADHESIVE = 4;
  /** Fibre-cement backer 0.42 in (11 mm) thick, kg/m²: 2.6 lb/ft² in its maker's guide. */
  static final double BACKER = 12.7;
  /** Plywood 3/4 in (19 mm) thick, kg/m²: common practice. */
  static final double PLYWOOD = 11;
  /** Tile, kg/m² for each mm: 18 for 9 mm, as summaries of BS 5385-1:2018 illustrate it. */
  static final double TILE = 2.0;
  /** Dense porcelain, kg/m² for each mm: common practice. */
  static final double PORCELAIN = 2.35;

  private static final double DENSE = 0.5;
  private static final double SQUARE_METRE = 1e6;

  /** The mass of a panel on fibre cement and plywood; its tile must have a thickness. */
  static PanelMass of(PanelSetOut panel) {
    double absorption = panel.spec().tile().waterAbsorption();
    double density = absorption >= 0 && absorption <= DENSE ? PORCELAIN : TILE;
    double faces = panel.pieces().stream().mapToDouble(Piece::area).sum();
    return of(faces, panel.area(), panel.spec().tile().thickness(), density, BACKER + PLYWOOD);
  }

  /**
   * A mass from areas.
   *
   * @param faces area of the faces of the tiles, mm²
   * @param area area of the panel, mm²
   * @param thickness of the tile, mm
   * @param density of the tile, kg/m² for each mm of thickness
   * @param boards kg/m²
   */
  static PanelMass of(double faces, double area, double thickness, double density, double boards) {
    return new PanelMass(faces / SQUARE_METRE * thickness * density, area / SQUARE_METRE * ADHESIVE,
        area / SQUARE_METRE * boards);
  }

  double total() {
    return tile + adhesive + board;
  }
}
