// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import muralbench.editor.OpenMural;
import muralbench.editor.SampleMural;
import muralbench.editor.internal.commands.OutlineKind;
import muralbench.editor.internal.geometry.FocalPoint;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Placement;
import muralbench.model.Exposure;
import muralbench.model.JointAxis;
import muralbench.model.LevelLineOutline;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.MovementJoint;
import muralbench.model.Panel;
import muralbench.model.RectangleOutline;
import muralbench.setout.geometry.Vec;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

class MovementAndFocusTest {
  private final OpenMural mural = SampleMural.open();
  private final Panel panel = mural.mural().getPanels().get(0);

  private ModelProperties lines() {
    return (ModelProperties) PropertySources.of(mural, panel);
  }

  private void widePanelOutside() {
    mural.mural().getSite().setExposure(Exposure.EXTERIOR);
    ((RectangleOutline) panel.getOutline()).setWidth(6000);
    lines().setPropertyValue("title", "Wide");
  }

  @Test
  void theRuleOutsideIsTwelveFeetAndHalfAnInch() {
    // TCNA Handbook EJ171 as published by the trade: 12 ft at most outdoors, 1/2 in wide at that.
    mural.mural().getSite().setExposure(Exposure.EXTERIOR);
    assertEquals("12 ft 0 in", lines().getPropertyValue("movement.apart"));
    assertEquals("1/2 in", lines().getPropertyValue("movement.wide"));
    assertTrue(((String) lines().getPropertyValue("movement.source")).startsWith("TCNA Handbook EJ171"));
  }

  @Test
  void jointsByTheRuleAreListedAndTakenOverByHand() {
    widePanelOutside();
    lines().setPropertyValue("movement", 1);
    String listed = (String) lines().getPropertyValue("movement.joint.1");
    assertTrue(listed.matches("vertical, \\d+ ft .* from left, 1/2 in wide"), listed);
    lines().setPropertyValue("movement", 2);
    assertFalse(panel.isMovementByRule());
    assertEquals(1, panel.getMovementJoints().size());
    assertEquals(listed, lines().getPropertyValue("movement.joint.1"));
  }

  @Test
  void placingIsUndoneInOneStep() {
    Mural before = EcoreUtil.copy(mural.mural());
    lines().setPropertyValue("movement", 2);
    assertEquals(JointAxis.VERTICAL, panel.getMovementJoints().get(0).getAxis());
    mural.commandStack().undo();
    assertTrue(EcoreUtil.equals(before, mural.mural()));
  }

  @Test
  void aFocalPointBeginsInTheMiddleAndIsTypedAndTakenAway() {
    lines().setPropertyValue("focus", 1);
    assertEquals("36 in", lines().getPropertyValue("focalX"));
    lines().setPropertyValue("focalX", "30");
    assertEquals(Optional.of(new Vec(762, 1524)), FocalPoint.of(panel));
    lines().setPropertyValue("focus", 0);
    assertEquals(Optional.empty(), FocalPoint.of(panel));
  }

  @Test
  void theCentreOfAFaceOrACrossingLiesOnTheFocalPoint() {
    lines().setPropertyValue("focus", 1);
    lines().setPropertyValue("focalX", "30");
    Vec start = mural.setOut(panel).orElseThrow().origin();
    double module = 152.4 + 3.175;
    double across = Math.floorMod(Math.round((762 - start.x()) * 1e6), Math.round(module * 1e6)) / 1e6;
    assertTrue(List.of(76.2, 154.0).stream().anyMatch(at -> Math.abs(at - across) < 0.1), "at " + across);
  }

  @Test
  void aMovedPanelTakesFocalPointAndJointsAlong() {
    MovementJoint joint = MuralFactory.eINSTANCE.createMovementJoint();
    joint.setAxis(JointAxis.HORIZONTAL);
    joint.setAt(1500);
    panel.getMovementJoints().add(joint);
    FocalPoint.set(panel, new Vec(600, 1200));
    Frame from = Placement.frame(panel).orElseThrow();
    Placement.place(panel, from, from.moved(100, -20));
    assertEquals(Optional.of(new Vec(700, 1180)), FocalPoint.of(panel));
    assertEquals(1480, joint.getAt(), 1e-9);
  }

  @Test
  void stationsOfALevelLineAreTypedAndRefused() {
    lines().setPropertyValue("outline", OutlineKind.LEVEL_LINE.ordinal());
    assertEquals("0 in, 24 in, 24 in; 72 in, 24 in, 24 in", lines().getPropertyValue("stations"));
    assertTrue(lines().refusal("stations", "0, 24; 72, 24, 24").orElse("").contains("semicolons"));
    assertTrue(lines().refusal("stations", "72, 24, 24; 0, 24, 24").orElse("").contains("from left to right"));
    lines().setPropertyValue("stations", "0, 24, 24; 30, 24 1/2, 24; 72, 24, 24");
    assertEquals(3, ((LevelLineOutline) panel.getOutline()).getStations().size());
  }
}
