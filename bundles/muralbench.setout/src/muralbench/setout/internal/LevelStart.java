// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.bond.Pattern;
import muralbench.setout.bond.Pattern.Axis;
import muralbench.setout.bond.Pattern.Run;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;

/**
 * Finds the start of a panel whose courses lie level with those of another: at the height of the other's courses, and
 * balanced from left to right alone, by the same rules as {@link PlacementSearch}. Straight level courses have to be as
 * high as those of the other; any other bond has to be the same in both panels, and its starts are sampled.
 */
final class LevelStart {
  private static final double SAME = 1e-9;
  private static final double STEP = 1e-4;
  private static final int SAMPLES = 96;

  private final Messages texts = Messages.of(LevelStart.class);
  private final PanelSpec panel;
  private final PanelSpec with;
  private final Layings layings;
  private final Motion turned;

  LevelStart(PanelSpec panel, PanelSpec with, Layings layings) {
    this.panel = panel;
    this.with = with;
    this.layings = layings;
    turned = Motion.turn(panel.bond().rotation(), Vec.ZERO);
  }

  /**
   * The start in the wall plane.
   *
   * @param search compares the starts by what they leave of the tiles
   * @throws InputException if the courses of the panels cannot be level with each other
   */
  Vec of(TiledRegion region, Pattern pattern, PlacementSearch search) throws InputException {
    PanelSetOut other = layings.of(with);
    Box box = region.box(Motion.NONE);
    Run own = course(panel, pattern, box);
    Run others = course(with, new PanelEngine(with, layings.units()).pattern(layings.bonds()), box);
    if (own != null && others != null) {
      if (Math.abs(own.face() - others.face()) > SAME || Math.abs(own.module() - others.module()) > SAME) {
        throw new InputException(panel.id(),
            texts.text("level.courses", "other", with.id(), "own", shown(own), "height", shown(others)),
            texts.text("level.courses.remedy"));
      }
      double level = bottom(with, others, other.origin().y());
      double lowest = level + Math.floor((box.minY() - level) / own.module()) * own.module();
      double height = lowest - bottom(panel, own, 0);
      return best(alongCourses(region, pattern, height), search);
    }
    if (!sameLayout()) {
      throw new InputException(panel.id(), texts.text("level.bond", "other", with.id()),
          texts.text("level.bond.remedy"));
    }
    return best(sampled(pattern, box, other.origin().y()), search);
  }

  private String shown(Run course) {
    return LengthText.shown(course.module(), layings.units());
  }

  private boolean sameLayout() {
    return panel.bond().equals(with.bond()) && Math.abs(panel.joint() - with.joint()) < SAME
        && Math.abs(panel.tile().width() - with.tile().width()) < SAME
        && Math.abs(panel.tile().height() - with.tile().height()) < SAME;
  }

  /** The level courses of a panel; none if its courses are not straight and level. */
  private static Run course(PanelSpec panel, Pattern pattern, Box box) {
    List<Run> runs = pattern.runs(Axis.ACROSS, box);
    return runs.size() == 1 && panel.bond().rotation() % 180 == 0 ? runs.get(0) : null;
  }

  /** The height of the lower edge of a course when the pattern starts at a height. */
  private static double bottom(PanelSpec panel, Run course, double start) {
    return panel.bond().rotation() % 360 == 0 ? start + course.start() : start - course.start() - course.face();
  }

  private Vec best(List<Vec> starts, PlacementSearch search) {
    Motion back = turned.inverse();
    return turned.of(search.bestOf(starts.stream().map(back::of).toList()));
  }

  /** The starts at a height that leave no gap at the sides and among which the evenest are. */
  private List<Vec> alongCourses(TiledRegion region, Pattern pattern, double height) {
    Motion back = turned.inverse();
    List<Contour> edges = region.edges().stream().map(edge -> edge.moved(back)).toList();
    Box box = region.box(back);
    double up = back.of(new Vec(0, height)).y();
    StraightCuts cuts = StraightCuts.ofRows(edges, box, pattern, up, panel.tile().height());
    Run first = pattern.runs(Axis.ALONG, new Box(0, box.minY() - up, 0, box.maxY() - up)).get(0);
    List<Double> all = new ArrayList<>();
    for (double middle : new double[] {first.face() / 2, -panel.joint() / 2}) {
      all.add(box.centre().x() - middle - first.start());
    }
    all.addAll(cuts.starts(0));
    double gap = all.stream().mapToDouble(cuts::gap).min().orElseThrow();
    return all.stream().filter(start -> cuts.gap(start) <= gap + STEP)
        .map(start -> start + Math.floor((box.minX() - start) / first.module()) * first.module())
        .map(start -> turned.of(new Vec(start, up))).toList();
  }

  /** Starts that lay a middle of the pattern on that of the panel, and others beside them. */
  private List<Vec> sampled(Pattern pattern, Box box, double height) {
    List<Vec> starts = new ArrayList<>();
    List<Vec> centres = pattern.centres().isEmpty() ? List.of(Vec.ZERO) : pattern.centres();
    for (Vec centre : centres) {
      starts.add(new Vec(box.centre().x() - turned.of(centre).x(), height));
    }
    pattern.repeat().ifPresent(repeat -> {
      double span = repeat.along().length() + repeat.across().length();
      for (int i = 1; i < SAMPLES; i++) {
        starts.add(starts.get(0).plus(new Vec(span * i / SAMPLES, 0)));
      }
    });
    return starts;
  }
}
