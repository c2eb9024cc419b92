// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.file.OutputFolder;
import muralbench.base.length.LengthUnit;
import muralbench.export.Paper;
import muralbench.export.internal.pdf.Lettering;
import muralbench.export.internal.pdf.ReadSheet;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Prints murals and finds keys in what was printed. */
final class PrintedSheets {
  private static final Pattern KEY = Pattern.compile("[A-Z]-\\d{2,3}-\\d{2,3}[a-z]*");

  private PrintedSheets() {}

  static Path print(Path folder, MuralSetOut mural, Paper paper, Progress progress) throws InputException, IOException {
    try (OutputFolder output = OutputFolder.open(folder)) {
      new KeySheetExporter().export(TrialWalls.context(mural, paper), output, progress);
      return output.commit().get(0);
    }
  }

  static PDDocument printed(Path folder, Paper paper, LengthUnit units, PanelSetOut... panels)
      throws InputException, IOException {
    Path file = print(folder, TrialWalls.mural(units, panels), paper, Progress.NONE);
    return Loader.loadPDF(Files.readAllBytes(file));
  }

  static PanelPlan plan(PanelSetOut panel, Paper paper, LengthUnit units) throws InputException, IOException {
    try (Lettering lettering = Lettering.open()) {
      return new PanelPlanner(new KeyLetters(lettering), units, PanelPlanner.MOST_SHEETS).plan(panel, paper);
    }
  }

  /** The keys in a text, in rising order, as often as they stand there. */
  static List<String> keys(String text) {
    List<String> keys = new ArrayList<>();
    Matcher matcher = KEY.matcher(text);
    while (matcher.find()) {
      keys.add(matcher.group());
    }
    keys.sort(null);
    return keys;
  }

  /** The keys that ought to be there. */
  static List<String> keys(PanelSetOut... panels) {
    return List.of(panels).stream().flatMap(panel -> panel.pieces().stream()).map(piece -> piece.key()).sorted()
        .toList();
  }

  /** The texts of a sheet that are keys. */
  static List<ReadSheet.Text> keyTexts(PDDocument document, int page) throws IOException {
    return ReadSheet.texts(document, page).stream().filter(text -> KEY.matcher(text.text()).matches()).toList();
  }
}
