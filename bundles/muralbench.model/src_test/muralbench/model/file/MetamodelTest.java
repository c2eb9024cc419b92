// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import muralbench.model.Mural;
import muralbench.model.MuralPackage;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EModelElement;
import org.eclipse.emf.ecore.ENamedElement;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MetamodelTest {
  @TempDir
  Path folder;

  static Stream<EClass> concreteClasses() {
    return MuralPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
        .filter(c -> !c.isAbstract());
  }

  @ParameterizedTest
  @MethodSource("concreteClasses")
  void everyClassIsSavedAndReadBackWhereItFits(EClass type) throws Exception {
    Mural mural = new RandomMural(7, 0).next();
    if (type != MuralPackage.Literals.MURAL) {
      place(mural, type);
    }
    Path file = folder.resolve("m.mural");
    MuralFile.write(mural, file);
    Mural again = MuralFile.read(file);
    assertTrue(EcoreUtil.equals(mural, again));
    assertTrue(holds(again, type), () -> "no " + type.getName() + " came back");
  }

  @Test
  void everyElementIsDocumented() throws Exception {
    Resource ecore = new EcoreResourceFactoryImpl().createResource(URI.createFileURI("model/mural.ecore"));
    ecore.load(Map.of());
    List<String> bare = new ArrayList<>();
    ecore.getAllContents().forEachRemaining(element -> {
      if (element instanceof EClassifier || element instanceof EStructuralFeature) {
        if (EcoreUtil.getDocumentation((EModelElement) element) == null) {
          bare.add(((ENamedElement) element).getName());
        }
      }
    });
    assertEquals(List.of(), bare);
    assertTrue(ecore.getContents().get(0).eContents().size() > 10);
  }

  /** Puts an object of the type into the mural along the shortest way of containments. */
  private static void place(Mural mural, EClass type) {
    RandomMural random = new RandomMural(11, 0);
    EObject owner = mural;
    List<EReference> way = way(type);
    for (int i = 0; i < way.size(); i++) {
      EReference step = way.get(i);
      EObject next = random.filled(i + 1 == way.size() ? type : owner(step.getEReferenceType(), way.get(i + 1)));
      RandomMural.add(owner, step, next);
      owner = next;
    }
    mural.getPanels().add(random.panel());
    random.link(mural);
  }

  private static EClass owner(EClass type, EReference feature) {
    return RandomMural.concrete(type).stream().filter(c -> c.getEAllReferences().contains(feature)).findFirst()
        .orElseThrow();
  }

  private static List<EReference> way(EClass type) {
    Deque<List<EReference>> open = new ArrayDeque<>(List.of(List.of()));
    Set<EClass> seen = new HashSet<>();
    while (!open.isEmpty()) {
      List<EReference> way = open.remove();
      EClass at = way.isEmpty() ? MuralPackage.Literals.MURAL : way.get(way.size() - 1).getEReferenceType();
      if (!way.isEmpty() && at.isSuperTypeOf(type)) {
        return way;
      }
      RandomMural.concrete(at).stream().filter(seen::add).flatMap(c -> c.getEAllContainments().stream())
          .forEach(next -> open.add(Stream.concat(way.stream(), Stream.of(next)).toList()));
    }
    throw new AssertionError("nothing in a mural holds a " + type.getName());
  }

  private static boolean holds(Mural mural, EClass type) {
    boolean found = mural.eClass() == type;
    for (var all = mural.eAllContents(); all.hasNext();) {
      found |= all.next().eClass() == type;
    }
    return found;
  }
}
