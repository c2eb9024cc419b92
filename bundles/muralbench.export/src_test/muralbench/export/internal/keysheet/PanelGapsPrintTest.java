// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.export.Paper;
import muralbench.export.internal.pdf.ReadSheet;
import muralbench.setout.MuralSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import muralbench.setout.bond.BondRegistry;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first sheet tells the gaps between panels. */
class PanelGapsPrintTest {
  @TempDir
  Path folder;

  private static PanelSetOut panel(String id, double x, double width) throws Exception {
    return TrialWalls.grid(id, "", TrialWalls.rectangle(x, 36, width, 48));
  }

  private List<String> texts(PanelSetOut... panels) throws Exception {
    try (PDDocument document = PrintedSheets.printed(folder, Paper.LETTER, LengthUnit.INCH, panels)) {
      return ReadSheet.texts(document, 0).stream().map(ReadSheet.Text::text).toList();
    }
  }

  @Test
  void gapsAreDimensionedWhateverTheirWidth() throws Exception {
    List<String> texts = texts(panel("A", 0, 60), panel("B", 90.5, 40), panel("C", 136.25, 40), panel("D", 178, 40));
    assertEquals(3, texts.stream().filter(List.of("30-1/2 in", "5-3/4 in", "1-3/4 in")::contains).count(),
        texts.toString());
  }

  @Test
  void panelsThatTouchOrStandAboveEachOtherHaveNone() throws Exception {
    List<String> texts = texts(panel("A", 0, 60), panel("B", 60, 40),
        TrialWalls.grid("C", "", TrialWalls.rectangle(0, 100, 60, 40)));
    assertFalse(texts.contains("0 in"), texts.toString());
  }

  /** 24-1/2 in are four modules of 6-1/8 in. */
  @Test
  void aGridThatRunsOnIsToldInModules() throws Exception {
    OriginSpec start = new OriginSpec.Balanced();
    List<PanelSpec> both = List.of(panel("A", 0, 60).spec(), panel("B", 84.5, 40).spec());
    MuralSpec mural = TrialWalls.mural(LengthUnit.INCH, panel("A", 0, 60)).spec();
    MuralSpec shared = new MuralSpec(mural.title(), mural.client(), mural.revision(), mural.units(), mural.exposure(),
        both.stream().map(panel -> panel.withOrigin(new OriginSpec.Shared(start, both))).toList());
    List<PanelSetOut> laid = SetOut.mural(shared, BondRegistry.standard(), Progress.NONE).panels();
    try (PDDocument document = PrintedSheets.printed(folder, Paper.LETTER, LengthUnit.INCH, laid.get(0), laid.get(1))) {
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      assertTrue(text.contains("One grid runs on behind these gaps: A to B, 4 modules of tile and joint."), text);
    }
  }
}
