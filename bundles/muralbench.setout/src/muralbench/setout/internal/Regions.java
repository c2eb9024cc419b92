// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.List;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.setout.OpeningSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSpec;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * What is tiled of a panel inside its border, and the same as if there were no small openings, which must not upset a
 * start. An opening is small if no edge of it is as long as the tile, along the courses or across.
 *
 * @param all what is tiled
 * @param bare the same without small openings; {@code all} itself if there are none or the start is given
 */
record Regions(TiledRegion all, TiledRegion bare) {
  private static final double TOUCH = 1e-6;

  /**
   * The regions of a panel.
   *
   * @throws InputException as {@link TiledRegion#of}
   */
  static Regions of(PanelSpec panel, LengthUnit units) throws InputException {
    TiledRegion all = field(panel, units);
    return panel.origin() instanceof OriginSpec.At ? new Regions(all, all) : searched(panel, all, units);
  }

  /** The regions of a panel whose start is looked for, whatever start it has. */
  static Regions searched(PanelSpec panel, LengthUnit units) throws InputException {
    return searched(panel, field(panel, units), units);
  }

  /** What is tiled of a panel without its border. */
  private static TiledRegion field(PanelSpec panel, LengthUnit units) throws InputException {
    TiledRegion whole = TiledRegion.of(panel, units);
    return panel.band().isEmpty() ? whole : whole.within(panel.fieldOutline());
  }

  private static Regions searched(PanelSpec panel, TiledRegion all, LengthUnit units) throws InputException {
    List<OpeningSpec> large = panel.openings().stream().filter(opening -> !small(opening, panel)).toList();
    return new Regions(all, large.size() == panel.openings().size() ? all
        : field(panel.withOpenings(large), units));
  }

  /** The regions of several panels as those of one. */
  static Regions together(PanelSpec panel, List<Regions> parts) {
    TiledRegion all = TiledRegion.together(panel, parts.stream().map(Regions::all).toList());
    return new Regions(all, parts.stream().allMatch(part -> part.all() == part.bare()) ? all
        : TiledRegion.together(panel, parts.stream().map(Regions::bare).toList()));
  }

  private static boolean small(OpeningSpec opening, PanelSpec panel) {
    Motion back = Motion.turn(panel.bond().rotation(), Vec.ZERO).inverse();
    return opening.outline().moved(back).segments().stream().map(Segment::box)
        .allMatch(edge -> edge.width() < panel.tile().width() - TOUCH && edge.height() < panel.tile().height() - TOUCH);
  }
}
