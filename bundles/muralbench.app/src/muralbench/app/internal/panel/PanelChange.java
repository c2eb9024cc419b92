// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import java.util.Map;
import muralbench.base.Messages;
import muralbench.editor.ModelCommand;
import muralbench.model.BalancedOrigin;
import muralbench.model.Bond;
import muralbench.model.FixedOrigin;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Outline;
import muralbench.model.Panel;
import muralbench.model.RectangleOutline;
import muralbench.model.Setting;
import muralbench.setout.BondSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSpec;
import muralbench.setout.fit.Alternative;
import muralbench.setout.geometry.Box;

/** Changes of a panel that were chosen in a dialog, each one step in the undo history. */
public final class PanelChange {
  private static final Messages TEXTS = Messages.of(PanelChange.class);
  private static final MuralFactory MAKE = MuralFactory.eINSTANCE;

  private PanelChange() {}

  /** The panel becomes what an alternative asks for. */
  public static ModelCommand to(Mural mural, Panel panel, Alternative chosen) {
    return ModelCommand.of(chosen.title(), mural, () -> {
      PanelSpec spec = chosen.spec();
      panel.setJoint(spec.joint());
      panel.setEdgeGap(spec.edgeGap());
      if (chosen.kind() == Alternative.Kind.SIZE) {
        size(panel, spec.outline().box());
      }
      origin(panel, spec.origin());
    });
  }

  private static void size(Panel panel, Box box) {
    RectangleOutline outline = MAKE.createRectangleOutline();
    outline.setX(box.minX());
    outline.setY(box.minY());
    outline.setWidth(box.width());
    outline.setHeight(box.height());
    panel.setOutline(outline);
  }

  private static void origin(Panel panel, OriginSpec origin) {
    if (origin instanceof OriginSpec.At at) {
      FixedOrigin fixed = MAKE.createFixedOrigin();
      fixed.setX(at.corner().x());
      fixed.setY(at.corner().y());
      panel.setOrigin(fixed);
    } else if (origin instanceof OriginSpec.Balanced && !(panel.getOrigin() instanceof BalancedOrigin)) {
      panel.setOrigin(MAKE.createBalancedOrigin());
    }
  }

  /** The outline of the panel becomes what was measured on site. */
  public static ModelCommand measured(Mural mural, Panel panel, Outline outline) {
    return ModelCommand.of(TEXTS.text("measured.command", "panel", panel.getId()), mural,
        () -> panel.setOutline(outline));
  }

  /** The panel gets other movement joints. */
  public static ModelCommand movement(Mural mural, Panel panel, MovementChoice chosen) {
    return ModelCommand.of(TEXTS.text("movement.command"), mural, () -> chosen.applyTo(panel));
  }

  /** The panel is laid in another bond. */
  public static ModelCommand bond(Mural mural, Panel panel, BondSpec chosen) {
    return ModelCommand.of(TEXTS.text("bond.command"), mural, () -> {
      Bond bond = MAKE.createBond();
      bond.setKind(chosen.kind());
      bond.setOffset(chosen.offset());
      bond.setRotation(chosen.rotation());
      chosen.settings().entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(entry -> {
        Setting setting = MAKE.createSetting();
        setting.setName(entry.getKey());
        setting.setValue(entry.getValue());
        bond.getSettings().add(setting);
      });
      panel.setBond(bond);
    });
  }
}
