// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.parts;

import muralbench.editor.internal.commands.Names;
import muralbench.editor.internal.properties.PropertySources;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.AccessibleEditPart;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.ui.views.properties.IPropertySource;

/** A part of the wall: knows its scene, its name for a screen reader and its properties. */
public abstract class ScenePart extends AbstractGraphicalEditPart {
  private final Scene scene;
  private AccessibleEditPart accessible;

  /** A part for a thing of the model. */
  protected ScenePart(Scene scene, EObject thing) {
    this.scene = scene;
    setModel(thing);
  }

  /** What all parts of the editor share. */
  public final Scene scene() {
    return scene;
  }

  /** The mural, panel or opening. */
  public final EObject thing() {
    return (EObject) getModel();
  }

  @Override
  protected AccessibleEditPart getAccessibleEditPart() {
    if (accessible == null) {
      accessible = new AccessibleGraphicalEditPart() {
        @Override
        public void getName(AccessibleEvent event) {
          event.result = Names.of(thing());
        }
      };
    }
    return accessible;
  }

  @Override
  @SuppressWarnings("rawtypes")
  public Object getAdapter(Class type) {
    return type == IPropertySource.class ? PropertySources.of(scene.mural(), thing()) : super.getAdapter(type);
  }
}
