// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.commands;

import java.util.Optional;
import java.util.Set;
import muralbench.editor.internal.geometry.CarriedShapes;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Outlines;
import muralbench.model.BalancedOrigin;
import muralbench.model.Bond;
import muralbench.model.FixedOrigin;
import muralbench.model.JointAxis;
import muralbench.model.MovementJoint;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Opening;
import muralbench.model.Origin;
import muralbench.model.Outline;
import muralbench.model.Panel;
import muralbench.model.RepeatedOutline;
import muralbench.setout.geometry.Transfer;
import muralbench.setout.geometry.Vec;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Gives a panel that repeats another one a layout of its own, equal to that of the other. A mirrored panel is laid in
 * the bond turned and shifted the other way; where that is not the mirror image, as with herringbone, its pieces
 * change.
 */
public final class OwnLayout {
  private static final MuralFactory MAKE = MuralFactory.eINSTANCE;
  /** Bonds of courses, whose mirror image starts at the other lower corner of the same face. */
  private static final Set<String> COURSES = Set.of("grid", "running");

  private final Mural mural;
  private final Panel panel;
  private final Panel from;
  private final Transfer to;

  private OwnLayout(Mural mural, Panel panel, Panel from, Transfer to) {
    this.mural = mural;
    this.panel = panel;
    this.from = from;
    this.to = to;
  }

  /** Changes the panel, if it repeats one that can be read. */
  public static void give(Mural mural, Panel panel) {
    boolean mirrored = false;
    Panel from = panel;
    for (int i = 0; i <= mural.getPanels().size() && from != null
        && from.getOutline() instanceof RepeatedOutline repeated; i++) {
      mirrored ^= repeated.isMirrored();
      from = repeated.getPanel();
    }
    if (from == null || from == panel || !(panel.getOutline() instanceof RepeatedOutline place)) {
      return;
    }
    Optional<Frame> frame = Outlines.frame(from.getOutline());
    if (frame.isPresent()) {
      Transfer to = Transfer.of(frame.get().box(), new Vec(place.getX(), place.getY()), mirrored);
      new OwnLayout(mural, panel, from, to).give();
    }
  }

  private void give() {
    Optional<Outline> outline = CarriedShapes.of(from.getOutline(), to);
    if (outline.isEmpty()) {
      return;
    }
    panel.setOutline(outline.get());
    panel.setTileKind(from.getTileKind());
    panel.setJoint(from.getJoint());
    panel.setEdgeGap(from.getEdgeGap());
    panel.setBond(from.getBond() == null ? MAKE.createBond() : bond());
    panel.setOrigin(origin());
    panel.getOpenings().clear();
    from.getOpenings().forEach(this::add);
    panel.setMovementByRule(from.isMovementByRule());
    panel.getMovementJoints().clear();
    from.getMovementJoints().forEach(joint -> panel.getMovementJoints().add(moved(joint)));
  }

  private Bond bond() {
    Bond bond = EcoreUtil.copy(from.getBond());
    if (to.mirrored()) {
      bond.setOffset(0 - bond.getOffset());
      bond.setRotation(0 - bond.getRotation());
    }
    return bond;
  }

  private Origin origin() {
    if (from.getOrigin() instanceof FixedOrigin fixed && (!to.mirrored() || sameFace())) {
      Vec corner = to.of(new Vec(fixed.getX() + (to.mirrored() ? from.getTileKind().getWidth() : 0), fixed.getY()));
      FixedOrigin moved = MAKE.createFixedOrigin();
      moved.setX(Frame.clean(corner.x()));
      moved.setY(Frame.clean(corner.y()));
      return moved;
    }
    BalancedOrigin balanced = MAKE.createBalancedOrigin();
    if (from.getOrigin() instanceof BalancedOrigin old && old.isSetFocalX() && old.isSetFocalY()) {
      Vec focus = to.of(new Vec(old.getFocalX(), old.getFocalY()));
      balanced.setFocalX(Frame.clean(focus.x()));
      balanced.setFocalY(Frame.clean(focus.y()));
    }
    return balanced;
  }

  private boolean sameFace() {
    return from.getTileKind() != null && COURSES.contains(panel.getBond().getKind())
        && panel.getBond().getRotation() == 0;
  }

  private void add(Opening opening) {
    CarriedShapes.of(opening.getOutline(), to).ifPresent(outline -> {
      Opening own = MAKE.createOpening();
      own.setId(Names.freeOpeningId(mural, panel));
      own.setKind(opening.getKind());
      own.setOutline(outline);
      panel.getOpenings().add(own);
    });
  }

  private MovementJoint moved(MovementJoint joint) {
    MovementJoint moved = EcoreUtil.copy(joint);
    Vec there = to.of(new Vec(joint.getAt(), joint.getAt()));
    moved.setAt(Frame.clean(joint.getAxis() == JointAxis.VERTICAL ? there.x() : there.y()));
    return moved;
  }
}
