// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.board;

import muralbench.setout.BoardSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;

/**
 * The mass of a panel that can be taken down, kg; an estimate, since densities are those of usual materials.
 *
 * @param tile the tile
 * @param adhesive adhesive and grout
 * @param board backing boards
 */
public record PanelMass(double tile, double adhesive, double board) {
  /** The most that one person should lift, kg: 51 lb, the load constant of NIOSH publication 94-110. */
  public static final double ONE_PERSON = 23;
  /** One pound, kg. */
  public static final double POUND = 0.45359237;

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

  private static final double BACKER_THICKNESS = 10.668;
  private static final double PLYWOOD_THICKNESS = 19.05;
  private static final double DENSE = 0.5;
  private static final double SQUARE_METRE = 1e6;
  private static final double THOUSAND = 1000;

  /**
   * The mass of a panel on its board; its tile must have a thickness.
   *
   * @param boardArea of the board, mm²
   */
  static PanelMass of(PanelSetOut panel, double boardArea) {
    double absorption = panel.spec().tile().waterAbsorption();
    double density = absorption >= 0 && absorption <= DENSE ? PORCELAIN : TILE;
    double faces = panel.pieces().stream().mapToDouble(Piece::area).sum();
    PanelMass plain = of(faces, panel.area(), panel.spec().tile().thickness(), density, 0);
    return new PanelMass(plain.tile, plain.adhesive, boardArea / SQUARE_METRE * perSquareMetre(panel.spec().board()));
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

  /** What a square metre of a board weighs, kg. Of fibre cement on plywood a thickness of its own is that of both. */
  static double perSquareMetre(BoardSpec board) {
    double thickness = board.thickness() > 0 ? board.thickness() : usualThickness(board.material());
    if (board.density() > 0) {
      return board.density() * thickness / THOUSAND;
    }
    return switch (board.material()) {
      case "fibre-cement" -> BACKER * thickness / BACKER_THICKNESS;
      case "plywood" -> PLYWOOD * thickness / PLYWOOD_THICKNESS;
      default -> {
        double backer = Math.min(thickness, BACKER_THICKNESS);
        yield BACKER * backer / BACKER_THICKNESS + PLYWOOD * (thickness - backer) / PLYWOOD_THICKNESS;
      }
    };
  }

  private static double usualThickness(String material) {
    return switch (material) {
      case "fibre-cement" -> BACKER_THICKNESS;
      case "plywood" -> PLYWOOD_THICKNESS;
      default -> BACKER_THICKNESS + PLYWOOD_THICKNESS;
    };
  }

  /** All of it. */
  public double total() {
    return tile + adhesive + board;
  }
}
