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
import muralbench.setout.bond.Bond;
import muralbench.setout.order.Allowances;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.IPropertySource;

/** The lines of one thing for the Properties view; every edit is a command that can be undone. */
final class ModelProperties implements IPropertySource {
  static final Messages TEXTS = Messages.of(ModelProperties.class);

  /** Starts the id of a line for a setting that a plug-in names. */
  static final String SETTING = "setting.";

  /** Starts the id of a line for a movement joint; its number follows. */
  static final String JOINT = "movement.joint.";

  /** Starts the id of a line for spare tiles of a kind of bond. */
  static final String SPARE = "spare.";

  /** Starts the id of a line for what to order of a kind of tile. */
  static final String ORDER = "order.";

  private final OpenMural mural;
  private final EObject thing;
  private final Map<String, Property> properties = new LinkedHashMap<>();

  ModelProperties(OpenMural mural, EObject thing, List<Property> lines) {
    this.mural = mural;
    this.thing = thing;
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
    if (id.startsWith(SPARE)) {
      return spare(id.substring(SPARE.length()));
    }
    if (id.startsWith(ORDER)) {
      return TEXTS.text("line.order", "tile", id.substring(ORDER.length()));
    }
    if (id.startsWith(JOINT)) {
      return TEXTS.text("line.movement.joint", "number", id.substring(JOINT.length()));
    }
    return id.startsWith(SETTING) ? id.substring(SETTING.length()) : TEXTS.text("line." + id);
  }

  private String spare(String bond) {
    return switch (bond) {
      case Allowances.OTHER -> TEXTS.text("line.spare.other");
      case Allowances.TURNED -> TEXTS.text("line.spare.turned");
      default -> TEXTS.text("line.spare", "bond", mural.bonds().find(bond).map(Bond::label).orElse(bond));
    };
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
