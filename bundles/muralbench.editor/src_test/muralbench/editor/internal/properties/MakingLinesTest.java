// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import muralbench.editor.OpenMural;
import muralbench.editor.SampleMural;
import muralbench.model.BoardMaterial;
import muralbench.model.DisplayUnits;
import muralbench.model.Mounting;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Panel;
import muralbench.model.Painting;
import muralbench.model.TileClass;
import muralbench.model.TileKind;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

class MakingLinesTest {
  private final OpenMural open = SampleMural.open();
  private final Mural mural = open.mural();
  private final Panel panel = mural.getPanels().get(0);
  private final TileKind tile = mural.getTileKinds().get(0);

  private ModelProperties lines(EObject thing) {
    return (ModelProperties) PropertySources.of(open, thing);
  }

  @Test
  void kerfAndFactoryEdgesAreAskedForOnlyWhenPaintedAfterCutting() {
    assertFalse(lines(mural).ids().contains("kerf"));
    lines(mural).setPropertyValue("painted", 1);
    assertEquals(Painting.AFTER_CUTTING, mural.getMaking().getPainted());
    assertEquals("1/16 in", lines(mural).getPropertyValue("kerf"));
    lines(mural).setPropertyValue("factoryTop", 1);
    assertFalse(mural.getMaking().isFactoryTop());
    open.commandStack().undo();
    open.commandStack().undo();
    assertNull(mural.getMaking());
  }

  @Test
  void sparesAreCommonPracticeUntilTyped() {
    assertEquals("10", lines(mural).getPropertyValue("spare.grid"));
    assertEquals("Grid", lines(mural).label("spare.grid"));
    lines(mural).setPropertyValue("spare.grid", "12.5");
    assertEquals(12.5, mural.getSpares().get(0).getPercent());
    assertFalse(lines(mural).refusal("spare.grid", "-1").isEmpty());
    lines(mural).setPropertyValue("spare.grid", " ");
    assertTrue(mural.getSpares().isEmpty());
  }

  @Test
  void theOrderIsRoundedUpToBoxes() {
    lines(tile).setPropertyValue("box", "44");
    int laid = open.setOut().tilesToOrder();
    int boxes = (int) Math.ceil(Math.ceil(laid * 1.1) / 44);
    String order = (String) lines(mural).getPropertyValue("order.T6");
    assertTrue(order.startsWith(boxes + " boxes of 44: " + laid + " and "), order);
  }

  @Test
  void whatIsNotKnownOfATileIsBlank() {
    for (String line : new String[] {"warpage", "waterAbsorption", "expansion", "box"}) {
      assertEquals("", lines(tile).getPropertyValue(line), line);
    }
    lines(tile).setPropertyValue("warpage", "1/64");
    assertEquals(25.4 / 64, tile.getWarpage());
    lines(tile).setPropertyValue("warpage", "");
    assertEquals(-1, tile.getWarpage());
    lines(tile).setPropertyValue("tileClass", TileClass.RECTIFIED.ordinal());
    assertEquals(TileClass.RECTIFIED, tile.getTileClass());
  }

  @Test
  void theSwingIsTypedInEitherScale() {
    // 64 °C of difference are 115.2 °F: a degree Celsius is 9/5 of a degree Fahrenheit.
    lines(mural).setPropertyValue("temperatureSwing", "64 °C");
    assertEquals(64, mural.getSite().getTemperatureSwing());
    assertEquals("115.2 °F", lines(mural).getPropertyValue("temperatureSwing"));
    mural.setUnits(DisplayUnits.MILLIMETRES);
    assertEquals("64 °C", lines(mural).getPropertyValue("temperatureSwing"));
    assertFalse(lines(mural).refusal("temperatureSwing", "warm").isEmpty());
  }

  @Test
  void theBoardIsAskedForOnlyOfAPanelThatCanBeTakenDown() {
    assertFalse(lines(panel).ids().contains("board.material"));
    lines(panel).setPropertyValue("mounting", 1);
    Mural before = EcoreUtil.copy(mural);
    lines(panel).setPropertyValue("board.material", BoardMaterial.PLYWOOD.ordinal());
    lines(panel).setPropertyValue("board.density", "580");
    assertEquals(580, panel.getBoard().getDensity());
    open.commandStack().undo();
    open.commandStack().undo();
    assertTrue(EcoreUtil.equals(before, mural));
  }

  @Test
  void everyLineHasItsTextsAndAnUnchangedValueIsNoCommand() {
    panel.setMounting(Mounting.REMOVABLE);
    mural.setMaking(MuralFactory.eINSTANCE.createMaking());
    mural.getMaking().setPainted(Painting.AFTER_CUTTING);
    for (EObject thing : new EObject[] {mural, panel, tile}) {
      ModelProperties lines = lines(thing);
      for (String line : lines.ids()) {
        assertFalse(lines.label(line).isEmpty() || lines.group(line).isEmpty());
        lines.setPropertyValue(line, lines.getPropertyValue(line));
      }
    }
    assertFalse(open.commandStack().canUndo());
  }
}
