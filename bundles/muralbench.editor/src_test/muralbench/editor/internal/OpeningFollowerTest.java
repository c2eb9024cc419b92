// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import muralbench.editor.OpenMural;
import muralbench.editor.SampleMural;
import muralbench.editor.internal.field.PieceField;
import muralbench.setout.OpeningSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;
import org.junit.jupiter.api.Test;

/** The worker and the thread of the person are queues that are worked off by hand. */
class OpeningFollowerTest {
  private final OpenMural mural = SampleMural.open();
  private final PanelSetOut begun = mural.setOut(mural.mural().getPanels().get(0)).orElseThrow();
  private final Queue<Runnable> worker = new ArrayDeque<>();
  private final Queue<Runnable> owner = new ArrayDeque<>();
  private final List<Optional<PieceField>> shown = new ArrayList<>();
  private final OpeningFollower follower = new OpeningFollower(
      new KeptStart(begun, "A1", BondRegistry.standard()), worker::add, owner::add, shown::add);

  private static Contour at(double x) {
    return Contour.rectangle(x, 1066.8, 57.15, 88.9);
  }

  private void to(Contour outline) {
    follower.to(begun.spec().withOpenings(List.of(new OpeningSpec("A1", "outlet", outline))));
  }

  private void step() {
    worker.remove().run();
    owner.remove().run();
  }

  private List<Contour> places() {
    return shown.stream().map(field -> field.orElseThrow().setOut().spec().openings().get(0).outline()).toList();
  }

  @Test
  void placesThatArePassedWhileTheWorkerIsBusyAreLeftOut() {
    for (int x = 600; x < 700; x++) {
      to(at(x));
      assertTrue(worker.size() + owner.size() <= 1);
    }
    step();
    step();
    assertEquals(List.of(at(600), at(699)), places());
    assertTrue(worker.isEmpty() && owner.isEmpty());
  }

  @Test
  void theNextStepWaitsUntilTheLastIsShown() {
    to(at(600));
    worker.remove().run();
    to(at(610));
    assertTrue(worker.isEmpty());
    owner.remove().run();
    assertEquals(1, worker.size());
  }

  @Test
  void thePiecesAreThoseAroundTheOpening() {
    to(at(700));
    step();
    PieceField field = shown.get(0).orElseThrow();
    assertEquals(begun.origin(), field.setOut().origin());
    assertTrue(field.at(720, 1100).isEmpty());
    assertTrue(field.at(508 + 28, 1066.8 + 44).isPresent());
  }

  @Test
  void nothingIsShownAfterTheEnd() {
    to(at(600));
    worker.remove().run();
    to(at(610));
    follower.end();
    owner.remove().run();
    assertTrue(shown.isEmpty() && worker.isEmpty());
  }

  @Test
  void noPiecesAreShownWhereTheOpeningCannotBeAndTheyComeBack() {
    to(at(-20));
    step();
    to(at(600));
    step();
    assertEquals(List.of(false, true), shown.stream().map(Optional::isPresent).toList());
  }

  @Test
  void thePlaceOfTheLastStepIsNotSetOutAgain() {
    to(at(600));
    step();
    to(at(600));
    assertTrue(worker.isEmpty());
  }
}
