// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.List;
import java.util.Optional;
import muralbench.setout.geometry.Transfer;
import muralbench.setout.geometry.Vec;

/** Where the laying pattern starts. */
public sealed interface OriginSpec {
  /**
   * The set-out chooses, so that opposite cuts are equal and as wide as can be.
   *
   * @param focus a point in the wall plane that the centre of a face or a crossing of joints is laid on; none to leave
   *     the choice free
   */
  record Balanced(Optional<Vec> focus) implements OriginSpec {
    /** Chosen freely. */
    public Balanced() {
      this(Optional.empty());
    }
  }

  /**
   * A given start.
   *
   * @param corner lower left corner of one tile face, in the wall plane
   */
  record At(Vec corner) implements OriginSpec {}

  /**
   * The grid runs on through several panels, which are laid as one field.
   *
   * @param start where the grid starts; none that is shared or repeated itself
   * @param panels all panels of the field in story order, each with that start for its origin
   */
  record Shared(OriginSpec start, List<PanelSpec> panels) implements OriginSpec {
    public Shared {
      panels = List.copyOf(panels);
    }

    @Override
    public boolean given() {
      return start.given();
    }
  }

  /**
   * The courses lie level with those of another panel, balanced from left to right on their own.
   *
   * @param with the other panel
   */
  record Level(PanelSpec with) implements OriginSpec {}

  /**
   * The layout of another panel in another place, piece by piece.
   *
   * @param panel the other panel
   * @param to where it comes to be
   */
  record Repeated(PanelSpec panel, Transfer to) implements OriginSpec {
    @Override
    public boolean given() {
      return panel.origin().given();
    }
  }

  /** Whether a person said where one tile face lies. */
  default boolean given() {
    return this instanceof At;
  }
}
