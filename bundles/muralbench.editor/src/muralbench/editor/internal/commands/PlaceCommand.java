// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.commands;

import java.util.List;
import muralbench.base.Messages;
import muralbench.editor.ModelCommand;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Placement;
import muralbench.model.Mural;
import org.eclipse.emf.ecore.EObject;

/** Moves or resizes panels and openings. */
public final class PlaceCommand extends ModelCommand {
  /**
   * One thing put elsewhere.
   *
   * @param thing panel or opening
   * @param from its frame now
   * @param to its frame then
   */
  public record Place(EObject thing, Frame from, Frame to) {}

  private static final Messages TEXTS = Messages.of(PlaceCommand.class);

  private final List<Place> places;

  /** A command for one or more things; none of them may lie in another. */
  public PlaceCommand(Mural mural, List<Place> places) {
    super(label(places), mural);
    this.places = List.copyOf(places);
  }

  private static String label(List<Place> places) {
    boolean moved = places.stream().allMatch(place -> place.from().sameSize(place.to()));
    String what = places.size() == 1 ? Names.of(places.get(0).thing()) : TEXTS.text("name.several", "count",
        places.size());
    return TEXTS.text(moved ? "move" : "resize", "what", what);
  }

  @Override
  public boolean canExecute() {
    return places.stream().anyMatch(place -> !place.from().equals(place.to()));
  }

  @Override
  protected void change() {
    places.forEach(place -> Placement.place(place.thing(), place.from(), place.to()));
  }
}
