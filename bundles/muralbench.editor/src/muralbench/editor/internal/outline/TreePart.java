// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.editor.OpenMural;
import muralbench.editor.internal.policies.DeletePolicy;
import muralbench.editor.internal.properties.PropertySources;
import muralbench.model.CircleOutline;
import muralbench.model.Mural;
import muralbench.model.Opening;
import muralbench.model.Panel;
import muralbench.model.TileKind;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.editparts.AbstractTreeEditPart;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.views.properties.IPropertySource;

/** One line of the tree: the mural, a panel, an opening or a kind of tile. */
final class TreePart extends AbstractTreeEditPart {
  /** What the tree itself stands for; its only child is the mural. */
  static final Object TOP = new Object();

  /** The kinds of opening that are electrical boxes. */
  private static final Set<String> ELECTRICAL = Set.of("outlet", "switch");
  private static final Messages TEXTS = Messages.of(TreePart.class);

  private final OpenMural mural;
  private final Map<String, Image> images;

  TreePart(OpenMural mural, Map<String, Image> images, Object thing) {
    super(thing);
    this.mural = mural;
    this.images = images;
  }

  @Override
  protected List<EObject> getModelChildren() {
    List<EObject> children = new ArrayList<>();
    if (getModel() == TOP) {
      children.add(mural.mural());
    } else if (getModel() instanceof Mural all) {
      children.addAll(all.getPanels());
      children.addAll(all.getTileKinds());
    } else if (getModel() instanceof Panel panel) {
      children.addAll(panel.getOpenings());
    }
    return children;
  }

  @Override
  protected void createEditPolicies() {
    if (getModel() != TOP && getModel() != mural.mural()) {
      installEditPolicy(EditPolicy.COMPONENT_ROLE, new DeletePolicy(mural.mural()));
    }
  }

  /** Refreshes this line and all below. */
  void refreshAll() {
    refresh();
    for (Object child : getChildren()) {
      ((TreePart) child).refreshAll();
    }
  }

  @Override
  protected String getText() {
    if (getModel() instanceof Panel panel) {
      return TEXTS.text("panel", "id", panel.getId(), "title", text(panel.getTitle()));
    }
    if (getModel() instanceof Opening opening) {
      return TEXTS.text("opening", "id", opening.getId(), "kind", text(opening.getKind()));
    }
    if (getModel() instanceof TileKind tile) {
      LengthUnit unit = mural.units();
      return TEXTS.text("tile", "id", tile.getId(), "width", LengthText.shown(tile.getWidth(), unit), "height",
          LengthText.shown(tile.getHeight(), unit));
    }
    String title = text(mural.mural().getTitle());
    return title.isEmpty() ? TEXTS.text("untitled") : title;
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }

  @Override
  protected Image getImage() {
    if (getModel() instanceof Panel) {
      return images.get("panel");
    }
    if (getModel() instanceof Opening opening) {
      return images.get(picture(opening));
    }
    return images.get(getModel() instanceof TileKind ? "tile" : "mural");
  }

  private static String picture(Opening opening) {
    if (opening.getOutline() instanceof CircleOutline) {
      return "round";
    }
    return ELECTRICAL.contains(text(opening.getKind())) ? "outlet" : "window";
  }

  @Override
  protected void refreshVisuals() {
    if (getWidget() instanceof TreeItem) {
      super.refreshVisuals();
    }
  }

  @Override
  @SuppressWarnings("rawtypes")
  public Object getAdapter(Class type) {
    return type == IPropertySource.class && getModel() instanceof EObject thing ? PropertySources.of(mural, thing)
        : super.getAdapter(type);
  }
}
