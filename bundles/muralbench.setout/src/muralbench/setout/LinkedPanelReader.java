// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.model.Panel;
import muralbench.model.RepeatedOutline;
import muralbench.model.SharedLine;
import muralbench.model.SharedOrigin;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Transfer;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementSpec;

/**
 * Takes panels from the model together with what they take from other panels: their layout, grid or level line.
 *
 * @param reader what panels have of their own
 * @param links which takes from which
 */
record LinkedPanelReader(PanelReader reader, PanelLinks links) {
  private static final double SAME = 1e-9;

  /**
   * A panel.
   *
   * @throws InputException if a value is missing or cannot be, also one of another panel that this one takes
   */
  PanelSpec read(Panel panel) throws InputException {
    reader.checkPanelId(panel);
    links.refuseCircle(panel);
    if (panel.getOutline() instanceof RepeatedOutline outline) {
      return repeated(panel, outline);
    }
    Panel head = links.gridHead(panel);
    OriginSpec start = start(panel, head);
    PanelSpec own = reader.own(panel, start);
    List<PanelSpec> field = field(panel, own, head, start);
    return field.size() == 1 ? own : own.withOrigin(new OriginSpec.Shared(start, field));
  }

  private PanelSpec repeated(Panel panel, RepeatedOutline outline) throws InputException {
    PanelSpec other = other(panel, "read.repeated");
    Ranges ranges = reader.at(panel.getId());
    Transfer to = new OutlineReader(ranges).transfer(outline, other.outline());
    List<OpeningSpec> openings = other.openings().stream()
        .map(opening -> new OpeningSpec(panel.getId() + '-' + opening.id(), opening.kind(), to.of(opening.outline())))
        .toList();
    MakingReader making = new MakingReader(ranges);
    return new PanelSpec(panel.getId(), PanelReader.text(panel.getTitle()), panel.getSurface().getLiteral(),
        panel.getMounting().getLiteral(), other.tile(), other.joint(), other.edgeGap(), to.of(other.outline()), openings,
        other.bond(), new OriginSpec.Repeated(other, to), Optional.empty(), moved(other.movement(), to),
        making.making(panel), making.board(panel.getBoard()));
  }

  private static MovementSpec moved(MovementSpec movement, Transfer to) {
    if (movement instanceof MovementSpec.Given given) {
      return new MovementSpec.Given(
          given.joints().stream().map(joint -> joint.moved(to)).sorted(MovementJoint.ORDER).toList());
    }
    return movement instanceof MovementSpec.ByRule rule ? new MovementSpec.ByRule(rule.rule(), rule.swing(),
        rule.keepOut().stream().map(area -> to.of(Contour.rectangle(area.minX(), area.minY(), area.width(),
            area.height())).box()).toList()) : movement;
  }

  /** The panel that a panel takes something from. */
  private PanelSpec other(Panel panel, String key) throws InputException {
    Panel other = links.next(panel).orElse(null);
    if (other == null) {
      throw reader.at(panel.getId()).error(key + ".missing");
    }
    try {
      return read(other);
    } catch (InputException e) {
      throw reader.at(panel.getId()).because(e, key + ".other", "other", other.getId(), "problem", e.problem());
    }
  }

  /** Where the grid of a panel starts, which is that of the head of its field. */
  private OriginSpec start(Panel panel, Panel head) throws InputException {
    if (head.getOutline() instanceof RepeatedOutline) {
      throw reader.at(panel.getId()).error("read.grid.repeated", "other", head.getId());
    }
    if (!(head.getOrigin() instanceof SharedOrigin shared)) {
      return reader.origin(head);
    }
    if (shared.getLine() == SharedLine.GRID) {
      throw reader.at(panel.getId()).error("read.grid.missing");
    }
    PanelSpec with = other(head, "read.level");
    if (with.surface().equals(head.getSurface().getLiteral())) {
      return new OriginSpec.Level(with);
    }
    throw reader.at(panel.getId()).error("read.level.surface", "other", with.id());
  }

  /** The panels that have the grid of a panel; others than itself are left out while something is wrong with them. */
  private List<PanelSpec> field(Panel panel, PanelSpec own, Panel head, OriginSpec start) throws InputException {
    List<PanelSpec> field = new ArrayList<>();
    PanelSpec first = panel == head ? own : head(panel, head, start);
    for (Panel each : links.field(head)) {
      if (each == panel) {
        refuseOther(own, first);
        field.add(own);
      } else {
        try {
          PanelSpec spec = each == head ? first : reader.own(each, start);
          refuseOther(spec, first);
          field.add(spec);
        } catch (InputException e) {
          // Reported where that panel is read itself.
          continue;
        }
      }
    }
    return field;
  }

  private PanelSpec head(Panel panel, Panel head, OriginSpec start) throws InputException {
    try {
      return reader.own(head, start);
    } catch (InputException e) {
      throw reader.at(panel.getId()).because(e, "read.grid.other", "other", head.getId(), "problem", e.problem());
    }
  }

  /** A grid runs on only where tile, joint and bond are the same, on the same surface. */
  private void refuseOther(PanelSpec panel, PanelSpec head) throws InputException {
    boolean tile = Math.abs(panel.tile().width() - head.tile().width()) < SAME
        && Math.abs(panel.tile().height() - head.tile().height()) < SAME;
    String what = !panel.surface().equals(head.surface()) ? "surface" : !tile ? "tile"
        : Math.abs(panel.joint() - head.joint()) >= SAME ? "joint" : !panel.bond().equals(head.bond()) ? "bond" : "";
    if (!what.isEmpty()) {
      throw reader.at(panel.id()).error("read.grid." + what, "other", head.id());
    }
  }
}
