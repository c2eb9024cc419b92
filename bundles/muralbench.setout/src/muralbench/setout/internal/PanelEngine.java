// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

/** Sets out one panel: checks what was asked for, places the pattern, cuts the cells and names the pieces. */
public final class PanelEngine {
  /** The most cells that are laid in one panel. */
  public static final int MOST_CELLS = 5_000_000;

  private static final int CELLS_PER_STEP = 512;
  private static final double TOUCH = 1e-6;

  private final Messages texts = Messages.of(PanelEngine.class);
  private final PanelSpec panel;
  private final LengthUnit units;

  private PanelEngine(PanelSpec panel, LengthUnit units) {
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
    return new PanelEngine(panel, units).setOut(bonds, progress);
  }

  private PanelSetOut setOut(BondRegistry bonds, Progress progress) throws InputException {
    Pattern pattern = pattern(bonds);
    checkSizes(pattern);
    TiledRegion region = TiledRegion.of(panel, units);
    Motion turned = Motion.turn(panel.bond().rotation(), Vec.ZERO);
    Vec origin = panel.origin() instanceof OriginSpec.At at ? at.corner() : turned.of(balanced(region, pattern, turned));
    Motion placed = turned.then(Motion.shift(origin));
    List<CutCell> cut = cells(region, pattern, placed, progress);
    if (cut.isEmpty()) {
      throw new InputException(panel.id(), texts.text("panel.empty"), texts.text("panel.empty.remedy"));
    }
    List<Piece> pieces = new PieceNaming(panel, placed, pattern.concentric()).named(cut);
    return new PanelSetOut(panel, origin, region.area(), region.edges(), pieces);
  }

  private Pattern pattern(BondRegistry bonds) throws InputException {
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

  private void checkSizes(Pattern pattern) throws InputException {
    Box box = panel.outline().box();
    double width = panel.tile().width();
    double height = panel.tile().height();
    if (width > box.width() + TOUCH || height > box.height() + TOUCH) {
      throw new InputException(panel.id(),
          texts.text("tile.large", "tile", panel.tile().id(), "width", LengthText.shown(width, units), "height",
              LengthText.shown(height, units), "panelWidth", LengthText.shown(box.width(), units), "panelHeight",
              LengthText.shown(box.height(), units)),
          texts.text("tile.large.remedy"));
    }
    double cells = pattern.density() * box.width() * box.height();
    if (cells > MOST_CELLS) {
      throw new InputException(panel.id(),
          texts.text("cells.many", "cells", String.format(Locale.ROOT, "%.0f", cells), "most", MOST_CELLS),
          texts.text("cells.many.remedy"));
    }
  }

  /** The start of the pattern in its own, turned-back coordinates. */
  private Vec balanced(TiledRegion region, Pattern pattern, Motion turned) {
    Box box = region.box(turned.inverse());
    List<Pattern.Run> across = pattern.runs(Pattern.Axis.ACROSS, box);
    if (panel.bond().rotation() % 90 != 0 || across.isEmpty()) {
      return centred(region, pattern, box, turned);
    }
    // The course that starts the pattern is the lowest that shows.
    double y = firstSeen(BalancedStart.between(box.minY(), box.maxY(), across), across.get(0), box.minY());
    Box seen = new Box(box.minX(), box.minY() - y, box.maxX(), box.maxY() - y);
    List<Pattern.Run> along = pattern.runs(Pattern.Axis.ALONG, seen);
    double x = firstSeen(BalancedStart.between(box.minX(), box.maxX(), along), along.get(0), box.minX());
    return new Vec(x, y);
  }

  /** The start of the first face of a run that reaches beyond an edge. */
  private static double firstSeen(double start, Pattern.Run run, double edge) {
    double before = Math.floor((edge + TOUCH - run.face() - run.start() - start) / run.module());
    return start + (before + 1) * run.module();
  }

  /** For patterns that run askew: of the ways to centre a face or a joint, the one with the largest smallest piece. */
  private Vec centred(TiledRegion region, Pattern pattern, Box box, Motion turned) {
    Vec best = null;
    double bestSmallest = -1;
    for (Vec centre : centres(pattern)) {
      Vec start = box.centre().minus(centre);
      double smallest = cells(region, pattern, turned.then(Motion.shift(turned.of(start))), Progress.NONE).stream()
          .flatMap(cell -> cell.parts().stream()).mapToDouble(CutCell.Part::area).min().orElse(0);
      if (smallest > bestSmallest * (1 + TOUCH)) {
        bestSmallest = smallest;
        best = start;
      }
    }
    return best;
  }

  private List<Vec> centres(Pattern pattern) {
    if (!pattern.centres().isEmpty()) {
      return pattern.centres();
    }
    double joint = -panel.joint() / 2;
    double middle = panel.tile().width() / 2;
    double half = panel.tile().height() / 2;
    return List.of(new Vec(middle, half), new Vec(middle, joint), new Vec(joint, half), new Vec(joint, joint));
  }

  private List<CutCell> cells(TiledRegion region, Pattern pattern, Motion placed, Progress progress) {
    Box area = region.box(placed.inverse());
    CellCutter cutter = new CellCutter(region, placed, Math.hypot(panel.tile().width(), panel.tile().height()));
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
