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
import muralbench.model.Surface;
import muralbench.model.TileKind;
import muralbench.setout.PanelSetOut;
import muralbench.setout.geometry.Vec;

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
    lines.addAll(new BondLines(mural, panel).lines());
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
