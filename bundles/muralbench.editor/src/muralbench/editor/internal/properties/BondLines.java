// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.editor.OpenMural;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Placement;
import muralbench.model.MuralFactory;
import muralbench.model.Panel;
import muralbench.model.Setting;
import muralbench.model.TileKind;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.Bond;
import muralbench.setout.bond.BondRequest;
import muralbench.setout.bond.BondSetting;
import muralbench.setout.bond.BondSetting.Form;
import muralbench.setout.bond.SettingText;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** The lines about the bond of a panel and its settings. */
final class BondLines {
  private static final String GROUP = "tiling";

  private final OpenMural mural;
  private final Panel panel;

  BondLines(OpenMural mural, Panel panel) {
    this.mural = mural;
    this.panel = panel;
  }

  List<Property> lines() {
    List<Property> lines = new ArrayList<>();
    if (panel.getBond() == null) {
      return lines;
    }
    lines.add(kind());
    Optional<Bond> now = mural.bonds().find(panel.getBond().getKind());
    if (now.map(Bond::takesOffset).orElse(true)) {
      lines.add(Entries.number("offset", GROUP, panel.getBond()::getOffset, panel.getBond()::setOffset));
    }
    lines.add(Entries.number("rotation", GROUP, panel.getBond()::getRotation, panel.getBond()::setRotation));
    now.ifPresent(bond -> bond.settingNames().forEach(name -> lines.add(setting(bond, name))));
    return lines;
  }

  private Property kind() {
    List<String> kinds = new ArrayList<>();
    List<String> labels = new ArrayList<>();
    for (Bond bond : mural.bonds().all()) {
      kinds.add(bond.kind());
      labels.add(bond.label());
    }
    if (!kinds.contains(panel.getBond().getKind())) {
      // A pattern of a plug-in that is not there stays as it is until another is chosen.
      kinds.add(panel.getBond().getKind());
      labels.add(panel.getBond().getKind());
    }
    return Property.choice("bond", GROUP, labels.toArray(String[]::new),
        () -> kinds.indexOf(panel.getBond().getKind()), index -> become(kinds.get(index)));
  }

  /** What another bond does not know goes, and what it needs begins with something that can be laid. */
  private void become(String kind) {
    panel.getBond().setKind(kind);
    mural.bonds().find(kind).ifPresent(bond -> {
      List<String> known = bond.settingNames();
      panel.getBond().getSettings().removeIf(setting -> !known.contains(setting.getName()));
      Frame frame = Placement.frame(panel).orElse(new Frame(0, 0, 1, 1));
      SettingText.start(bond, frame.width(), frame.height(), tile(), panel.getJoint(), mural.units())
          .forEach((name, value) -> {
            if (find(name).isEmpty()) {
              add(name).setValue(value);
            }
          });
      if (!bond.takesOffset() || !lays(bond)) {
        panel.getBond().setOffset(bond.sample().offset());
      }
    });
  }

  private TileSpec tile() {
    TileKind tile = panel.getTileKind();
    return new TileSpec("", tile.getWidth(), tile.getHeight(), 0, 0, -1);
  }

  private boolean lays(Bond bond) {
    try {
      Map<String, String> settings = new HashMap<>();
      panel.getBond().getSettings().forEach(setting -> settings.put(setting.getName(), setting.getValue()));
      bond.lay(new BondRequest(tile(), panel.getJoint(), panel.getBond().getOffset(), settings));
      return true;
    } catch (InputException e) {
      return false;
    }
  }

  /** A setting, with the words or lengths it is made of; one that only has a name is any text. */
  private Property setting(Bond bond, String name) {
    String id = LineNames.SETTING + name;
    BondSetting setting = bond.settings().stream().filter(one -> one.name().equals(name)).findFirst()
        .orElse(new BondSetting(name, name, "", ""));
    if (setting.form() == Form.CHOICE && setting.words().contains(value(name, setting.standard()))) {
      return Property.choice(id, GROUP, setting.words().toArray(String[]::new),
          () -> setting.words().indexOf(value(name, setting.standard())),
          index -> set(name, setting.words().get(index)));
    }
    if (SettingText.isLength(setting)) {
      return Property.text(id, GROUP, () -> SettingText.shown(value(name, ""), mural.units()),
          text -> SettingText.typed(text, mural.units()), text -> Optional.empty(),
          text -> set(name, SettingText.typed(text, mural.units())));
    }
    return Entries.words(id, GROUP, () -> value(name, ""), text -> set(name, text));
  }

  private String value(String name, String standard) {
    return find(name).map(Setting::getValue).filter(text -> !text.isBlank()).orElse(standard);
  }

  private void set(String name, String value) {
    if (value.isBlank()) {
      find(name).ifPresent(EcoreUtil::remove);
    } else {
      find(name).orElseGet(() -> add(name)).setValue(value.strip());
    }
  }

  private Optional<Setting> find(String name) {
    return panel.getBond().getSettings().stream().filter(setting -> name.equals(setting.getName())).findFirst();
  }

  private Setting add(String name) {
    Setting setting = MuralFactory.eINSTANCE.createSetting();
    setting.setName(name);
    panel.getBond().getSettings().add(setting);
    return setting;
  }
}
