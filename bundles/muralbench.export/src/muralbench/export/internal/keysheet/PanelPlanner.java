// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthUnit;
import muralbench.export.Paper;
import muralbench.export.internal.pdf.SheetSize;
import muralbench.setout.PanelSetOut;
import muralbench.setout.geometry.Box;

/**
 * Chooses scale and direction of the paper for a panel: as few sheets as can be, then the largest scale, such that a
 * field tile holds its key and every other key finds a place. Only tiles too small for that at their own size are drawn
 * larger than they are.
 */
final class PanelPlanner {
  /** A facade of 100,000 tiles takes some 700 letter sheets; far beyond that something is wrong. */
  static final int MOST_SHEETS = 5000;

  private static final double LEAST_GUTTER = 2;
  /** Match lines and their names need this much. */
  private static final double MATCH_GUTTER = 8;

  private final KeyLetters letters;
  private final LengthUnit units;
  private final int mostSheets;

  /**
   * A planner.
   *
   * @param mostSheets the most sheets a panel may take
   */
  PanelPlanner(KeyLetters letters, LengthUnit units, int mostSheets) {
    this.letters = letters;
    this.units = units;
    this.mostSheets = mostSheets;
  }

  /** One way to draw a panel, not yet tried. */
  record Trial(DrawingScale scale, SheetLayout layout, Gutters gutters, WindowGrid grid) {}

  /**
   * The sheets of a panel.
   *
   * @throws InputException if its keys cannot be printed legibly on this paper, naming the paper that would do
   */
  PanelPlan plan(PanelSetOut panel, Paper paper) throws InputException, IOException {
    PanelFacts facts = PanelFacts.of(panel, letters);
    Optional<PanelPlan> plan = plan(facts, paper);
    if (plan.isPresent()) {
      return plan.get();
    }
    Messages texts = Messages.of(PanelPlanner.class);
    for (Paper other : Paper.values()) {
      if (other != paper && plan(facts, other).isPresent()) {
        throw new InputException(panel.spec().id(), texts.text("illegible.problem", "paper", paper.word()),
            texts.text("illegible.paper", "paper", other.word()));
      }
    }
    throw new InputException(panel.spec().id(), texts.text("illegible.problem", "paper", paper.word()),
        texts.text("illegible.panel"));
  }

  private Optional<PanelPlan> plan(PanelFacts facts, Paper paper) throws IOException {
    Optional<PanelPlan> plan = plan(facts, paper, DrawingScale.forPanels(units));
    for (DrawingScale larger : DrawingScale.enlarged()) {
      if (plan.isEmpty()) {
        plan = plan(facts, paper, List.of(larger));
      }
    }
    return plan;
  }

  private Optional<PanelPlan> plan(PanelFacts facts, Paper paper, List<DrawingScale> scales) throws IOException {
    for (Trial trial : trials(facts, paper, scales)) {
      Optional<PanelPlan> plan = new SheetPlanner(facts, trial, letters).plan();
      if (plan.isPresent()) {
        return plan;
      }
    }
    return Optional.empty();
  }

  private List<Trial> trials(PanelFacts facts, Paper paper, List<DrawingScale> scales) throws IOException {
    List<Trial> trials = new ArrayList<>();
    for (DrawingScale scale : scales) {
      long outside = facts.outside(scale.reduction());
      if (facts.face().fits(scale.reduction())) {
        for (double gutter : gutters(facts, outside)) {
          trials.add(trial(facts, scale, SheetLayout.of(SheetSize.of(paper, false)), gutter));
          trials.add(trial(facts, scale, SheetLayout.of(SheetSize.of(paper, true)), gutter));
        }
      }
    }
    boolean wide = facts.box().width() > facts.box().height();
    trials.removeIf(trial -> trial.grid().count() > mostSheets);
    trials.sort(Comparator.<Trial>comparingInt(trial -> trial.grid().count())
        .thenComparingDouble(trial -> trial.scale().reduction())
        .thenComparingDouble(trial -> trial.gutters().labels())
        .thenComparing(trial -> trial.layout().size().landscape() != wide));
    return trials;
  }

  /** Room for keys beside the panel: none, for keys along the edge, or for keys square to it. */
  private static double[] gutters(PanelFacts facts, long outside) {
    KeyRoom.Words widest = facts.face().words();
    return outside == 0 ? new double[] {LEAST_GUTTER} : new double[] {widest.height() + 3.4, widest.width() + 4};
  }

  /** With a strip for the notes that find no room in their place. */
  private Trial trial(PanelFacts facts, DrawingScale scale, SheetLayout layout, double gutter) throws IOException {
    double strip = 0;
    Trial trial = parted(facts, scale, layout, gutter);
    for (double wanted = strip(facts, trial); wanted > strip; wanted = strip(facts, trial)) {
      strip = wanted;
      trial = parted(facts, scale, layout.withMore(strip), gutter);
    }
    return trial;
  }

  /** The height of the notes that find no room, at the most for any of the sheets, mm. */
  private double strip(PanelFacts facts, Trial trial) throws IOException {
    if (trial.grid().count() > mostSheets) {
      return 0;
    }
    Box fullest = facts.box();
    long most = -1;
    for (int i = 0; i < trial.grid().count(); i++) {
      Box window = trial.grid().window(i / trial.grid().columns(), i % trial.grid().columns());
      long openings =
          facts.panel().spec().openings().stream().filter(opening -> opening.outline().box().meets(window)).count();
      fullest = openings > most ? window : fullest;
      most = Math.max(most, openings);
    }
    List<String> notes = new PanelNotes(Messages.of(PanelPlanner.class), units).of(facts, fullest, mostSheets);
    SheetLayout layout = trial.layout();
    return SheetNotes.of(notes, layout.notes(trial.grid().count() > 1), layout.more().width(), letters.lettering())
        .more().height();
  }

  private static Trial parted(PanelFacts facts, DrawingScale scale, SheetLayout layout, double gutter) {
    Trial trial = trial(facts, scale, layout, new Gutters(gutter));
    boolean parted = trial.grid().count() > 1 && gutter < MATCH_GUTTER;
    return parted ? trial(facts, scale, layout, new Gutters(MATCH_GUTTER)) : trial;
  }

  private static Trial trial(PanelFacts facts, DrawingScale scale, SheetLayout layout, Gutters gutters) {
    Box room = gutters.room(layout.drawing());
    double width = Math.max(1, room.width()) * scale.reduction();
    double height = Math.max(1, room.height()) * scale.reduction();
    WindowGrid grid = WindowGrid.of(facts.box(), width, height, facts.columns(), facts.courses());
    return new Trial(scale, layout, gutters, grid);
  }
}
