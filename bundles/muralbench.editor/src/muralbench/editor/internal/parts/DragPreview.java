// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.parts;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.editor.internal.KeptStart;
import muralbench.editor.internal.OpeningFollower;
import muralbench.editor.internal.PanelTask;
import muralbench.editor.internal.field.PieceField;
import muralbench.editor.internal.geometry.Frame;
import muralbench.model.Opening;
import muralbench.model.Panel;
import muralbench.pattern.work.PatternReader;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import org.eclipse.emf.ecore.EObject;

/**
 * What is shown of a panel while it, or openings in it, are dragged: how it would become. Where a set-out takes longer
 * than a moment, the pieces follow an opening as fast as they can be had; in panels of many tiles they keep to the start
 * that the pattern has, and while other things are dragged such a panel shows no pieces.
 */
final class DragPreview {
  private final Scene scene;
  private final Panel panel;
  private final Supplier<Optional<PieceField>> now;
  private final Runnable changed;
  private final Map<EObject, Frame> places = new LinkedHashMap<>();
  private Optional<Preview> shown = Optional.empty();
  private Optional<PieceField> followed = Optional.empty();
  private OpeningFollower follower;

  /**
   * Nothing is dragged yet.
   *
   * @param now the pieces of the panel as it is
   * @param changed run when pieces have followed
   */
  DragPreview(Scene scene, Panel panel, Supplier<Optional<PieceField>> now, Runnable changed) {
    this.scene = scene;
    this.panel = panel;
    this.now = now;
    this.changed = changed;
  }

  /** What is shown instead of the panel; none if nothing is dragged. */
  Optional<Preview> shown() {
    return shown;
  }

  /** Puts the panel or an opening elsewhere. */
  void put(EObject thing, Frame place) {
    places.put(thing, place);
    show();
  }

  /** Takes that back; false if the thing was not put elsewhere. */
  boolean take(EObject thing) {
    boolean taken = places.remove(thing) != null;
    if (taken && follower != null) {
      follower.end();
      follower = null;
    }
    if (places.isEmpty()) {
      shown = Optional.empty();
    } else {
      show();
    }
    return taken;
  }

  private void show() {
    Panel copy = Preview.copy(panel, places);
    shown = Optional.of(new Preview(copy, pieces(copy)));
  }

  private Optional<PieceField> pieces(Panel copy) {
    try {
      PanelSpec asked = PatternReader.panel(copy, panel);
      Optional<Opening> opening = PanelTask.instant(asked) ? Optional.empty() : onlyOpening();
      if (opening.isPresent()) {
        return follow(opening.get(), asked);
      }
      return PanelTask.quick(asked) ? Optional.of(new PieceField(whole(asked))) : Optional.empty();
    } catch (InputException e) {
      // Half-way through a drag a panel may be impossible; what stays impossible is reported after the drop.
      return Optional.empty();
    }
  }

  private PanelSetOut whole(PanelSpec asked) throws InputException {
    return SetOut.panel(asked, scene.mural().bonds(), Progress.NONE);
  }

  /** The opening that is dragged, if it is one and there are pieces that can follow it. */
  private Optional<Opening> onlyOpening() {
    return now.get().flatMap(pieces -> places.size() == 1
        && places.keySet().iterator().next() instanceof Opening opening ? Optional.of(opening) : Optional.empty());
  }

  private Optional<PieceField> follow(Opening opening, PanelSpec asked) {
    if (follower == null) {
      followed = now.get();
      OpeningFollower.Step step = PanelTask.quick(asked) ? this::whole
          : new KeptStart(now.get().orElseThrow().setOut(), opening.getId(), scene.mural().bonds());
      follower = new OpeningFollower(step, scene.mural().worker(), scene.mural().owner(), this::arrived);
    }
    follower.to(asked);
    return followed;
  }

  private void arrived(Optional<PieceField> pieces) {
    followed = pieces;
    shown = shown.map(preview -> new Preview(preview.panel(), pieces));
    changed.run();
  }

  /**
   * The pieces as they followed last, to be shown while the panel is set out with the opening where it was let go: all
   * else is the same but the start of the pattern and the movement joints, which are found anew.
   */
  Optional<PieceField> dropped() {
    return followed.filter(field -> scene.mural().problem(panel).isEmpty() && scene.mural().asked(panel)
        .filter(asked -> alike(asked, field.setOut().spec())).isPresent());
  }

  private static boolean alike(PanelSpec asked, PanelSpec laid) {
    return asked.equals(
        laid.withOrigin(asked.origin()).withMovement(asked.movement()).withOpenings(asked.openings()));
  }
}
