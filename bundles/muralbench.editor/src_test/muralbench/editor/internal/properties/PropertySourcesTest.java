// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import muralbench.editor.OpenMural;
import muralbench.editor.SampleMural;
import muralbench.editor.internal.commands.OutlineKind;
import muralbench.model.DisplayUnits;
import muralbench.model.FixedOrigin;
import muralbench.model.MeasuredOutline;
import muralbench.model.Mural;
import muralbench.model.Panel;
import muralbench.model.PolygonOutline;
import muralbench.setout.bond.Bond;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.bond.BondRequest;
import muralbench.setout.bond.Pattern;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.ui.views.properties.IPropertySource;
import org.junit.jupiter.api.Test;

class PropertySourcesTest {
  private final OpenMural mural = SampleMural.open();
  private final Panel panel = mural.mural().getPanels().get(0);

  private IPropertySource source(EObject thing) {
    return PropertySources.of(mural, thing);
  }

  private static String refusal(ModelProperties source, String id, String text) {
    return source.refusal(id, text).orElse("");
  }

  private ModelProperties panelLines() {
    return (ModelProperties) source(panel);
  }

  @Test
  void lengthsAreShownExactlyInTheUnitsOfTheMural() {
    assertEquals("1/8 in", source(panel).getPropertyValue("joint"));
    mural.mural().setUnits(DisplayUnits.MILLIMETRES);
    assertEquals("3.175 mm", source(panel).getPropertyValue("joint"));
  }

  @Test
  void anEditIsACommandThatCanBeUndone() {
    Mural before = EcoreUtil.copy(mural.mural());
    source(panel).setPropertyValue("joint", "3/16");
    assertEquals(4.7625, panel.getJoint());
    assertEquals("Set joint of panel A", mural.commandStack().getUndoCommand().getLabel());
    mural.commandStack().undo();
    assertTrue(EcoreUtil.equals(before, mural.mural()));
  }

  @Test
  void lengthsMayBeTypedInOtherUnits() {
    source(panel).setPropertyValue("width", "1.6 m");
    assertEquals("1600 mm", muralbench.base.length.LengthText.exact(
        ((muralbench.model.RectangleOutline) panel.getOutline()).getWidth(),
        muralbench.base.length.LengthUnit.MILLIMETRE));
  }

  @Test
  void badInputIsRefusedWithAMessageAndChangesNothing() {
    assertTrue(refusal(panelLines(), "joint", "three").length() > 5);
    assertEquals("The length cannot be negative.", refusal(panelLines(), "joint", "-1"));
    assertEquals("The length has to be more than 0.", refusal(panelLines(), "width", "0"));
    assertTrue(refusal(panelLines(), "id", "B").contains("\"B\" is used before"));
    assertTrue(refusal(panelLines(), "id", "b").contains("only in capital letters"));
    assertTrue(refusal(panelLines(), "id", "Low water").contains("letters A to Z, digits and _"));
    assertTrue(refusal(panelLines(), "offset", "1/0").contains("number"));
    source(panel).setPropertyValue("joint", "-1");
    assertEquals(3.175, panel.getJoint());
    assertFalse(mural.commandStack().canUndo());
  }

  @Test
  void anUnchangedValueIsNoCommand() {
    for (String line : panelLines().ids()) {
      source(panel).setPropertyValue(line, source(panel).getPropertyValue(line));
    }
    source(panel).setPropertyValue("joint", "3.175 mm");
    source(panel).setPropertyValue("offset", "0.0");
    source(panel).setPropertyValue("id", " A ");
    assertFalse(mural.commandStack().canUndo());
  }

  @Test
  void sharesAreShownAndTypedAsFractions() {
    source(panel).setPropertyValue("offset", "1/3");
    assertEquals(1.0 / 3, panel.getBond().getOffset());
    assertEquals("1/3", source(panel).getPropertyValue("offset"));
  }

  @Test
  void theSettingsOfAContributedPatternCanBeTyped() {
    Bond zigzag = new Bond() {
      @Override
      public String kind() {
        return "zigzag";
      }

      @Override
      public String label() {
        return "Zigzag";
      }

      @Override
      public List<String> settingNames() {
        return List.of("teeth");
      }

      @Override
      public Pattern lay(BondRequest request) {
        throw new UnsupportedOperationException("not laid here");
      }
    };
    OpenMural open = OpenMural.of(SampleMural.create(), null, BondRegistry.standard().with(List.of(zigzag)),
        Runnable::run, Runnable::run);
    Panel other = open.mural().getPanels().get(0);
    other.getBond().setKind("zigzag");
    PropertySources.of(open, other).setPropertyValue("setting.teeth", "7");
    assertEquals("7", other.getBond().getSettings().get(0).getValue());
    PropertySources.of(open, other).setPropertyValue("setting.teeth", " ");
    assertTrue(other.getBond().getSettings().isEmpty());
  }

  @Test
  void aBondChosenHereCanBeLaidAndKnowsItsSettings() {
    int rings = mural.bonds().all().stream().map(Bond::kind).toList().indexOf("rings");
    source(panel).setPropertyValue("bond", rings);
    assertEquals("24 in", source(panel).getPropertyValue("setting.radius"));
    assertEquals("Radius", panelLines().label("setting.radius"));
    assertFalse(panelLines().ids().contains("offset"));
    source(panel).setPropertyValue("setting.radius", "23");
    assertEquals("23 in", panel.getBond().getSettings().stream().filter(one -> one.getName().equals("radius"))
        .findFirst().orElseThrow().getValue());
    source(panel).setPropertyValue("bond", 0);
    assertTrue(panel.getBond().getSettings().isEmpty());
  }

  @Test
  void aSettingOfFewWordsIsAChoice() {
    assertEquals(0, source(panel).getPropertyValue("setting.courses"));
    source(panel).setPropertyValue("setting.courses", 1);
    assertEquals("vertical", panel.getBond().getSettings().get(0).getValue());
  }

  @Test
  void aFixedStartBeginsWhereTheSetOutStarts() {
    double now = mural.setOut(panel).orElseThrow().origin().x();
    source(panel).setPropertyValue("origin", 1);
    assertEquals(now, ((FixedOrigin) panel.getOrigin()).getX());
  }

  @Test
  void theOutlineCanBecomeAnotherKind() {
    source(panel).setPropertyValue("outline", 1);
    assertEquals(4, ((PolygonOutline) panel.getOutline()).getPoints().size());
  }

  @Test
  void aMeasuredWallIsTypedInAsItIsTaped() {
    source(panel).setPropertyValue("outline", OutlineKind.MEASURED.ordinal());
    source(panel).setPropertyValue("measured.rising", "7 ft 3 in");
    MeasuredOutline wall = (MeasuredOutline) panel.getOutline();
    assertEquals(2209.8, wall.getRising());
    assertFalse(panelLines().refusal("measured.top", "0").isEmpty());
  }

  @Test
  void movingByTheFieldTakesTheOpeningsAlong() {
    source(panel).setPropertyValue("left", "1 in");
    assertEquals("21 in", source(panel.getOpenings().get(0)).getPropertyValue("left"));
  }

  @Test
  void everyLineHasItsTextsAndAValue() {
    List<EObject> things = List.of(mural.mural(), panel, mural.mural().getPanels().get(1), mural.mural().getPanels()
        .get(2), panel.getOpenings().get(0), mural.mural().getTileKinds().get(0));
    for (EObject thing : things) {
      ModelProperties source = (ModelProperties) source(thing);
      assertTrue(source.ids().size() >= 5);
      assertTrue(source.ids().stream().allMatch(line -> !source.label(line).isEmpty() && !source.group(line).isEmpty()
          && source.getPropertyValue(line) != null));
    }
  }
}
