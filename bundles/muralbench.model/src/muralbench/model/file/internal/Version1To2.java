// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import muralbench.base.InputException;
import muralbench.model.MuralPackage;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * Version 1 to 2: the joint width of the mural goes to each of its panels, the exposure to a site, and the texts for
 * bond, origin and floor of a panel become a bond, an origin and a surface.
 */
final class Version1To2 implements Migration {
  private static final String NUMBER = "-?[0-9]+(?:\\.[0-9]+)?";

  /** {@code grid}, {@code running 1/2}, either with {@code turned 45} after it. */
  private static final Pattern BOND =
      Pattern.compile("(?:grid|running ([0-9]{1,9})/([1-9][0-9]{0,8}))(?: turned (" + NUMBER + "))?");

  /** {@code balanced}, or x and y in millimetres. */
  private static final Pattern ORIGIN = Pattern.compile("balanced|(" + NUMBER + ") (" + NUMBER + ")");

  /** Attributes, elements and kinds of elements that came with version 2; those still unknown to it are refused later. */
  private static final Set<String> LATER_FIELDS = Set.of("joint", "edgeGap", "surface", "movementByRule");
  private static final Set<String> LATER_PARTS = 
      Set.of("site", "bond", "origin", "settings", "books", "works", "movementJoints");
  private static final Set<String> LATER_TYPES =
      Set.of("BalancedOrigin", "FixedOrigin", "SharedOrigin", "MeasuredOutline", "LevelLineOutline", "RepeatedOutline");

  @Override
  public int from() {
    return 1;
  }

  @Override
  public void migrate(Document document, FileProblem problem) throws InputException {
    Element mural = document.getDocumentElement();
    refuseLater(mural, problem);
    Element site = child(mural, "site");
    move(mural, "exposure", site, "exposure");
    String joint = take(mural, "jointWidth", "0");
    for (Element panel : children(mural, "panels")) {
      panel.setAttribute("joint", joint);
      if (take(panel, "floor", "false").equals("true")) {
        panel.setAttribute("surface", "floor");
      }
      addBond(panel, problem);
      addOrigin(panel, problem);
    }
  }

  /** Another version's content under the number 1 would lose what it says: joints, bonds and origins. */
  private static void refuseLater(Element element, FileProblem problem) throws InputException {
    NamedNodeMap attributes = element.getAttributes();
    for (int i = 0; i < attributes.getLength(); i++) {
      Attr attribute = (Attr) attributes.item(i);
      boolean own = attribute.getNamespaceURI() == null;
      if (own && LATER_FIELDS.contains(attribute.getName())) {
        throw problem.of("later", "name", attribute.getName());
      }
      if (!own && LATER_TYPES.contains(attribute.getValue().substring(attribute.getValue().indexOf(':') + 1))) {
        throw problem.of("later", "name", attribute.getValue());
      }
    }
    for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element child) {
        if (LATER_PARTS.contains(child.getNodeName())) {
          throw problem.of("later", "name", child.getNodeName());
        }
        refuseLater(child, problem);
      }
    }
  }

  private static void addBond(Element panel, FileProblem problem) throws InputException {
    Matcher text = matcher(BOND, panel, "bond", "grid", problem);
    Element bond = child(panel, "bond");
    bond.setAttribute("kind", "grid");
    if (text.group(1) != null) {
      double offset = Double.parseDouble(text.group(1)) / Double.parseDouble(text.group(2));
      bond.setAttribute("offset", Double.toString(offset));
    }
    if (text.group(3) != null) {
      bond.setAttribute("rotation", text.group(3));
    }
  }

  private static void addOrigin(Element panel, FileProblem problem) throws InputException {
    Matcher text = matcher(ORIGIN, panel, "origin", "balanced", problem);
    Element origin = child(panel, "origin");
    boolean balanced = text.group(1) == null;
    String prefix = panel.lookupPrefix(MuralPackage.eNS_URI);
    String type = balanced ? "BalancedOrigin" : "FixedOrigin";
    origin.setAttributeNS(XMLConstants.W3C_XML_SCHEMA_INSTANCE_NS_URI, "xsi:type",
        prefix == null ? type : prefix + ":" + type);
    if (!balanced) {
      origin.setAttribute("x", text.group(1));
      origin.setAttribute("y", text.group(2));
    }
  }

  private static Matcher matcher(Pattern pattern, Element element, String attribute, String otherwise,
      FileProblem problem) throws InputException {
    String text = take(element, attribute, otherwise);
    Matcher matcher = pattern.matcher(text);
    if (!matcher.matches()) {
      throw problem.of("oldValue", "field", attribute, "name", text);
    }
    return matcher;
  }

  private static String take(Element element, String attribute, String otherwise) {
    String value = element.hasAttribute(attribute) ? element.getAttribute(attribute) : otherwise;
    element.removeAttribute(attribute);
    return value;
  }

  private static void move(Element from, String attribute, Element to, String name) {
    if (from.hasAttribute(attribute)) {
      to.setAttribute(name, take(from, attribute, ""));
    }
  }

  private static Element child(Element parent, String name) {
    return (Element) parent.appendChild(parent.getOwnerDocument().createElement(name));
  }

  private static List<Element> children(Element parent, String name) {
    List<Element> children = new ArrayList<>();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element && name.equals(element.getNodeName())) {
        children.add(element);
      }
    }
    return children;
  }
}
