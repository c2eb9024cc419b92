// SPDX-License-Identifier: EPL-2.0
package muralbench.extensions.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URL;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import muralbench.extensions.Contributions;
import org.eclipse.core.runtime.IExtensionPoint;
import org.eclipse.core.runtime.RegistryFactory;
import org.junit.jupiter.api.Test;
import org.osgi.framework.FrameworkUtil;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Whoever adds an extension must find everything in the schemas. */
class SchemaDocumentationTest {
  private static final Set<String> SECTIONS = Set.of("since", "examples", "apiinfo", "implementation", "copyright");

  @Test
  void everyExtensionPointHasItsSchemaInTheBundle() {
    assertEquals(2, schemas().size());
    for (IExtensionPoint point : RegistryFactory.getRegistry().getExtensionPoints("muralbench.extensions")) {
      assertTrue(schemas().stream().anyMatch(url -> url.getPath().endsWith(point.getSchemaReference())));
    }
  }

  @Test
  void noDocumentationIsEmpty() throws Exception {
    for (URL schema : schemas()) {
      for (Element documentation : elements(schema, "documentation")) {
        String text = documentation.getTextContent().strip();
        assertTrue(text.length() > 10 && !text.contains("[Enter"), schema + ": " + text);
      }
    }
  }

  @Test
  void everyElementAndAttributeIsDocumented() throws Exception {
    for (URL schema : schemas()) {
      List<Element> described = elements(schema, "attribute");
      elements(schema, "element").stream().filter(element -> element.hasAttribute("name")).forEach(described::add);
      for (Element element : described) {
        assertTrue(element.getElementsByTagName("documentation").getLength() > 0, element.getAttribute("name"));
      }
    }
  }

  @Test
  void everySectionIsThere() throws Exception {
    for (URL schema : schemas()) {
      Set<String> found = new HashSet<>();
      elements(schema, "meta.section").forEach(section -> found.add(section.getAttribute("type")));
      assertEquals(SECTIONS, found, schema.toString());
    }
  }

  private static List<URL> schemas() {
    return Collections.list(
        FrameworkUtil.getBundle(Contributions.class).findEntries("schema", "*.exsd", false));
  }

  private static List<Element> elements(URL schema, String name) throws Exception {
    Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(schema.openStream());
    NodeList nodes = document.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }
}
