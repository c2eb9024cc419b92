// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file.internal;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import muralbench.model.MuralPackage;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.impl.EPackageRegistryImpl;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.impl.ExtensibleURIConverterImpl;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.w3c.dom.Document;
import org.xml.sax.SAXException;

/** How XML is read in this room: no DOCTYPE, nothing fetched, no package but our own. */
final class SafeXml {
  /** Names are those of the parser's features, which look like addresses but are none. */
  private static final Map<String, Boolean> FEATURES = Map.of(
      "http://apache.org/xml/features/disallow-doctype-decl", true,
      "http://xml.org/sax/features/external-general-entities", false,
      "http://xml.org/sax/features/external-parameter-entities", false,
      "http://apache.org/xml/features/nonvalidating/load-external-dtd", false);

  private SafeXml() {}

  /** Options with which a mural is loaded. */
  static Map<Object, Object> loadOptions() {
    Map<Object, Object> options = new HashMap<>();
    options.put(XMLResource.OPTION_PARSER_FEATURES, FEATURES);
    options.put(XMLResource.OPTION_USE_PACKAGE_NS_URI_AS_LOCATION, false);
    options.put(XMLResource.OPTION_RECORD_UNKNOWN_FEATURE, false);
    return options;
  }

  /** A resource set that knows our package alone and opens no other resource. */
  static ResourceSetImpl closedSet() {
    ResourceSetImpl set = new ResourceSetImpl() {
      @Override
      public Resource getResource(URI uri, boolean loadOnDemand) {
        return super.getResource(uri, false);
      }
    };
    set.setPackageRegistry(new OwnPackageOnly());
    set.setURIConverter(new ExtensibleURIConverterImpl() {
      @Override
      public InputStream createInputStream(URI uri, Map<?, ?> options) throws IOException {
        throw new IOException("not opened: " + uri);
      }
    });
    return set;
  }

  static Document parse(byte[] xml) throws SAXException, IOException {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      for (Map.Entry<String, Boolean> feature : FEATURES.entrySet()) {
        factory.setFeature(feature.getKey(), feature.getValue());
      }
      factory.setNamespaceAware(true);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(null);
      return builder.parse(new ByteArrayInputStream(xml));
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("the XML parser of this Java platform cannot be made safe", e);
    }
  }

  static byte[] bytes(Document document) {
    try {
      TransformerFactory factory = TransformerFactory.newInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      factory.newTransformer().transform(new DOMSource(document), new StreamResult(out));
      return out.toByteArray();
    } catch (TransformerException e) {
      throw new IllegalStateException("a document in memory can always be written", e);
    }
  }

  /** A registry without the fall-back to all packages of the platform. */
  private static final class OwnPackageOnly extends EPackageRegistryImpl {
    private static final long serialVersionUID = 1L;

    OwnPackageOnly() {
      put(MuralPackage.eNS_URI, MuralPackage.eINSTANCE);
    }
  }
}
