// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.svg;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import muralbench.base.InputException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * A path of an SVG drawing and where its user units lie on the wall: x is (x - left) scale and y is (bottom - y) scale,
 * mm.
 *
 * @param data path data as it stands in the drawing, y down
 * @param scale millimetres for one user unit
 * @param left user x that is 0 on the wall
 * @param bottom user y that is 0 on the wall
 */
public record SvgOutline(String data, BigDecimal scale, BigDecimal left, BigDecimal bottom) {
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final String NO_DOCTYPE = "http://apache.org/xml/features/disallow-doctype-decl";
  /** No more paths than this are counted. */
  private static final int MOST = 1000;
  /** What is drawn only where something refers to it. */
  private static final Set<String> NOT_DRAWN = Set.of("defs", "symbol", "clipPath", "mask", "pattern", "marker");

  /**
   * Finds the path.
   *
   * @param file content of the drawing
   * @param id the path's; null for the only one that is drawn
   * @param place JSON pointer of the field that names the drawing, for errors
   * @param name of the file, for errors
   */
  public static SvgOutline of(byte[] file, String id, String place, String name) throws InputException {
    SvgProblem problem = new SvgProblem(place, name);
    Element svg = parse(file, problem).getDocumentElement();
    if (!"svg".equals(svg.getLocalName()) || !SVG.equals(svg.getNamespaceURI())) {
      throw problem.of("root");
    }
    Element path = path(svg, id, problem);
    SvgPlace inside = SvgPlace.of(svg, problem).inside(path, problem);
    return new SvgOutline(path.getAttribute("d"), inside.scale(), inside.left(), inside.bottom());
  }

  private static Document parse(byte[] file, SvgProblem problem) throws InputException {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature(NO_DOCTYPE, true);
      factory.setNamespaceAware(true);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(null);
      return builder.parse(new ByteArrayInputStream(file));
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("the XML parser of this Java platform cannot be made safe", e);
    } catch (SAXException | IOException e) {
      // The parser says in no better way than its message that a DOCTYPE was what it did not like.
      boolean doctype = String.valueOf(e.getMessage()).contains("disallow-doctype-decl");
      int line = e instanceof SAXParseException at ? at.getLineNumber() : 1;
      throw doctype ? problem.of("doctype") : problem.of("damaged", "line", line);
    }
  }

  private static Element path(Element svg, String id, SvgProblem problem) throws InputException {
    List<Element> paths = new ArrayList<>();
    NodeList all = svg.getElementsByTagNameNS(SVG, "path");
    for (int i = 0; i < all.getLength() && paths.size() < MOST; i++) {
      Element path = (Element) all.item(i);
      if (id == null ? isDrawn(path) : path.getAttribute("id").equals(id)) {
        paths.add(path);
      }
    }
    if (paths.size() == 1) {
      return paths.get(0);
    }
    if (id != null) {
      throw paths.isEmpty() ? problem.of("id", "id", id, "ids", ids(all)) : problem.of("twice", "id", id);
    }
    throw paths.isEmpty() ? problem.of("none") : problem.of("several", "count", paths.size(), "ids", ids(all));
  }

  private static boolean isDrawn(Element path) {
    boolean drawn = true;
    for (Node node = path; node != null; node = node.getParentNode()) {
      drawn &= !NOT_DRAWN.contains(String.valueOf(node.getLocalName()));
    }
    return drawn;
  }

  /** Up to twenty. */
  private static String ids(NodeList paths) {
    List<String> ids = new ArrayList<>();
    for (int i = 0; i < paths.getLength() && ids.size() < 20; i++) {
      ids.add(((Element) paths.item(i)).getAttribute("id"));
    }
    return ids.stream().filter(id -> !id.isEmpty()).collect(Collectors.joining(", "));
  }
}
