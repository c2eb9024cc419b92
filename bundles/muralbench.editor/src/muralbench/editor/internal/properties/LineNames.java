// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import muralbench.base.Messages;
import muralbench.editor.OpenMural;
import muralbench.model.Panel;
import muralbench.setout.bond.Bond;
import muralbench.setout.bond.BondSetting;
import muralbench.setout.order.Allowances;
import org.eclipse.emf.ecore.EObject;

/** The names of the lines of one thing, also of those that are there once for each of several things. */
final class LineNames {
  /** Starts the id of a line for a setting of a bond. */
  static final String SETTING = "setting.";

  /** Starts the id of a line for a movement joint; its number follows. */
  static final String JOINT = "movement.joint.";

  /** Starts the id of a line for spare tiles of a kind of bond. */
  static final String SPARE = "spare.";

  /** Starts the id of a line for what to order of a kind of tile. */
  static final String ORDER = "order.";

  private static final Messages TEXTS = ModelProperties.TEXTS;

  private final OpenMural mural;
  private final EObject thing;

  LineNames(OpenMural mural, EObject thing) {
    this.mural = mural;
    this.thing = thing;
  }

  String of(String id) {
    if (id.startsWith(SPARE)) {
      return spare(id.substring(SPARE.length()));
    }
    if (id.startsWith(ORDER)) {
      return TEXTS.text("line.order", "tile", id.substring(ORDER.length()));
    }
    if (id.startsWith(JOINT)) {
      return TEXTS.text("line.movement.joint", "number", id.substring(JOINT.length()));
    }
    return id.startsWith(SETTING) ? setting(id.substring(SETTING.length())) : TEXTS.text("line." + id);
  }

  /** A setting is named as the author of its bond names it. */
  private String setting(String name) {
    return thing instanceof Panel panel && panel.getBond() != null
        ? mural.bonds().find(panel.getBond().getKind()).stream().flatMap(bond -> bond.settings().stream())
            .filter(setting -> setting.name().equals(name)).map(BondSetting::label).findFirst().orElse(name)
        : name;
  }

  private String spare(String bond) {
    return switch (bond) {
      case Allowances.OTHER -> TEXTS.text("line.spare.other");
      case Allowances.TURNED -> TEXTS.text("line.spare.turned");
      default -> TEXTS.text("line.spare", "bond", mural.bonds().find(bond).map(Bond::label).orElse(bond));
    };
  }
}
