// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Path2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.export.Paper;
import muralbench.export.internal.pdf.Hatching;
import muralbench.export.internal.pdf.Placing;
import muralbench.export.internal.pdf.ReadSheet;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.PieceKind;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Vec;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Compares what is drawn with the set-out. */
class DrawnWorkTest {
  @TempDir
  Path folder;

  private List<ReadSheet.Path> paths(PanelSetOut panel, int page) throws InputException, IOException {
    try (PDDocument document = PrintedSheets.printed(folder, Paper.LETTER, LengthUnit.INCH, panel)) {
      return ReadSheet.paths(document.getPage(page));
    }
  }

  private static SheetPlan onlySheet(PanelSetOut panel) throws InputException, IOException {
    return PrintedSheets.plan(panel, Paper.LETTER, LengthUnit.INCH).sheets().get(0);
  }

  /** Lines at 45 degrees in the elevation; below it are those of the legend. */
  private static List<Line> hatching(List<ReadSheet.Path> paths, SheetPlan sheet) {
    List<Line> lines = new ArrayList<>();
    for (ReadSheet.Path path : paths) {
      boolean thin = !path.filled() && path.width() < 0.2 && path.curves() == 0;
      for (int i = 0; thin && i + 1 < path.points().size(); i += 2) {
        Line line = new Line(path.points().get(i), path.points().get(i + 1));
        Vec way = line.end().minus(line.start());
        if (Math.abs(way.x() - way.y()) < 1e-3 && way.x() > 0.01 && sheet.shown().grown(1).holds(line.box())) {
          lines.add(line);
        }
      }
    }
    return lines;
  }

  private static Path2D onPaper(Piece piece, Placing placing) {
    Path2D shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    List<Contour> edges = new ArrayList<>(List.of(piece.outline()));
    edges.addAll(piece.holes());
    for (Contour edge : edges) {
      List<Vec> points = placing.of(edge).points(0.01);
      shape.moveTo(points.get(0).x(), points.get(0).y());
      points.forEach(point -> shape.lineTo(point.x(), point.y()));
      shape.closePath();
    }
    return shape;
  }

  @Test
  void everyHatchLineLiesInACutPiece() throws Exception {
    PanelSetOut panel = TrialWalls.splash();
    SheetPlan sheet = onlySheet(panel);
    List<Path2D> cuts = panel.pieces().stream().filter(piece -> piece.kind() != PieceKind.WHOLE)
        .map(piece -> onPaper(piece, sheet.placing())).toList();
    List<Line> lines = hatching(paths(panel, 1), sheet);
    assertTrue(lines.size() > 100, "hatching is there");
    for (Line line : lines) {
      assertTrue(cuts.stream().anyMatch(cut -> cut.contains(line.at(0.5).x(), line.at(0.5).y())), line.toString());
    }
  }

  @Test
  void everyCutPieceIsHatched() throws Exception {
    PanelSetOut panel = TrialWalls.splash();
    SheetPlan sheet = onlySheet(panel);
    List<Line> lines = hatching(paths(panel, 1), sheet);
    for (Piece piece : panel.pieces()) {
      Path2D shape = onPaper(piece, sheet.placing());
      long inside = lines.stream().filter(line -> shape.contains(line.at(0.5).x(), line.at(0.5).y())).count();
      assertEquals(piece.kind() != PieceKind.WHOLE, inside > 3, piece.key() + ": " + inside);
    }
  }

  @Test
  void hatchingSurvivesAPhotocopier() throws Exception {
    PanelSetOut panel = TrialWalls.splash();
    for (ReadSheet.Path path : paths(panel, 1)) {
      assertTrue(path.filled() || path.width() > 0.179, "line of " + path.width() + " mm");
    }
    assertTrue(Hatching.CUT.spacing() >= 1.2);
  }

  @Test
  void keysStandInTheirPiecesOrHaveALeader() throws Exception {
    for (PanelSetOut panel : List.of(TrialWalls.splash(), TrialWalls.slivers(), TrialWalls.facade())) {
      PanelPlan plan = PrintedSheets.plan(panel, Paper.LETTER, LengthUnit.INCH);
      for (SheetPlan sheet : plan.sheets()) {
        for (Label label : sheet.keys()) {
          Piece piece = panel.pieces().stream().filter(p -> p.key().equals(label.text())).findFirst().orElseThrow();
          Path2D shape = onPaper(piece, sheet.placing());
          boolean inside = shape.contains(label.box().minX(), label.box().minY(), label.box().width(),
              label.box().height());
          boolean led = label.leader().filter(line -> shape.contains(line.start().x(), line.start().y())).isPresent();
          assertTrue(inside != led, label.toString());
        }
      }
    }
  }

  @Test
  void plannedKeysArePrintedWhereTheyWerePlanned() throws Exception {
    PanelSetOut panel = TrialWalls.slivers();
    SheetPlan sheet = onlySheet(panel);
    try (PDDocument document = PrintedSheets.printed(folder, Paper.LETTER, LengthUnit.INCH, panel)) {
      for (ReadSheet.Text text : PrintedSheets.keyTexts(document, 1)) {
        Label label = sheet.keys().stream().filter(key -> key.text().equals(text.text())).findFirst().orElseThrow();
        assertEquals(0, label.box().centre().distance(text.box().centre()), 0.1, text.text());
      }
    }
  }

  @Test
  void partsOfAPanelMeetAtMatchLinesThatNameEachOther() throws Exception {
    try (PDDocument document =
        PrintedSheets.printed(folder, Paper.LETTER, LengthUnit.INCH, TrialWalls.facade())) {
      List<List<String>> texts = new ArrayList<>();
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        texts.add(ReadSheet.texts(document, page).stream().map(ReadSheet.Text::text).toList());
      }
      for (int page = 1; page < texts.size(); page++) {
        List<Integer> named = neighbours(texts.get(page));
        assertTrue(named.size() >= 2, "sheet " + (page + 1) + " names " + named);
        for (int other : named) {
          assertTrue(neighbours(texts.get(other - 1)).contains(page + 1));
        }
      }
    }
  }

  private static List<Integer> neighbours(List<String> texts) {
    String start = "match line; continues on sheet ";
    return texts.stream().filter(text -> text.startsWith(start))
        .map(text -> Integer.valueOf(text.substring(start.length()))).toList();
  }

  @Test
  void runningDimensionsStandAtTheirExactPlaces() throws Exception {
    PanelSetOut panel = TrialWalls.splash();
    Placing placing = onlySheet(panel).placing();
    double datum = FirstTile.of(panel).datum().x();
    try (PDDocument document = PrintedSheets.printed(folder, Paper.LETTER, LengthUnit.INCH, panel)) {
      List<ReadSheet.Text> texts = ReadSheet.texts(document, 1).stream().filter(ReadSheet.Text::upwards).toList();
      for (int tile : IntStream.rangeClosed(-4, 6).toArray()) {
        double exact = tile * 6.125;
        String shown = sixteenths(Math.abs(exact));
        double x = placing.x(datum + exact * 25.4);
        assertTrue(texts.stream().anyMatch(text -> text.text().equals(shown)
            && Math.abs(text.box().centre().x() - x) < 1.5), shown + " at " + x);
      }
    }
  }

  /** Inches to sixteenths, worked out here once more. */
  private static String sixteenths(double inches) {
    int steps = (int) Math.floor(inches * 16 + 0.5);
    int part = steps % 16;
    int below = 16;
    while (part != 0 && part % 2 == 0) {
      part /= 2;
      below /= 2;
    }
    String fraction = part + "/" + below;
    return part == 0 ? Integer.toString(steps / 16) : steps < 16 ? fraction : steps / 16 + "-" + fraction;
  }
}
