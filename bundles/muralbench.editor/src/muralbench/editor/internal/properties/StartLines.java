// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import muralbench.editor.OpenMural;
import muralbench.editor.internal.geometry.FocalPoint;
import muralbench.editor.internal.geometry.Placement;
import muralbench.editor.internal.properties.Entries.Range;
import muralbench.model.BalancedOrigin;
import muralbench.model.Panel;
import muralbench.setout.geometry.Vec;

/** The lines about the focal point of a panel with a balanced start. */
final class StartLines {
  private static final String GROUP = "tiling";

  /** Whether there is a focal point, as a choice. */
  enum Focus {
    /** None. */
    NONE,
    /** One at a given place. */
    GIVEN
  }

  private final OpenMural mural;
  private final Panel panel;

  StartLines(OpenMural mural, Panel panel) {
    this.mural = mural;
    this.panel = panel;
  }

  List<Property> lines() {
    List<Property> lines = new ArrayList<>();
    if (panel.getOrigin() instanceof BalancedOrigin) {
      lines.add(Entries.choice("focus", GROUP, Focus.class,
          () -> FocalPoint.of(panel).isPresent() ? Focus.GIVEN : Focus.NONE, this::become));
      if (FocalPoint.of(panel).isPresent()) {
        lines.add(place("focalX", Vec::x, x -> new Vec(x, now().y())));
        lines.add(place("focalY", Vec::y, y -> new Vec(now().x(), y)));
      }
    }
    return lines;
  }

  private Property place(String id, Function<Vec, Double> part, Function<Double, Vec> changed) {
    Supplier<Double> get = () -> part.apply(now());
    Consumer<Double> set = to -> FocalPoint.set(panel, changed.apply(to));
    return Entries.length(id, GROUP, mural.units(), Range.ANY, get, set);
  }

  private Vec now() {
    return FocalPoint.of(panel).orElse(Vec.ZERO);
  }

  /** A new focal point begins in the middle of the panel. */
  private void become(Focus focus) {
    Optional<Vec> middle = Placement.frame(panel).map(frame -> new Vec(frame.middleX(), frame.middleY()));
    if (focus == Focus.GIVEN) {
      FocalPoint.set(panel, middle.orElse(Vec.ZERO));
    } else {
      FocalPoint.clear(panel);
    }
  }
}
