// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.Progress;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.Piece;
import muralbench.setout.bond.Bond;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.bond.BondRequest;
import muralbench.setout.bond.Pattern;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementSpec;

/** Sets out one panel: checks what was asked for, places the pattern, cuts the cells and names the pieces. */
public final class PanelEngine {
  /** The most cells that are laid in one panel. */
  public static final int MOST_CELLS = 5_000_000;

  private static final int CELLS_PER_STEP = 512;
  private static final double TOUCH = 1e-6;

  private final Messages texts = Messages.of(PanelEngine.class);
  private final PanelSpec panel;
  private final LengthUnit units;

  PanelEngine(PanelSpec panel, LengthUnit units) {
    this.panel = panel;
    this.units = units;
  }

  /**
   * The set-out of a panel.
   *
   * @param units the units in which errors give lengths
   * @throws InputException if the panel cannot be set out
   */
  public static PanelSetOut setOut(PanelSpec panel, BondRegistry bonds, LengthUnit units, Progress progress)
      throws InputException {
    return new Layings(bonds, units, progress).of(panel);
  }

  /** The set-out of the panel among others. */
  PanelSetOut setOut(Layings layings) throws InputException {
    Pattern pattern = pattern(layings.bonds());
    if (panel.origin() instanceof OriginSpec.Repeated repeated) {
      return new RepeatedPanel(panel, layings.of(repeated.panel()), repeated.to(), pattern).laid();
    }
    checkSizes(pattern);
    checkBand();
    Regions regions = Regions.of(panel, units);
    TiledRegion region = regions.all();
    if (panel.origin() instanceof OriginSpec.Shared shared) {
      FieldLaying.Field field = layings.field(panel, shared);
      return laid(region, field.pattern(), turned(), field.origin(), field.within(region.box(Motion.NONE)),
          layings.progress());
    }
    Vec origin = start(regions, pattern, layings);
    PanelSetOut plain = laid(region, pattern, turned(), origin, List.of(), layings.progress());
    return new MovementLaying(plain, pattern, turned(), units, new Relaying(regions, layings.progress())).laid();
  }

  /** The grid over a region that is larger than the panel. */
  FieldLaying.Field field(Regions regions, Layings layings) throws InputException {
    Pattern pattern = pattern(layings.bonds());
    TiledRegion region = regions.all();
    checkCells(pattern, region.box(Motion.NONE));
    Vec origin = start(regions, pattern, layings);
    if (panel.movement() instanceof MovementSpec.None) {
      return new FieldLaying.Field(pattern, origin, List.of());
    }
    PanelSetOut plain = laid(region, pattern, turned(), origin, List.of(), layings.progress());
    Relaying relaying = new Relaying(regions, layings.progress());
    PanelSetOut laid = new MovementLaying(plain, pattern, turned(), units, relaying).laid();
    return new FieldLaying.Field(laid == plain ? pattern : relaying.last, laid.origin(), laid.movement());
  }

  private Motion turned() {
    return Motion.turn(panel.bond().rotation(), Vec.ZERO);
  }

  /** Where the pattern starts before movement joints are opened, in the wall plane. */
  private Vec start(Regions regions, Pattern pattern, Layings layings) throws InputException {
    if (panel.origin() instanceof OriginSpec.At at) {
      return at.corner();
    }
    PlacementSearch search = search(regions, pattern, turned(), layings.progress());
    if (panel.origin() instanceof OriginSpec.Level level) {
      return new LevelStart(panel, level.with(), layings).of(regions.bare(), pattern, search);
    }
    return turned().of(search.best());
  }

  /** Lays the panel again with movement joints. */
  private final class Relaying implements MovementLaying.Layer {
    private final Regions regions;
    private final Progress progress;
    private Pattern last;

    Relaying(Regions regions, Progress progress) {
      this.regions = regions;
      this.progress = progress;
    }

    @Override
    public Vec best(Pattern widened, List<Vec> starts) {
      return search(regions, widened, turned(), progress).bestOf(starts);
    }

    @Override
    public PanelSetOut laid(Pattern widened, Vec start, List<MovementJoint> joints) throws InputException {
      last = widened;
      return PanelEngine.this.laid(regions.all(), widened, turned(), start, joints, progress);
    }
  }

  /** The set-out on a region with a pattern that starts from a place in the wall plane. */
  PanelSetOut laid(TiledRegion region, Pattern pattern, Motion turned, Vec origin, List<MovementJoint> joints,
      Progress progress) throws InputException {
    Motion placed = turned.then(Motion.shift(origin));
    List<CutCell> cut = cells(region, pattern, placed, progress);
    if (cut.isEmpty()) {
      throw new InputException(panel.id(), texts.text("panel.empty"), texts.text("panel.empty.remedy"));
    }
    List<Piece> pieces = new PieceNaming(panel, placed, pattern.concentric()).named(cut);
    return panel.band().isEmpty() ? new PanelSetOut(panel, origin, region.area(), region.edges(), pieces, joints)
        : withBand(pieces, origin);
  }

  /** The pieces of a field with those of the border around it, which come last. */
  private PanelSetOut withBand(List<Piece> field, Vec origin) throws InputException {
    TiledRegion whole = TiledRegion.of(panel, units);
    List<Piece> pieces = new ArrayList<>(field);
    pieces.addAll(new BandLaying(panel, panel.band().orElseThrow(), whole).pieces());
    return new PanelSetOut(panel, origin, whole.area(), whole.edges(), pieces);
  }

  /**
   * The balanced start of a panel, whatever start it has, and the next that come into question: lower left corners of
   * faces in the wall plane, the best first.
   *
   * @param most how many at most
   * @throws InputException if the panel cannot be set out
   */
  public static List<Vec> starts(PanelSpec panel, BondRegistry bonds, LengthUnit units, int most, Progress progress)
      throws InputException {
    PanelEngine engine = new PanelEngine(panel, units);
    Motion turned = Motion.turn(panel.bond().rotation(), Vec.ZERO);
    return engine.search(Regions.searched(panel, units), engine.pattern(bonds), turned, progress).ranked(most).stream()
        .map(turned::of).toList();
  }

  private PlacementSearch search(Regions regions, Pattern pattern, Motion turned, Progress progress) {
    Optional<Vec> focus = panel.origin() instanceof OriginSpec.Balanced balanced ? balanced.focus() : Optional.empty();
    return new PlacementSearch(regions, pattern, turned, panel, focus, progress);
  }

  /** The pattern of the panel, laid over the whole plane. */
  Pattern pattern(BondRegistry bonds) throws InputException {
    String kind = panel.bond().kind();
    Bond bond = bonds.find(kind).orElse(null);
    if (bond == null) {
      throw new InputException(panel.id(), texts.text("bond.unknown", "kind", kind), texts.text("bond.unknown.remedy",
          "known", bonds.all().stream().map(Bond::kind).collect(Collectors.joining(", "))));
    }
    for (String setting : panel.bond().settings().keySet()) {
      if (!bond.settingNames().contains(setting)) {
        String remedy = bond.settingNames().isEmpty() ? texts.text("setting.none.remedy")
            : texts.text("setting.unknown.remedy", "known", String.join(", ", bond.settingNames()));
        throw new InputException(panel.id(), texts.text("setting.unknown", "kind", kind, "setting", setting), remedy);
      }
    }
    try {
      return bond.lay(new BondRequest(panel.tile(), panel.joint(), panel.bond().offset(), panel.bond().settings()));
    } catch (InputException e) {
      throw new InputException(panel.id(), e.problem(), e.remedy(), e);
    }
  }

  private void checkBand() throws InputException {
    boolean shared = panel.origin() instanceof OriginSpec.Shared;
    if (panel.band().isPresent() && (shared || !(panel.movement() instanceof MovementSpec.None))) {
      String key = shared ? "band.shared" : "band.movement";
      throw new InputException(panel.id(), texts.text(key), texts.text(key + ".remedy"));
    }
  }

  /** Refuses tiles larger than the panel, and more cells than can be laid. */
  void checkSizes(Pattern pattern) throws InputException {
    Box box = panel.fieldOutline().box();
    double width = panel.tile().width();
    double height = panel.tile().height();
    if (width > box.width() + TOUCH || height > box.height() + TOUCH) {
      throw new InputException(panel.id(),
          texts.text("tile.large", "tile", panel.tile().id(), "width", LengthText.shown(width, units), "height",
              LengthText.shown(height, units), "panelWidth", LengthText.shown(box.width(), units), "panelHeight",
              LengthText.shown(box.height(), units)),
          texts.text("tile.large.remedy"));
    }
    checkCells(pattern, box);
  }

  private void checkCells(Pattern pattern, Box box) throws InputException {
    double cells = pattern.density() * box.width() * box.height();
    if (cells > MOST_CELLS) {
      throw new InputException(panel.id(),
          texts.text("cells.many", "cells", String.format(Locale.ROOT, "%.0f", cells), "most", MOST_CELLS),
          texts.text("cells.many.remedy"));
    }
  }

  /** What is left of the cells of a pattern, in its order. */
  List<CutCell> cells(TiledRegion region, Pattern pattern, Motion placed, Progress progress) {
    Box area = region.box(placed.inverse());
    CellCutter cutter = new CellCutter(region, placed);
    int expected = (int) (pattern.density() * area.width() * area.height()) + CELLS_PER_STEP;
    progress.begin(texts.text("progress.panel", "panel", panel.id()), expected);
    List<CutCell> cut = new ArrayList<>();
    int[] seen = {0};
    pattern.cells(area, cell -> {
      if (++seen[0] % CELLS_PER_STEP == 0) {
        progress.step(CELLS_PER_STEP);
      }
      CutCell result = cutter.cut(cell);
      if (result != null) {
        cut.add(result);
      }
    });
    return cut;
  }
}
