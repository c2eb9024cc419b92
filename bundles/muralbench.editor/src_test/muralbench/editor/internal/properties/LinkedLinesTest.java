// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import muralbench.editor.OpenMural;
import muralbench.editor.RepeatedPanel;
import muralbench.editor.SampleMural;
import muralbench.model.BalancedOrigin;
import muralbench.model.Panel;
import muralbench.model.RectangleOutline;
import muralbench.model.RepeatedOutline;
import muralbench.model.SharedLine;
import muralbench.model.SharedOrigin;
import org.junit.jupiter.api.Test;

class LinkedLinesTest {
  private final OpenMural mural = SampleMural.open();
  private final Panel a = mural.mural().getPanels().get(0);
  private final Panel b = mural.mural().getPanels().get(1);

  private ModelProperties lines(Panel panel) {
    return (ModelProperties) PropertySources.of(mural, panel);
  }

  private Panel repeat() {
    mural.execute(RepeatedPanel.command(mural.mural(), a, true));
    return mural.mural().getPanels().get(4);
  }

  /** The choices of a line, as they read. */
  private List<String> choices(Panel panel, String id) {
    return new PanelLines(mural, panel).lines().stream().filter(line -> line.id().equals(id))
        .map(line -> List.of(line.choices())).findFirst().orElseThrow();
  }

  @Test
  void aRepeatHasOnlyLinesOfItsOwn() {
    Panel repeat = repeat();
    assertTrue(lines(repeat).ids().containsAll(List.of("repeats", "mirrored", "left", "bottom", "pieces")));
    assertFalse(lines(repeat).ids().contains("joint"));
    assertEquals(List.of("Panel A", "Panel B", "Panel C", "Panel D", "None, a layout of its own"),
        choices(repeat, "repeats"));
    assertEquals(0, lines(repeat).getPropertyValue("repeats"));
    assertEquals(1, lines(repeat).getPropertyValue("mirrored"));
  }

  @Test
  void aRepeatIsChangedByItsLines() {
    Panel repeat = repeat();
    lines(repeat).setPropertyValue("mirrored", 0);
    lines(repeat).setPropertyValue("left", "20 ft");
    lines(repeat).setPropertyValue("repeats", 1);
    RepeatedOutline outline = (RepeatedOutline) repeat.getOutline();
    assertEquals(List.of(false, 6096.0, b), List.of(outline.isMirrored(), outline.getX(), outline.getPanel()));
    lines(repeat).setPropertyValue("repeats", 0);
    lines(repeat).setPropertyValue("repeats", 4);
    assertInstanceOf(RectangleOutline.class, repeat.getOutline());
    assertTrue(lines(repeat).ids().contains("joint"));
  }

  @Test
  void aPanelCannotTakeFromItself() {
    Panel repeat = repeat();
    assertEquals(List.of("Balanced", "Given corner", "Grid of panel B", "Grid of panel C", "Grid of panel D",
        "Level with panel B", "Level with panel C", "Level with panel D"), choices(a, "origin"));
    assertTrue(choices(b, "origin").contains("Level with panel " + repeat.getId()));
    assertFalse(choices(b, "origin").contains("Grid of panel " + repeat.getId()));
  }

  @Test
  void aGridIsSharedByChoice() {
    lines(b).setPropertyValue("origin", 2);
    SharedOrigin origin = assertInstanceOf(SharedOrigin.class, b.getOrigin());
    assertSame(a, origin.getPanel());
    assertEquals(SharedLine.GRID, origin.getLine());
    assertEquals(2, lines(b).getPropertyValue("origin"));
    lines(b).setPropertyValue("origin", 0);
    assertInstanceOf(BalancedOrigin.class, b.getOrigin());
  }

  @Test
  void aGridThatDoesNotFitIsNotOffered() {
    b.setJoint(5);
    assertFalse(choices(b, "origin").contains("Grid of panel A"));
    assertTrue(choices(b, "origin").contains("Level with panel A"));
  }

  @Test
  void theGapToTheNextPanelIsTold() {
    String gap = String.valueOf(lines(a).getPropertyValue("gap"));
    assertTrue(gap.contains(" to panel B; courses "), gap);
    lines(b).setPropertyValue("origin", 2);
    gap = String.valueOf(lines(a).getPropertyValue("gap"));
    assertTrue(gap.matches(".* to panel B; [0-9.]+ modules; courses in line"), gap);
  }
}
