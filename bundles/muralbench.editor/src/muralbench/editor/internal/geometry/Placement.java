// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.geometry;

import java.util.Optional;
import muralbench.model.FixedOrigin;
import muralbench.model.JointAxis;
import muralbench.model.MovementJoint;
import muralbench.model.Opening;
import muralbench.model.Outline;
import muralbench.model.Panel;
import muralbench.setout.geometry.Vec;
import org.eclipse.emf.ecore.EObject;

/** Where a panel or an opening lies on the wall, and what goes along when it is put elsewhere. */
public final class Placement {
  private Placement() {}

  /** The outline of a panel or opening; null for anything else. */
  public static Outline outline(EObject placed) {
    if (placed instanceof Panel panel) {
      return panel.getOutline();
    }
    return placed instanceof Opening opening ? opening.getOutline() : null;
  }

  /** The frame of a panel or opening; none if its outline cannot be read. */
  public static Optional<Frame> frame(EObject placed) {
    return Outlines.frame(outline(placed));
  }

  /**
   * Puts a panel or opening elsewhere. A panel that is moved takes its openings, a given origin or focal point and the
   * movement joints placed by hand along; one that is resized leaves them where they are on the wall.
   */
  public static void place(EObject placed, Frame from, Frame to) {
    Outlines.fit(outline(placed), from, to);
    if (placed instanceof Panel panel && from.sameSize(to)) {
      shiftAlong(panel, to.x() - from.x(), to.y() - from.y());
    }
  }

  private static void shiftAlong(Panel panel, double dx, double dy) {
    panel.getOpenings().forEach(opening -> Outlines.shift(opening.getOutline(), dx, dy));
    if (panel.getOrigin() instanceof FixedOrigin origin) {
      origin.setX(Frame.clean(origin.getX() + dx));
      origin.setY(Frame.clean(origin.getY() + dy));
    }
    FocalPoint.of(panel).ifPresent(at -> FocalPoint.set(panel, at.plus(new Vec(dx, dy))));
    for (MovementJoint joint : panel.getMovementJoints()) {
      joint.setAt(Frame.clean(joint.getAt() + (joint.getAxis() == JointAxis.VERTICAL ? dx : dy)));
    }
  }
}
