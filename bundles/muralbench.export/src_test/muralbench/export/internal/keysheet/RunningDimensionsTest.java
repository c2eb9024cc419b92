// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import muralbench.base.length.LengthUnit;
import muralbench.export.internal.pdf.Lettering;
import muralbench.setout.OpeningSpec;
import muralbench.setout.geometry.Box;
import org.junit.jupiter.api.Test;

class RunningDimensionsTest {
  @Test
  void everyValueIsRoundedFromItsOwnExactDistance() {
    // Ten steps of 100.3 mm: rounding each step to 0.5 mm and adding up would end at 1005.
    List<Double> places = IntStream.rangeClosed(0, 10).mapToObj(i -> i * 100.3).toList();
    List<String> texts = new RunningDimensions(0, places).marks(-1, 2000, LengthUnit.MILLIMETRE).stream()
        .map(RunningDimensions.Mark::text).toList();
    assertEquals(List.of("0", "100.5", "200.5", "301", "401", "501.5", "602", "702", "802.5", "902.5", "1003"), texts);
  }

  @Test
  void distancesCountFromTheDatumToBothSides() {
    List<String> texts = new RunningDimensions(100, List.of(50.0, 150.0)).marks(0, 200, LengthUnit.MILLIMETRE).stream()
        .map(RunningDimensions.Mark::text).toList();
    assertEquals(List.of("50", "0", "50"), texts);
  }

  @Test
  void onlyWhatShowsIsDimensioned() {
    assertEquals(2, new RunningDimensions(0, List.of(10.0, 20.0, 30.0)).marks(5, 25, LengthUnit.MILLIMETRE).size());
  }

  @Test
  void roomyTextsStayWhereTheyAre() {
    assertArrayEquals(new double[] {0, 5, 11}, RunningDimensions.spread(new double[] {0, 5, 11}, 3));
  }

  @Test
  void crowdedTextsAreMovedApartInOrder() {
    double[] placed = RunningDimensions.spread(new double[] {0, 1, 1.5, 10, 11, 30}, 3);
    for (int i = 1; i < placed.length; i++) {
      assertTrue(placed[i] - placed[i - 1] >= 3 - 1e-9, "texts " + i);
    }
    assertEquals(30, placed[5]);
  }

  @Test
  void ringsAreDimensionedByTheirRadiiOnBothSides() throws Exception {
    try (Lettering lettering = Lettering.open()) {
      PanelFacts facts = PanelFacts.of(TrialWalls.rings(), new KeyLetters(lettering));
      List<String> radii = List.of("24", "20-1/4", "16-1/2", "12-3/4", "9", "5-1/4", "1-1/2");
      List<String> shown = RunningDimensions.across(facts).marks(0, 1e5, LengthUnit.INCH).stream()
          .map(RunningDimensions.Mark::text).toList();
      assertEquals(radii, shown.subList(0, 7));
      assertEquals("0", shown.get(7));
      assertEquals(shown, RunningDimensions.up(facts).marks(0, 1e5, LengthUnit.INCH).stream()
          .map(RunningDimensions.Mark::text).toList());
      assertEquals(15, shown.size());
    }
  }

  @Test
  void edgesOfOpeningsAreDimensioned() throws Exception {
    try (Lettering lettering = Lettering.open()) {
      PanelFacts facts = PanelFacts.of(TrialWalls.splash(), new KeyLetters(lettering));
      List<OpeningSpec> openings = facts.panel().spec().openings();
      RunningDimensions across = RunningDimensions.across(facts);
      RunningDimensions up = RunningDimensions.up(facts).withHeights(openings, facts.box());
      assertTrue(across.withSides(openings, facts.box()).places().containsAll(List.of(20 * 25.4, 22.25 * 25.4)));
      assertTrue(up.places().contains(45.5 * 25.4));
      assertEquals(across, across.withSides(openings, new Box(0, 0, 100, 100)));
    }
  }
}
