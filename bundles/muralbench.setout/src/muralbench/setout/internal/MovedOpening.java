// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.OpeningSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.Piece;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.bond.Pattern;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementSpec;

/**
 * A panel that is set out without one of its openings, so that it can be set out quickly with this opening anywhere. Only
 * the cells that the opening meets are cut; all others are as they are without it. So a move does not depend on the moves
 * before it.
 */
public final class MovedOpening {
  private final PanelSpec panel;
  private final int index;
  private final LengthUnit units;
  private final BondRegistry bonds;
  private final Motion turned;
  private final Vec origin;
  private final TiledRegion region;
  private Pattern pattern;
  private List<MovementJoint> joints = List.of();
  private final PanelRows rows;

  private MovedOpening(PanelSpec panel, Vec origin, int index, Layings layings) throws InputException {
    this.panel = panel;
    this.origin = origin;
    this.index = index;
    units = layings.units();
    bonds = layings.bonds();
    turned = Motion.turn(panel.bond().rotation(), Vec.ZERO);
    List<OpeningSpec> others = new ArrayList<>(panel.openings());
    others.remove(index);
    PanelSpec without = panel.withOpenings(others);
    PanelEngine engine = new PanelEngine(without, units);
    pattern = engine.pattern(layings.bonds());
    engine.checkSizes(pattern);
    region = TiledRegion.of(without, units);
    openJoints(engine, layings);
    rows = new PanelRows(naming(), engine.cells(region, pattern, placed(), Progress.NONE));
  }

  /**
   * The panel of a set-out, with its start and its opened joints kept.
   *
   * @param index where the opening stands among the openings of the panel
   * @param units the units in which errors give lengths
   * @throws InputException if the panel cannot be set out without the opening
   */
  public static MovedOpening of(PanelSetOut laid, int index, BondRegistry bonds, LengthUnit units)
      throws InputException {
    Layings layings = new Layings(bonds, units, Progress.NONE);
    // Joints of a shared grid that are opened outside the panel move what is in it, and cannot be given to it alone.
    boolean shared = laid.spec().origin() instanceof OriginSpec.Shared grid
        && !layings.field(laid.spec(), grid).joints().isEmpty();
    return new MovedOpening(shared ? laid.spec() : FixedStart.of(laid), laid.origin(), index, layings);
  }

  /** Finds the pattern with its movement joints opened. */
  private void openJoints(PanelEngine engine, Layings layings) throws InputException {
    if (panel.origin() instanceof OriginSpec.Shared shared) {
      FieldLaying.Field field = layings.field(panel, shared);
      pattern = field.pattern();
      joints = field.within(region.box(Motion.NONE));
    } else if (!(panel.movement() instanceof MovementSpec.None)) {
      PanelSetOut plain = engine.laid(region, pattern, turned, origin, List.of(), Progress.NONE);
      new MovementLaying(plain, pattern, turned, units, new Opened(plain)).laid();
    }
  }

  /** Keeps the pattern with its joints opened. */
  private final class Opened implements MovementLaying.Layer {
    private final PanelSetOut plain;

    Opened(PanelSetOut plain) {
      this.plain = plain;
    }

    @Override
    public Vec best(Pattern widened, List<Vec> starts) {
      throw new IllegalStateException("the start is given");
    }

    @Override
    public PanelSetOut laid(Pattern widened, Vec start, List<MovementJoint> opened) {
      pattern = widened;
      joints = opened;
      return plain;
    }
  }

  private Motion placed() {
    return turned.then(Motion.shift(origin));
  }

  private PieceNaming naming() {
    return new PieceNaming(panel, placed(), pattern.concentric());
  }

  /** What is asked for when the opening has an outline: the start and the joints are given. */
  public PanelSpec asked(Contour outline) {
    List<OpeningSpec> openings = new ArrayList<>(panel.openings());
    OpeningSpec opening = openings.get(index);
    openings.set(index, new OpeningSpec(opening.id(), opening.kind(), outline));
    return panel.withOpenings(openings);
  }

  /**
   * The set-out with the opening at a place, or with another outline.
   *
   * @throws InputException if the panel cannot be set out so
   */
  public PanelSetOut moved(Contour outline) throws InputException {
    PanelSpec asked = asked(outline);
    if (asked.band().isPresent()) {
      return new PanelEngine(asked, units).setOut(new Layings(bonds, units, Progress.NONE));
    }
    Optional<OpenedRegion> opened = region.opened(asked, index);
    if (opened.isPresent()) {
      List<Piece> pieces = pieces(opened.get());
      if (!pieces.isEmpty()) {
        return new PanelSetOut(asked, origin, opened.get().area(), opened.get().edges(), pieces, joints);
      }
    }
    return new PanelEngine(asked, units).laid(TiledRegion.of(asked, units), pattern, turned, origin, joints,
        Progress.NONE);
  }

  private List<Piece> pieces(OpenedRegion opened) {
    CellCutter cutter = new CellCutter(opened, placed());
    Map<PanelRows.Place, CutCell> changed = new HashMap<>();
    for (PanelRows.Place place : rows.near(opened.box())) {
      if (opened.touches(place.box())) {
        changed.put(place, cutter.cut(place.cell().cell()));
      }
    }
    return rows.pieces(changed);
  }
}
