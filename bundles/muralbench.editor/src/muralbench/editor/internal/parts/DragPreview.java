// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.parts;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import muralbench.editor.internal.OpeningFollower;
import muralbench.editor.internal.field.PieceField;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Outlines;
import muralbench.model.Opening;
import muralbench.model.Panel;
import muralbench.setout.PanelSpec;
import org.eclipse.emf.ecore.EObject;

/**
 * What is shown of a panel while it, or openings in it, are dragged. A panel of few tiles is set out as it would become.
 * In one of many tiles the pieces follow an opening, from the start that the pattern has; while other things are dragged
 * it shows no pieces.
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
    shown = Optional.of(Preview.of(panel, places, scene.mural().bonds(), this::follow));
  }

  /** Takes that back; false if the thing was not put elsewhere. */
  boolean take(EObject thing) {
    boolean taken = places.remove(thing) != null;
    if (taken && follower != null) {
      follower.end();
      follower = null;
    }
    shown = places.isEmpty() ? Optional.empty()
        : Optional.of(Preview.of(panel, places, scene.mural().bonds(), this::follow));
    return taken;
  }

  private Optional<PieceField> follow(Panel copy) {
    EObject thing = places.keySet().iterator().next();
    if (places.size() > 1 || now.get().isEmpty() || !(thing instanceof Opening opening)) {
      return Optional.empty();
    }
    if (follower == null) {
      followed = now.get();
      follower = new OpeningFollower(now.get().get().setOut(), opening.getId(), scene.mural().bonds(),
          scene.mural().worker(), scene.mural().owner(), this::arrived);
    }
    Outlines.contour(copy.getOpenings().get(panel.getOpenings().indexOf(opening)).getOutline())
        .ifPresent(follower::to);
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
