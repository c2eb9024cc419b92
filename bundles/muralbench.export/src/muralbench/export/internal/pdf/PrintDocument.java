// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.TimeZone;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.PDPageLabelRange;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * A printed document in the making. The same drawing with the same title and date gives the same bytes. Fonts are
 * embedded, as far as they are used.
 */
public final class PrintDocument implements AutoCloseable {
  private static final double POINTS = 72 / 25.4;

  private final PDDocument document = new PDDocument();
  private final PDDocumentOutline outline = new PDDocumentOutline();
  private final PDPageLabels labels = new PDPageLabels(document);
  private final Lettering lettering;
  private final PDFont plain;
  private final PDFont bold;
  private PDOutlineItem chapter;
  private Canvas canvas;

  /**
   * An empty document.
   *
   * @param title shown by readers of the file
   * @param subject one sentence on what it is for
   * @param date kept as the date of making
   * @param lettering stays open until the document is closed
   */
  public PrintDocument(String title, String subject, LocalDate date, Lettering lettering) throws IOException {
    this.lettering = lettering;
    plain = PDType0Font.load(document, lettering.font(false), true);
    bold = PDType0Font.load(document, lettering.font(true), true);
    document.setVersion(1.7f);
    PDDocumentInformation about = document.getDocumentInformation();
    about.setTitle(title);
    about.setSubject(subject);
    about.setCreator("Muralbench");
    about.setProducer("Muralbench");
    about.setCreationDate(noon(date));
    about.setModificationDate(noon(date));
    document.setDocumentId(seed(title, subject, date));
    document.getDocumentCatalog().setLanguage("en");
    document.getDocumentCatalog().setDocumentOutline(outline);
    document.getDocumentCatalog().setPageMode(PageMode.USE_OUTLINES);
    document.getDocumentCatalog().setPageLabels(labels);
    PDViewerPreferences preferences = new PDViewerPreferences(document.getDocumentCatalog().getCOSObject());
    preferences.setDisplayDocTitle(true);
    // A sheet shrunk to fit the printer is no longer to scale.
    preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    document.getDocumentCatalog().setViewerPreferences(preferences);
  }

  private static GregorianCalendar noon(LocalDate date) {
    GregorianCalendar noon = GregorianCalendar.from(date.atTime(12, 0).atZone(ZoneOffset.UTC));
    noon.setTimeZone(TimeZone.getTimeZone("UTC"));
    return noon;
  }

  private static long seed(String title, String subject, LocalDate date) {
    CRC32 sum = new CRC32();
    sum.update((title + '\n' + subject + '\n' + date).getBytes(StandardCharsets.UTF_8));
    return sum.getValue();
  }

  /**
   * Starts the next sheet; the one before is finished.
   *
   * @param label what readers show for the page number
   */
  public Canvas sheet(SheetSize size, String label) throws IOException {
    finishSheet();
    PDRectangle box = new PDRectangle((float) (size.width() * POINTS), (float) (size.height() * POINTS));
    PDPage page = new PDPage(box);
    document.addPage(page);
    PDPageLabelRange range = new PDPageLabelRange();
    range.setPrefix(label);
    labels.setLabelItem(document.getNumberOfPages() - 1, range);
    PDPageContentStream out = new PDPageContentStream(document, page);
    canvas = new Canvas(size, lettering, plain, bold, out);
    return canvas;
  }

  /** Adds a bookmark of the first order that leads to the current sheet. */
  public void chapter(String title) {
    chapter = bookmark(title);
    outline.addLast(chapter);
  }

  /** Adds a bookmark below the latest chapter that leads to the current sheet. */
  public void section(String title) {
    chapter.addLast(bookmark(title));
  }

  private PDOutlineItem bookmark(String title) {
    PDPageFitDestination place = new PDPageFitDestination();
    place.setPage(document.getPage(document.getNumberOfPages() - 1));
    PDOutlineItem item = new PDOutlineItem();
    item.setTitle(title);
    item.setDestination(place);
    return item;
  }

  /** Writes the document; nothing can be added afterwards. The stream stays open. */
  public void save(OutputStream out) throws IOException {
    finishSheet();
    document.save(out);
  }

  private void finishSheet() throws IOException {
    if (canvas != null) {
      canvas.close();
      canvas = null;
    }
  }

  @Override
  public void close() throws IOException {
    finishSheet();
    document.close();
  }
}
