// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.List;
import java.util.Optional;
import muralbench.setout.geometry.Contour;
import muralbench.setout.movement.MovementSpec;
import muralbench.setout.survey.AdjustedWall;

/**
 * What the set-out needs to know of one panel. Lengths in millimetres, coordinates in the wall plane, y up from the
 * finished floor.
 *
 * @param id short name, unique in the mural; the first part of every key
 * @param title title, may be empty
 * @param surface {@code wall} or {@code floor}
 * @param mounting {@code fixed} or {@code removable}
 * @param tile the field tile
 * @param joint width of the joint between faces, at least 0
 * @param edgeGap gap left free inside the outline and around openings, 0 for none
 * @param outline the edge of the panel
 * @param openings what the tile runs around
 * @param bond the laying pattern
 * @param origin where it starts
 * @param survey the measurements behind the outline, if it was measured on site
 * @param movement the movement joints it is to have
 * @param making how its pieces are made from tiles
 * @param board the board it is set on if it is removable
 * @param band a border along its edge, already laid; the field lies inside it
 */
public record PanelSpec(String id, String title, String surface, String mounting, TileSpec tile, double joint,
    double edgeGap, Contour outline, List<OpeningSpec> openings, BondSpec bond, OriginSpec origin,
    Optional<AdjustedWall> survey, MovementSpec movement, MakingSpec making, BoardSpec board,
    Optional<BandSpec> band) {
  public PanelSpec {
    openings = List.copyOf(openings);
  }

  /** A panel whose outline was not measured on site. */
  public PanelSpec(String id, String title, String surface, String mounting, TileSpec tile, double joint,
      double edgeGap, Contour outline, List<OpeningSpec> openings, BondSpec bond, OriginSpec origin) {
    this(id, title, surface, mounting, tile, joint, edgeGap, outline, openings, bond, origin, Optional.empty());
  }

  /** A panel without movement joints. */
  public PanelSpec(String id, String title, String surface, String mounting, TileSpec tile, double joint,
      double edgeGap, Contour outline, List<OpeningSpec> openings, BondSpec bond, OriginSpec origin,
      Optional<AdjustedWall> survey) {
    this(id, title, surface, mounting, tile, joint, edgeGap, outline, openings, bond, origin, survey,
        new MovementSpec.None());
  }

  /** A panel without a border. */
  public PanelSpec(String id, String title, String surface, String mounting, TileSpec tile, double joint,
      double edgeGap, Contour outline, List<OpeningSpec> openings, BondSpec bond, OriginSpec origin,
      Optional<AdjustedWall> survey, MovementSpec movement, MakingSpec making, BoardSpec board) {
    this(id, title, surface, mounting, tile, joint, edgeGap, outline, openings, bond, origin, survey, movement, making,
        board, Optional.empty());
  }

  /** A panel that is painted before cutting, on a usual board if it is removable. */
  public PanelSpec(String id, String title, String surface, String mounting, TileSpec tile, double joint,
      double edgeGap, Contour outline, List<OpeningSpec> openings, BondSpec bond, OriginSpec origin,
      Optional<AdjustedWall> survey, MovementSpec movement) {
    this(id, title, surface, mounting, tile, joint, edgeGap, outline, openings, bond, origin, survey, movement,
        MakingSpec.beforeCutting(), BoardSpec.usual());
  }

  /** This panel with other openings. */
  public PanelSpec withOpenings(List<OpeningSpec> other) {
    return new PanelSpec(id, title, surface, mounting, tile, joint, edgeGap, outline, other, bond, origin, survey,
        movement, making, board, band);
  }

  /** This panel with another origin. */
  public PanelSpec withOrigin(OriginSpec other) {
    return new PanelSpec(id, title, surface, mounting, tile, joint, edgeGap, outline, openings, bond, other, survey,
        movement, making, board, band);
  }

  /** This panel in another bond. */
  public PanelSpec withBond(BondSpec other) {
    return new PanelSpec(id, title, surface, mounting, tile, joint, edgeGap, outline, openings, other, origin, survey,
        movement, making, board, band);
  }

  /** This panel with other movement joints. */
  public PanelSpec withMovement(MovementSpec other) {
    return new PanelSpec(id, title, surface, mounting, tile, joint, edgeGap, outline, openings, bond, origin, survey,
        other, making, board, band);
  }

  /** This panel with its pieces made another way. */
  public PanelSpec withMaking(MakingSpec other) {
    return new PanelSpec(id, title, surface, mounting, tile, joint, edgeGap, outline, openings, bond, origin, survey,
        movement, other, board, band);
  }

  /** This panel on another board. */
  public PanelSpec withBoard(BoardSpec other) {
    return new PanelSpec(id, title, surface, mounting, tile, joint, edgeGap, outline, openings, bond, origin, survey,
        movement, making, other, band);
  }

  /** This panel with a border. */
  public PanelSpec withBand(BandSpec other) {
    return new PanelSpec(id, title, surface, mounting, tile, joint, edgeGap, outline, openings, bond, origin, survey,
        movement, making, board, Optional.of(other));
  }

  /** The outline of the field: that of the panel, or what its border leaves of it. */
  public Contour fieldOutline() {
    return band.map(BandSpec::field).orElse(outline);
  }
}
