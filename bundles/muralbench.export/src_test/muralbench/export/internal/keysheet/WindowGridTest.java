// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import muralbench.setout.geometry.Box;
import org.junit.jupiter.api.Test;

class WindowGridTest {
  private static final Box PANEL = new Box(0, 0, 1000, 300);

  @Test
  void whatFitsStaysWhole() {
    assertEquals(1, WindowGrid.of(PANEL, 1000, 300, List.of(), List.of()).count());
  }

  @Test
  void withoutJointsThePartsAreEven() {
    assertEquals(List.of(0.0, 500.0, 1000.0), WindowGrid.of(PANEL, 600, 300, List.of(), List.of()).across());
  }

  @Test
  void partsMeetAtTheJointNearestToEven() {
    assertEquals(List.of(0.0, 470.0, 1000.0),
        WindowGrid.of(PANEL, 600, 300, List.of(300.0, 470.0, 560.0), List.of()).across());
  }

  @Test
  void jointsThatWouldMakeAPartTooLargeAreLeft() {
    assertEquals(List.of(0.0, 500.0, 1000.0), WindowGrid.of(PANEL, 510, 300, List.of(480.0), List.of()).across());
  }

  @Test
  void everyPlaceHasAWindow() {
    WindowGrid grid = WindowGrid.of(PANEL, 600, 200, List.of(), List.of());
    assertEquals(0, grid.column(-5));
    assertEquals(1, grid.column(500));
    assertEquals(1, grid.column(1000));
    assertEquals(1, grid.row(299));
  }
}
