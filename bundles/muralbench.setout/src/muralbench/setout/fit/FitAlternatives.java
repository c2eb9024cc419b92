// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.fit.Alternative.Kind;
import muralbench.setout.internal.PanelEngine;

/**
 * The choices there are for a panel: another start, a joint within its permitted range, a plain margin, another size.
 * They come with least harm first: fewest cuts smaller than half a tile, then the widest smallest cut, then the fewest
 * cuts (few cuts and none below half a tile: ANSI A108.02 §4.3.2, as quoted in the trade press), then the least change.
 */
public final class FitAlternatives {
  /** Widths that differ by less count as equal, mm. */
  private static final double EXACT = 1e-6;

  private final PanelSetOut present;
  private final BondRegistry bonds;
  private final LengthUnit units;
  private final Progress progress;

  /** An alternative with how much it changes, mm. */
  private record Ranked(Alternative alternative, double amount) {}

  private FitAlternatives(PanelSetOut present, BondRegistry bonds, LengthUnit units, Progress progress) {
    this.present = present;
    this.bonds = bonds;
    this.units = units;
    this.progress = progress;
  }

  /** As {@link #of(PanelSpec, BondRegistry, LengthUnit, Progress)}, with lengths in millimetres. */
  public static List<Alternative> of(PanelSpec panel, BondRegistry bonds, Progress progress) throws InputException {
    return of(panel, bonds, LengthUnit.MILLIMETRE, progress);
  }

  /**
   * The choices for a panel, the best first; the panel as it is is one of them.
   *
   * @param units the units of the lengths in the texts
   * @throws InputException if the panel as it is cannot be set out
   * @throws muralbench.base.CancelledException if the person cancelled
   */
  public static List<Alternative> of(PanelSpec panel, BondRegistry bonds, LengthUnit units, Progress progress)
      throws InputException {
    Progress inner = Steps.onlyCancel(progress);
    PanelSetOut present = PanelEngine.setOut(panel, bonds, units, inner);
    List<Proposal> proposals = Proposals.of(panel, bonds, units, inner);
    progress.begin(Messages.of(FitAlternatives.class).text("progress", "panel", panel.id()), proposals.size());
    return new FitAlternatives(present, bonds, units, progress).best(proposals);
  }

  /**
   * The choices to show first: one of each kind that does less harm than the panel as it is, so that three sizes do not
   * hide the joint that helps too; then the others that help, then the rest, one of each kind first. The present state
   * is not among them.
   *
   * @param ranked all choices, the best first, as they come from {@link #of}
   * @param most how many are asked for
   * @return at most that many, the best first
   */
  public static List<Alternative> shortlist(List<Alternative> ranked, int most) {
    int present = 0;
    while (ranked.get(present).kind() != Kind.PRESENT) {
      present++;
    }
    Set<Alternative> chosen = new LinkedHashSet<>();
    for (List<Alternative> part : List.of(ranked.subList(0, present), ranked.subList(present + 1, ranked.size()))) {
      for (Alternative one : part) {
        if (chosen.stream().noneMatch(other -> other.kind() == one.kind())) {
          chosen.add(one);
        }
      }
      chosen.addAll(part);
    }
    List<Alternative> few = chosen.stream().limit(most).toList();
    return ranked.stream().filter(few::contains).toList();
  }

  private List<Alternative> best(List<Proposal> proposals) {
    FitWords words = new FitWords(present, units);
    List<Ranked> found = new ArrayList<>();
    found.add(new Ranked(words.alternative(Kind.PRESENT, present), 0));
    for (Proposal proposal : proposals) {
      progress.step(1);
      add(proposal, words, found);
    }
    found.sort(Comparator.comparingInt((Ranked ranked) -> ranked.alternative().smallCuts())
        .thenComparing(Comparator.comparingLong(FitAlternatives::width).reversed())
        .thenComparingInt(ranked -> ranked.alternative().cuts())
        .thenComparing(ranked -> ranked.alternative().kind())
        .thenComparingDouble(Ranked::amount));
    return found.stream().map(Ranked::alternative).toList();
  }

  private static long width(Ranked ranked) {
    double smallest = ranked.alternative().smallestCut().orElse(Double.POSITIVE_INFINITY);
    return Math.round(smallest / EXACT);
  }

  /** Sets a proposal out and keeps it if it does what it is for and is not there already. */
  private void add(Proposal proposal, FitWords words, List<Ranked> found) {
    PanelSetOut setOut;
    try {
      setOut = PanelEngine.setOut(proposal.spec(), bonds, units, Steps.onlyCancel(progress));
    } catch (InputException impossible) {
      // A bond that needs this very joint, or an opening that the smaller panel does not hold: no choice here.
      return;
    }
    Alternative alternative = words.alternative(proposal.kind(), setOut);
    boolean fits = alternative.wholeAcross() || alternative.wholeUp();
    boolean useful = proposal.kind() == Kind.TRIM || proposal.kind() == Kind.START ? isNew(alternative, found) : fits;
    if (useful) {
      found.add(new Ranked(alternative, proposal.amount()));
    }
  }

  private static boolean isNew(Alternative start, List<Ranked> found) {
    return found.stream().map(Ranked::alternative).noneMatch(other -> other.cuts() == start.cuts()
        && other.tilesToOrder() == start.tilesToOrder() && other.smallCuts() == start.smallCuts()
        && Math.abs(other.smallestCut().orElse(-1) - start.smallestCut().orElse(-1)) < EXACT);
  }
}
