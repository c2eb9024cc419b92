// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.create;

import java.util.Optional;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.model.MuralFactory;
import muralbench.model.Outline;
import muralbench.model.RectangleOutline;
import muralbench.setout.geometry.Box;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * A panel as it is being filled in: a rectangle, or a wall measured on site. Lengths in millimetres; not yet checked.
 *
 * @param id short name
 * @param title title, may be empty
 * @param x left edge
 * @param y bottom edge above the finished floor
 * @param width width
 * @param height height
 * @param measured the measurements, if it is no plain rectangle; the four lengths are then those of the box around it
 */
record PanelDraft(String id, String title, double x, double y, double width, double height,
    Optional<Outline> measured) {
  /** A rectangle. */
  PanelDraft(String id, String title, double x, double y, double width, double height) {
    this(id, title, x, y, width, height, Optional.empty());
  }

  /** The same size again as a rectangle, to the right of this one and clear of it, at a round place. */
  PanelDraft next(String nextId, double gap, LengthUnit unit) {
    return new PanelDraft(nextId, "", LengthText.rounded(x + width + gap, unit), y, LengthText.rounded(width, unit),
        LengthText.rounded(height, unit));
  }

  /** This panel on a wall as it was measured; {@code box} is the box around it, told in round lengths. */
  PanelDraft on(Outline wall, Box box, LengthUnit unit) {
    return new PanelDraft(id, title, LengthText.rounded(box.minX(), unit), LengthText.rounded(box.minY(), unit),
        LengthText.rounded(box.width(), unit), LengthText.rounded(box.height(), unit), Optional.of(wall));
  }

  /** A fresh outline of the panel. */
  Outline outline() {
    if (measured.isPresent()) {
      return EcoreUtil.copy(measured.get());
    }
    RectangleOutline rectangle = MuralFactory.eINSTANCE.createRectangleOutline();
    rectangle.setX(x);
    rectangle.setY(y);
    rectangle.setWidth(width);
    rectangle.setHeight(height);
    return rectangle;
  }
}
