// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import muralbench.base.Messages;
import muralbench.editor.ModelCommand;
import muralbench.editor.OpenMural;
import muralbench.editor.internal.commands.Names;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.IPropertySource;

/** The lines of one thing for the Properties view; every edit is a command that can be undone. */
final class ModelProperties implements IPropertySource {
  static final Messages TEXTS = Messages.of(ModelProperties.class);

  private final OpenMural mural;
  private final EObject thing;
  private final LineNames names;
  private final Map<String, Property> properties = new LinkedHashMap<>();

  ModelProperties(OpenMural mural, EObject thing, List<Property> lines) {
    this.mural = mural;
    this.thing = thing;
    this.names = new LineNames(mural, thing);
    lines.forEach(line -> properties.put(line.id(), line));
  }

  @Override
  public Object getEditableValue() {
    return Names.of(thing);
  }

  @Override
  public IPropertyDescriptor[] getPropertyDescriptors() {
    return properties.values().stream()
        .map(line -> line.descriptor(label(line.id()), group(line.id())))
        .toArray(IPropertyDescriptor[]::new);
  }

  @Override
  public Object getPropertyValue(Object id) {
    return properties.get(id).get().get();
  }

  @Override
  public void setPropertyValue(Object id, Object value) {
    Property line = properties.get(id);
    if (line.changes(value)) {
      String label = TEXTS.text("set", "line", label(line.id()).toLowerCase(), "thing", Names.of(thing));
      mural.execute(ModelCommand.of(label, mural.mural(), () -> line.set().accept(value)));
    }
  }

  /** The lines in their order. */
  Set<String> ids() {
    return properties.keySet();
  }

  String label(String id) {
    return names.of(id);
  }

  String group(String id) {
    return TEXTS.text("group." + properties.get(id).group());
  }

  /** Why a text cannot be taken for a line, in plain words; none if it can. */
  Optional<String> refusal(String id, String text) {
    return properties.get(id).refuse().apply(text);
  }

  @Override
  public boolean isPropertySet(Object id) {
    return false;
  }

  @Override
  public void resetPropertyValue(Object id) {
    // There is no default to go back to; undo does that.
  }
}
