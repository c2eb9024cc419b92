// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.EnumSet;
import java.util.Set;

/**
 * How the pieces of a panel are made from tiles.
 *
 * @param afterCutting whether the picture is painted on pieces that are cut already, so that pieces can share a tile;
 *     otherwise every cell of the bond that leaves a piece takes a tile of its own
 * @param kerf what one cut of the saw takes away, mm, at least 0
 * @param factoryEdges the sides of a piece, as the cutting list draws it, that keep a factory edge of the tile where the
 *     set-out does not cut them
 */
public record MakingSpec(boolean afterCutting, double kerf, Set<FaceSide> factoryEdges) {
  /** The usual kerf of a wet saw, 1/16 in: common practice. */
  public static final double USUAL_KERF = 1.5875;

  public MakingSpec {
    if (!(kerf >= 0)) {
      throw new IllegalArgumentException("kerf " + kerf);
    }
    factoryEdges = Set.copyOf(factoryEdges);
  }

  /** Painted before cutting. */
  public static MakingSpec beforeCutting() {
    return new MakingSpec(false, USUAL_KERF, EnumSet.allOf(FaceSide.class));
  }

  /** Painted after cutting, with factory edges on all sides that are not cut. */
  public static MakingSpec afterCutting(double kerf) {
    return new MakingSpec(true, kerf, EnumSet.allOf(FaceSide.class));
  }
}
