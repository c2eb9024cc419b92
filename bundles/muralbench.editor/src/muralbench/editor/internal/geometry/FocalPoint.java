// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.geometry;

import java.util.Optional;
import muralbench.model.BalancedOrigin;
import muralbench.model.MuralFactory;
import muralbench.model.Panel;
import muralbench.setout.geometry.Vec;

/** The point of a panel that the centre of a face or a crossing of joints is laid on. */
public final class FocalPoint {
  private FocalPoint() {}

  /** The focal point of a panel; none if it has none. */
  public static Optional<Vec> of(Panel panel) {
    return panel.getOrigin() instanceof BalancedOrigin origin && origin.isSetFocalX() && origin.isSetFocalY()
        ? Optional.of(new Vec(origin.getFocalX(), origin.getFocalY())) : Optional.empty();
  }

  /** Gives a panel a focal point; its start is balanced from then on. */
  public static void set(Panel panel, Vec at) {
    BalancedOrigin origin = balanced(panel);
    origin.setFocalX(Frame.clean(at.x()));
    origin.setFocalY(Frame.clean(at.y()));
  }

  /** Takes the focal point of a panel away. */
  public static void clear(Panel panel) {
    BalancedOrigin origin = balanced(panel);
    origin.unsetFocalX();
    origin.unsetFocalY();
  }

  private static BalancedOrigin balanced(Panel panel) {
    if (panel.getOrigin() instanceof BalancedOrigin origin) {
      return origin;
    }
    BalancedOrigin origin = MuralFactory.eINSTANCE.createBalancedOrigin();
    panel.setOrigin(origin);
    return origin;
  }
}
