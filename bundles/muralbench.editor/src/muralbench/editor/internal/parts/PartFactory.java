// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.parts;

import muralbench.model.Mural;
import muralbench.model.Opening;
import muralbench.model.Panel;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartFactory;

/** Makes the parts of the wall. */
public final class PartFactory implements EditPartFactory {
  private final Scene scene;

  /** A factory for one editor. */
  public PartFactory(Scene scene) {
    this.scene = scene;
  }

  @Override
  public EditPart createEditPart(EditPart context, Object model) {
    if (model instanceof Mural) {
      return new MuralPart(scene);
    }
    if (model instanceof Panel panel) {
      return new PanelPart(scene, panel);
    }
    if (model instanceof Opening opening) {
      return new OpeningPart(scene, opening);
    }
    throw new IllegalArgumentException("no part for " + model);
  }
}
