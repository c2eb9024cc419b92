// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.List;
import muralbench.setout.geometry.Contour;

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
 */
public record PanelSpec(String id, String title, String surface, String mounting, TileSpec tile, double joint,
    double edgeGap, Contour outline, List<OpeningSpec> openings, BondSpec bond, OriginSpec origin) {
  public PanelSpec {
    openings = List.copyOf(openings);
  }
}
