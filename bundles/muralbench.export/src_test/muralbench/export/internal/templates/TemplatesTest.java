// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.templates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import muralbench.base.Progress;
import muralbench.base.file.OutputFolder;
import muralbench.base.length.LengthUnit;
import muralbench.export.ExportContext;
import muralbench.export.Paper;
import muralbench.export.internal.templates.TemplatePlan.Part;
import muralbench.setout.BondSpec;
import muralbench.setout.MuralSetOut;
import muralbench.setout.MuralSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.cut.CutList;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TemplatesTest {
  private static final Box LETTER = new Box(20, 47, 205, 269);

  @TempDir
  Path folder;

  private static MuralSetOut rings(double tile, String widths, double radius) throws Exception {
    BondSpec bond = new BondSpec("rings", 0, 0, Map.of("radius", radius + " mm", "rings", widths));
    PanelSpec panel = new PanelSpec("R", "Hours", "wall", "fixed", new TileSpec("T", tile, tile, 9, 0, -1), 3, 0,
        Contour.circle(new Vec(1000, 1000), radius), List.of(), bond, new OriginSpec.Balanced());
    PanelSetOut laid = SetOut.panel(panel, BondRegistry.standard(), Progress.NONE);
    return new MuralSetOut(
        new MuralSpec("Hours", "", "A", LengthUnit.MILLIMETRE, "interior-dry", List.of(panel)), List.of(laid));
  }

  private List<String> pages(MuralSetOut mural) throws Exception {
    ExportContext context = new ExportContext(mural, List.of(), Paper.A4, LocalDate.of(2026, 3, 14));
    try (OutputFolder output = OutputFolder.open(folder)) {
      new TemplateExporter().export(context, output, Progress.NONE);
      output.commit();
    }
    List<String> pages = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(folder.resolve("templates.pdf").toFile())) {
      PDFTextStripper text = new PDFTextStripper();
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        text.setStartPage(page);
        text.setEndPage(page);
        pages.add(text.getText(document));
      }
    }
    return pages;
  }

  @Test
  void everyRingHasATemplateOfItsWedgeAndTheDiscOne() throws Exception {
    String all = String.join("\n", pages(rings(150, "140, 140", 330)));
    assertTrue(all.contains("Cut 1: 1 piece"), all);
    assertTrue(all.contains("Cut 2: ") && all.contains("Cut 3: "), all);
    assertFalse(all.contains("Cut 4: "), all);
  }

  @Test
  void aMuralOfStraightCutsSaysThatItNeedsNone() throws Exception {
    PanelSpec panel = new PanelSpec("S", "", "wall", "fixed", new TileSpec("T", 150, 150, 9, 0, -1), 3, 0,
        Contour.rectangle(0, 0, 1000, 700), List.of(), BondSpec.grid(), new OriginSpec.Balanced());
    MuralSetOut mural = new MuralSetOut(
        new MuralSpec("S", "", "A", LengthUnit.MILLIMETRE, "interior-dry", List.of(panel)),
        List.of(SetOut.panel(panel, BondRegistry.standard(), Progress.NONE)));
    List<String> pages = pages(mural);
    assertEquals(1, pages.size());
    assertTrue(pages.get(0).contains("No piece of this mural has a curved cut."), pages.get(0));
  }

  @Test
  void templatesOfOneSheetKeepApartAndOnIt() throws Exception {
    List<Part> parts = TemplatePlan.of(CutList.of(rings(150, "140, 140, 140, 140, 140", 780)), LETTER);
    for (Part one : parts) {
      assertTrue(LETTER.grown(1e-9).holds(one.place()), one.place().toString());
      for (Part other : parts) {
        assertTrue(one == other || one.sheet() != other.sheet() || !one.place().meets(other.place()));
      }
    }
  }

  @Test
  void aTemplateLargerThanTheSheetIsDividedWithOverlaps() throws Exception {
    List<CutGroup> groups = CutList.of(rings(400, "380", 600));
    CutGroup large = groups.stream().max((a, b) -> Double.compare(a.area(), b.area())).orElseThrow();
    List<Part> parts = TemplatePlan.of(List.of(large), LETTER);
    assertTrue(parts.size() > 1);
    Box covered = parts.stream().map(Part::shown).reduce(Box::and).orElseThrow();
    assertEquals(TemplatePlan.around(large), covered);
    double shown = parts.stream().mapToDouble(part -> part.shown().width() * part.shown().height()).sum();
    assertTrue(shown > covered.width() * covered.height(), "the parts overlap");
    assertEquals(parts.size(), parts.stream().mapToInt(Part::sheet).distinct().count());
  }
}
