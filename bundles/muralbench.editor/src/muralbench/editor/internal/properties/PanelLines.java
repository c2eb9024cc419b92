// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.editor.OpenMural;
import muralbench.editor.internal.commands.Names;
import muralbench.editor.internal.geometry.Placement;
import muralbench.editor.internal.properties.Entries.Range;
import muralbench.model.FixedOrigin;
import muralbench.model.Mounting;
import muralbench.model.MuralFactory;
import muralbench.model.Origin;
import muralbench.model.Panel;
import muralbench.model.RepeatedOutline;
import muralbench.model.Setting;
import muralbench.model.Surface;
import muralbench.model.TileKind;
import muralbench.setout.PanelSetOut;
import muralbench.setout.bond.Bond;
import muralbench.setout.geometry.Vec;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** The lines of a panel. */
final class PanelLines {
  /** Where the pattern starts, as a choice. */
  enum Start {
    /** The set-out chooses. */
    BALANCED,
    /** A given corner. */
    FIXED
  }

  private final OpenMural mural;
  private final Panel panel;
  private final LengthUnit unit;

  PanelLines(OpenMural mural, Panel panel) {
    this.mural = mural;
    this.panel = panel;
    this.unit = mural.units();
  }

  List<Property> lines() {
    List<Property> lines = new ArrayList<>();
    lines.add(Entries.place(true, panel::getId, () -> Names.ids(mural.mural()), panel::setId));
    lines.add(Entries.words("title", "general", panel::getTitle, panel::setTitle));
    lines.add(Entries.choice("surface", "general", Surface.class, panel::getSurface, panel::setSurface));
    lines.add(Entries.choice("mounting", "general", Mounting.class, panel::getMounting, panel::setMounting));
    if (panel.getOutline() instanceof RepeatedOutline repeated) {
      lines.addAll(new RepeatLines(mural, panel, repeated).lines());
    } else {
      lines.addAll(own());
    }
    GapLine.of(mural, panel).ifPresent(lines::add);
    if (panel.getMounting() == Mounting.REMOVABLE) {
      lines.addAll(new BoardLines(panel, unit).lines());
    }
    lines.add(result("pieces", setOut -> setOut.pieces().size()));
    lines.add(result("whole", PanelSetOut::whole));
    lines.add(result("cut", PanelSetOut::cut));
    lines.add(result("tilesToOrder", PanelSetOut::tilesToOrder));
    return lines;
  }

  /** What a panel has that repeats no other. */
  private List<Property> own() {
    List<Property> lines = new ArrayList<>(new OutlineLines(panel, unit, panel::setOutline).lines());
    lines.add(tile());
    lines.add(Entries.length("joint", "tiling", unit, Range.NOT_NEGATIVE, panel::getJoint, panel::setJoint));
    lines.add(Entries.length("edgeGap", "tiling", unit, Range.NOT_NEGATIVE, panel::getEdgeGap, panel::setEdgeGap));
    if (panel.getBond() != null) {
      lines.add(bond());
      lines.add(Entries.number("offset", "tiling", panel.getBond()::getOffset, panel.getBond()::setOffset));
      lines.add(Entries.number("rotation", "tiling", panel.getBond()::getRotation, panel.getBond()::setRotation));
      mural.bonds().find(panel.getBond().getKind())
          .ifPresent(bond -> bond.settingNames().forEach(name -> lines.add(setting(name))));
    }
    lines.add(new OriginLine(mural, panel).line(this::start));
    if (panel.getOrigin() instanceof FixedOrigin origin) {
      lines.add(Entries.length("originX", "tiling", unit, Range.ANY, origin::getX, origin::setX));
      lines.add(Entries.length("originY", "tiling", unit, Range.ANY, origin::getY, origin::setY));
    }
    lines.addAll(new StartLines(mural, panel).lines());
    lines.addAll(new MovementLines(mural, panel).lines());
    return lines;
  }

  private Property tile() {
    List<TileKind> tiles = mural.mural().getTileKinds();
    String[] labels = tiles.stream().map(tile -> tile.getId() + "  " + LengthText.shown(tile.getWidth(), unit) + " × "
        + LengthText.shown(tile.getHeight(), unit)).toArray(String[]::new);
    return Property.choice("tile", "tiling", labels, () -> tiles.indexOf(panel.getTileKind()),
        index -> panel.setTileKind(tiles.get(index)));
  }

  private Property bond() {
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
    return Property.choice("bond", "tiling", labels.toArray(String[]::new),
        () -> kinds.indexOf(panel.getBond().getKind()), index -> panel.getBond().setKind(kinds.get(index)));
  }

  /** A parameter of a contributed pattern, which is named as its author names it. */
  private Property setting(String name) {
    return Entries.words(ModelProperties.SETTING + name, "tiling", () -> find(name).map(Setting::getValue).orElse(""),
        value -> {
          if (value.isBlank()) {
            find(name).ifPresent(EcoreUtil::remove);
          } else {
            find(name).orElseGet(() -> add(name)).setValue(value.strip());
          }
        });
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

  /** A start that is fixed begins where the set-out starts now, so that nothing jumps. */
  private void start(Start start) {
    Origin origin = MuralFactory.eINSTANCE.createBalancedOrigin();
    if (start == Start.FIXED) {
      FixedOrigin fixed = MuralFactory.eINSTANCE.createFixedOrigin();
      Vec now = mural.setOut(panel).map(PanelSetOut::origin).orElseGet(this::corner);
      fixed.setX(now.x());
      fixed.setY(now.y());
      origin = fixed;
    }
    panel.setOrigin(origin);
  }

  private Vec corner() {
    return Placement.frame(panel).map(frame -> new Vec(frame.x(), frame.y())).orElse(Vec.ZERO);
  }

  private Property result(String id, Function<PanelSetOut, Object> value) {
    Optional<PanelSetOut> setOut = mural.setOut(panel);
    return Property.info(id, "result", () -> setOut.map(value).map(String::valueOf).orElse("–"));
  }
}
