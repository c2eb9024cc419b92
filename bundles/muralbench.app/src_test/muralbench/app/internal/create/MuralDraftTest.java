// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.create;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import muralbench.base.Progress;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.model.BalancedOrigin;
import muralbench.model.DisplayUnits;
import muralbench.model.Exposure;
import muralbench.model.MeasuredOutline;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Panel;
import muralbench.model.RectangleOutline;
import muralbench.setout.MuralReader;
import muralbench.setout.MuralSetOut;
import muralbench.setout.SetOut;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Box;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MuralDraftTest {
  private static final TileDraft TILE = new TileDraft(100, 200, 8, 3);
  private static final MuralDraft TWO = new MuralDraft(" Tide ", "", DisplayUnits.MILLIMETRES, Exposure.EXTERIOR, TILE,
      List.of(new PanelDraft("A", "Ebb", 0, 900, 600, 400), new PanelDraft("B", "", 700, 900, 500, 300)));

  @Test
  void theMuralHoldsWhatWasFilledIn() {
    Mural mural = TWO.toMural();
    assertEquals("Tide", mural.getTitle());
    assertEquals(Exposure.EXTERIOR, mural.getSite().getExposure());
    assertEquals(List.of("A", "B"), mural.getPanels().stream().map(Panel::getId).toList());
    assertEquals(200, mural.getTileKinds().get(0).getHeight());
  }

  @Test
  void everyPanelIsARectangleOfTheOneTileWithABalancedStart() {
    Panel panel = TWO.toMural().getPanels().get(1);
    RectangleOutline outline = assertInstanceOf(RectangleOutline.class, panel.getOutline());
    assertEquals(List.of(700.0, 900.0, 500.0, 300.0),
        List.of(outline.getX(), outline.getY(), outline.getWidth(), outline.getHeight()));
    assertInstanceOf(BalancedOrigin.class, panel.getOrigin());
    assertSame(((Mural) panel.eContainer()).getTileKinds().get(0), panel.getTileKind());
    assertEquals(3, panel.getJoint());
  }

  @ParameterizedTest
  @EnumSource(DisplayUnits.class)
  void theStartCanBeSetOutAsItIs(DisplayUnits units) throws Exception {
    MuralSetOut setOut = SetOut.mural(MuralReader.mural(MuralDraft.start(units).toMural()), BondRegistry.standard(),
        Progress.NONE);
    assertEquals(96, setOut.tilesToOrder());
  }

  @Test
  void theStartInInchesReadsInWholeInches() {
    MuralDraft start = MuralDraft.start(DisplayUnits.INCHES);
    assertEquals("6 in", LengthText.exact(start.tile().width(), LengthUnit.INCH));
    assertEquals("3/8 in", LengthText.exact(start.tile().thickness(), LengthUnit.INCH));
    assertEquals("72 in", LengthText.exact(start.panels().get(0).width(), LengthUnit.INCH));
  }

  @Test
  void theNextPanelStandsToTheRightAtARoundPlace() {
    PanelDraft first = MuralDraft.start(DisplayUnits.INCHES).panels().get(0);
    PanelDraft next = first.next("B", 152.4, LengthUnit.INCH);
    assertEquals("78 in", LengthText.exact(next.x(), LengthUnit.INCH));
    assertEquals(first.y(), next.y());
    assertEquals(first.width(), next.width());
  }

  @Test
  void aMeasuredPanelKeepsItsMeasurementsAndTheNextIsARectangleBesideIt() {
    MeasuredOutline wall = MuralFactory.eINSTANCE.createMeasuredOutline();
    wall.setBottom(1800);
    PanelDraft panel = new PanelDraft("A", "", 0, 900, 600, 400).on(wall, new Box(0, 900, 1800.2, 2100),
        LengthUnit.MILLIMETRE);
    MuralDraft draft = new MuralDraft("", "", DisplayUnits.MILLIMETRES, Exposure.EXTERIOR, TILE, List.of(panel));
    MeasuredOutline made = assertInstanceOf(MeasuredOutline.class, draft.toMural().getPanels().get(0).getOutline());
    assertEquals(1800, made.getBottom());
    assertEquals(new PanelDraft("B", "", 1900, 900, 1800, 1200), panel.next("B", 100, LengthUnit.MILLIMETRE));
  }
}
