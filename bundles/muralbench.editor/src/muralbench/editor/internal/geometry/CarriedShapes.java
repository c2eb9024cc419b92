// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.geometry;

import java.util.Optional;
import muralbench.model.CircleOutline;
import muralbench.model.Outline;
import muralbench.model.RectangleOutline;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Transfer;
import muralbench.setout.geometry.Vec;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Outlines carried over to another place, shifted or mirrored. */
public final class CarriedShapes {
  private CarriedShapes() {}

  /** A copy of an outline in its new place, as like it as can be; none if it cannot be read. */
  public static Optional<Outline> of(Outline outline, Transfer to) {
    if (!to.mirrored()) {
      Outline copy = EcoreUtil.copy(outline);
      Outlines.shift(copy, to.shift().x(), to.shift().y());
      return Optional.of(copy);
    }
    return Outlines.frame(outline).flatMap(frame -> mirrored(outline, frame, to));
  }

  private static Optional<Outline> mirrored(Outline outline, Frame frame, Transfer to) {
    Vec corner = to.of(new Vec(frame.right(), frame.y()));
    Frame there = new Frame(Frame.clean(corner.x()), Frame.clean(corner.y()), frame.width(), frame.height());
    if (outline instanceof RectangleOutline) {
      return Optional.of(Outlines.rectangle(there));
    }
    if (outline instanceof CircleOutline) {
      return Optional.of(Outlines.circle(there));
    }
    return Outlines.contour(outline).map(to::of).map(CarriedShapes::drawn);
  }

  private static Outline drawn(Contour contour) {
    return contour.straight()
        ? Outlines.polygon(contour.segments().stream().map(side -> side.start()).toList()) : Outlines.path(contour);
  }
}
