// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.svg;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.export.internal.LabelSpot;
import muralbench.export.internal.PlainNumber;
import muralbench.export.internal.PrintableText;
import muralbench.setout.MuralSpec;
import muralbench.setout.OpeningSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;

/**
 * One panel as SVG 1.1 in real size: one unit is one millimetre, x from the left, y the height above finished floor
 * with its sign changed. The picture is as large as the panel's outline. Pieces are paths with their key as id and
 * their kind as class, so that a style sheet can colour them; the keys stand in them as text.
 */
final class PanelDrawing {
  private static final Messages TEXT = Messages.of(PanelDrawing.class);
  private static final String NAMESPACE = "http://www.w3.org/2000/svg";
  private static final double LARGEST_KEY = 14;
  private static final double ROOM_FILLED = 0.7;
  /** Width of a character of the key as a share of the font size, on the safe side for sans-serif digits. */
  private static final double CHARACTER = 0.62;
  /** Height of digits and capitals as a share of the font size. */
  private static final double CAPITAL = 0.72;
  private static final String STYLE = """

      .outline { fill: #fff; stroke: #000; stroke-width: 1.5 }
      .openings path { fill: none; stroke: #000; stroke-width: 1; stroke-dasharray: 6 3 }
      .pieces path { fill: #fff; stroke: #000; stroke-width: 0.5; stroke-linejoin: round; fill-rule: evenodd }
      .pieces .trimmed { fill: #e8e8e8 }
      .pieces .notched { fill: #d8d8d8 }
      .pieces .curved { fill: #c8c8c8 }
      .pieces .pierced { fill: #dcdcdc }
      .keys text { font-family: sans-serif; text-anchor: middle; fill: #000 }
      """;

  private final XMLStreamWriter xml;
  private final PanelSetOut panel;

  private PanelDrawing(XMLStreamWriter xml, PanelSetOut panel) {
    this.xml = xml;
    this.panel = panel;
  }

  /** Writes the drawing as UTF-8 and leaves the stream open. */
  static void write(MuralSpec mural, PanelSetOut panel, OutputStream out) throws IOException {
    try {
      XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, "UTF-8");
      new PanelDrawing(xml, panel).document(mural);
      xml.close();
    } catch (XMLStreamException e) {
      throw new IOException(e.getMessage(), e);
    }
  }

  private void document(MuralSpec mural) throws XMLStreamException {
    Box box = panel.spec().outline().box();
    String width = SvgPath.number(box.width());
    String height = SvgPath.number(box.height());
    xml.writeStartDocument("UTF-8", "1.0");
    xml.writeCharacters("\n");
    xml.writeStartElement("svg");
    xml.writeDefaultNamespace(NAMESPACE);
    attributes("version", "1.1", "width", width + "mm", "height", height + "mm", "viewBox",
        SvgPath.number(box.minX()) + ' ' + SvgPath.number(-box.maxY()) + ' ' + width + ' ' + height);
    text("title", title());
    text("desc", description(mural, box));
    xml.writeStartElement("style");
    attributes("type", "text/css");
    xml.writeCharacters(STYLE);
    xml.writeEndElement();
    path("outline", panel.spec().outline(), List.of());
    pieces();
    openings();
    keys();
    xml.writeCharacters("\n");
    xml.writeEndElement();
    xml.writeCharacters("\n");
    xml.writeEndDocument();
  }

  private String title() {
    return panel.spec().title().isBlank() ? panel.spec().id() : panel.spec().id() + ' ' + panel.spec().title();
  }

  private String description(MuralSpec mural, Box box) {
    return TEXT.text("panel.description", "title", mural.title(), "id", panel.spec().id(),
        "width", LengthText.shown(box.width(), mural.units()), "height", LengthText.shown(box.height(), mural.units()),
        "pieces", panel.pieces().size());
  }

  private void pieces() throws XMLStreamException {
    group("pieces");
    for (Piece piece : panel.pieces()) {
      element("path");
      attributes("id", XmlId.of(piece.key()), "class", piece.kind().word(),
          "d", SvgPath.of(piece.outline(), piece.holes()));
      xml.writeEndElement();
    }
    xml.writeEndElement();
  }

  private void openings() throws XMLStreamException {
    group("openings");
    for (OpeningSpec opening : panel.spec().openings()) {
      element("path");
      attributes("d", SvgPath.of(opening.outline(), List.of()));
      text("title", opening.id() + ' ' + opening.kind());
      xml.writeEndElement();
    }
    xml.writeEndElement();
  }

  private void keys() throws XMLStreamException {
    group("keys");
    for (Piece piece : panel.pieces()) {
      key(piece);
    }
    xml.writeEndElement();
  }

  private void key(Piece piece) throws XMLStreamException {
    double proportion = piece.key().length() * CHARACTER / CAPITAL;
    double enough = LARGEST_KEY * CAPITAL / ROOM_FILLED;
    LabelSpot spot = LabelSpot.roomy(piece.outline(), piece.holes(), proportion, enough);
    double size = spot.height() * ROOM_FILLED / CAPITAL;
    element("text");
    attributes("x", PlainNumber.rounded(spot.middle().x(), 3),
        "y", PlainNumber.rounded(-spot.middle().y() + size * CAPITAL / 2, 3),
        "font-size", PlainNumber.rounded(Math.max(size, 0.1), 2));
    xml.writeCharacters(PrintableText.of(piece.key()));
    xml.writeEndElement();
  }

  private void path(String style, Contour contour, List<Contour> holes) throws XMLStreamException {
    element("path");
    attributes("class", style, "d", SvgPath.of(contour, holes));
    xml.writeEndElement();
  }

  private void group(String style) throws XMLStreamException {
    element("g");
    attributes("class", style);
  }

  private void text(String name, String content) throws XMLStreamException {
    element(name);
    xml.writeCharacters(PrintableText.of(content));
    xml.writeEndElement();
  }

  private void element(String name) throws XMLStreamException {
    xml.writeCharacters("\n");
    xml.writeStartElement(name);
  }

  private void attributes(String... namesAndValues) throws XMLStreamException {
    for (int i = 0; i < namesAndValues.length; i += 2) {
      xml.writeAttribute(namesAndValues[i], namesAndValues[i + 1]);
    }
  }
}
