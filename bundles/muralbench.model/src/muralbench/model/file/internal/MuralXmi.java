// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file.internal;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.model.Mural;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.ClassNotFoundException;
import org.eclipse.emf.ecore.xmi.FeatureNotFoundException;
import org.eclipse.emf.ecore.xmi.IllegalValueException;
import org.eclipse.emf.ecore.xmi.PackageNotFoundException;
import org.eclipse.emf.ecore.xmi.UnresolvedReferenceException;
import org.eclipse.emf.ecore.xmi.XMIException;
import org.eclipse.emf.ecore.xmi.XMLHelper;
import org.eclipse.emf.ecore.xmi.XMLLoad;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.SAXXMIHandler;
import org.eclipse.emf.ecore.xmi.impl.XMILoadImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import org.xml.sax.helpers.DefaultHandler;

/** The mural as XMI of the current schema version, both ways. */
public final class MuralXmi {
  private MuralXmi() {}

  /**
   * Reads {@code mural.xmi}.
   *
   * @param file the file it comes from, which becomes the URI of the mural's resource
   * @throws InputException if it is damaged, unsafe or not whole
   */
  public static Mural read(byte[] xmi, Path file, FileProblem problem) throws InputException {
    ResourceSet closed = SafeXml.closedSet();
    Resource resource = new StrictResource(URI.createFileURI(file.toAbsolutePath().toString()));
    closed.getResources().add(resource);
    try {
      resource.load(new ByteArrayInputStream(xmi), SafeXml.loadOptions());
    } catch (FirstError e) {
      throw problem(e.error, problem);
    } catch (IOException e) {
      throw damaged(e, problem);
    }
    closed.getResources().remove(resource);
    return onlyMural(resource, problem);
  }

  /** The mural as XMI in UTF-8; it is not touched. */
  public static byte[] bytes(Mural mural) throws IOException {
    // A copy, because an object saved through another resource would have to be moved there.
    Resource resource = new XMIResourceImpl();
    resource.getContents().add(EcoreUtil.copy(mural));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    resource.save(out, Map.of(XMLResource.OPTION_ENCODING, "UTF-8"));
    return out.toByteArray();
  }

  private static Mural onlyMural(Resource resource, FileProblem problem) throws InputException {
    int roots = resource.getContents().size();
    if (roots != 1) {
      throw problem.of("roots", "count", roots);
    }
    if (!(resource.getContents().get(0) instanceof Mural mural)) {
      throw problem.of("notMural");
    }
    Optional<String> broken = Consistency.firstProblem(mural);
    if (broken.isPresent()) {
      throw problem.of("broken", "what", broken.get());
    }
    return mural;
  }

  private static InputException problem(XMIException error, FileProblem problem) {
    if (error instanceof PackageNotFoundException e) {
      return e.uri() == null ? problem.of(error, "unnamed") : problem.of(error, "foreign", "name", e.uri());
    }
    if (error instanceof FeatureNotFoundException e) {
      return problem.of(error, "unknown", "name", e.getName());
    }
    if (error instanceof ClassNotFoundException e) {
      return problem.of(error, "unknown", "name", e.getName());
    }
    if (error instanceof IllegalValueException e) {
      return problem.of(error, "value", "field", e.getFeature().getName(), "name",
          e.getValue() instanceof EObject object ? object.eClass().getName() : e.getValue());
    }
    if (error instanceof UnresolvedReferenceException e) {
      return problem.of(error, "reference", "name", e.getReference());
    }
    return damaged(error, problem);
  }

  /** The parser says in no better way than its message that a DOCTYPE was what it did not like. */
  static InputException damaged(Exception error, FileProblem problem) {
    boolean doctype = false;
    for (Throwable cause = error; cause != null; cause = cause.getCause()) {
      doctype |= String.valueOf(cause.getMessage()).contains("disallow-doctype-decl");
    }
    return problem.of(error, doctype ? "doctype" : "damaged");
  }

  /** Stops loading at the first error, where EMF would collect them all. */
  private static final class StrictResource extends XMIResourceImpl {
    StrictResource(URI uri) {
      super(uri);
    }

    @Override
    protected XMLLoad createXMLLoad() {
      return new XMILoadImpl(createXMLHelper()) {
        @Override
        protected DefaultHandler makeDefaultHandler() {
          return new StrictHandler(resource, helper, options);
        }
      };
    }
  }

  private static final class StrictHandler extends SAXXMIHandler {
    StrictHandler(XMLResource resource, XMLHelper helper, Map<?, ?> options) {
      super(resource, helper, options);
    }

    @Override
    public void error(XMIException e) {
      throw new FirstError(e);
    }
  }

  private static final class FirstError extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient XMIException error;

    FirstError(XMIException error) {
      super(error);
      this.error = error;
    }
  }
}
