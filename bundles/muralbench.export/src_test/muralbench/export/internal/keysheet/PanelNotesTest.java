// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import muralbench.base.Messages;
import muralbench.base.length.LengthUnit;
import muralbench.export.SampleMural;
import muralbench.export.internal.pdf.Lettering;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.TileSpec;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PanelNotesTest {
  /**
   * ANSI A108.02 §4.3.7 and §4.3.8, as quoted in trade letters: 1/32 in for joints under 1/4 in and the warpage on top; three
   * times the spread of facial size, which for 1/32 in is 3/32 in.
   */
  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "-1|No joint under 3/32 in. Lippage: edges of neighbouring tiles at most 1/32 in and the actual warpage of the tile apart "
        + "in height.",
    "0.79375|No joint under 3/32 in. Lippage: edges of neighbouring tiles at most 1/16 in apart in height (1/32 in and the "
        + "warpage of the tile)."})
  void jointAndLippageFollowTheTile(double warpage, String note) throws Exception {
    PanelSetOut sample = SampleMural.panel("A");
    TileSpec tile = new TileSpec("T6", SampleMural.TILE, SampleMural.TILE, 9.525, 0.79375, 0.3)
        .withClass("rectified", warpage);
    PanelSpec old = sample.spec();
    PanelSpec spec = new PanelSpec(old.id(), old.title(), old.surface(), old.mounting(), tile, old.joint(), old.edgeGap(),
        old.outline(), old.openings(), old.bond(), old.origin());
    PanelSetOut panel = new PanelSetOut(spec, sample.origin(), sample.area(), sample.tiled(), sample.pieces());
    try (Lettering lettering = Lettering.open()) {
      PanelFacts facts = PanelFacts.of(panel, new KeyLetters(lettering));
      List<String> notes = new PanelNotes(Messages.of(PanelNotes.class), LengthUnit.INCH).of(facts, facts.box(), 1);
      assertEquals(1, notes.stream().filter(note::equals).count(), notes.toString());
    }
  }
}
