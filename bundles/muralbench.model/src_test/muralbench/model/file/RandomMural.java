// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file;

import java.util.List;
import java.util.Random;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.MuralPackage;
import muralbench.model.Panel;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Fills the whole metamodel with random values, so that a feature added later is covered without a word here. */
final class RandomMural {
  private static final List<String> TEXTS = List.of("A", "Low water", "½″ <&>\"'", "two\nlines\tand a tab\r\n", " ",
      "  blanks  ", "]]>", "äöü 墨 \uD83C\uDF0A", "\u0085\u2028");

  private final Random random;
  private final int most;

  /** A source of murals; lists get up to {@code most} members. */
  RandomMural(long seed, int most) {
    this.random = new Random(seed);
    this.most = most;
  }

  Mural next() {
    Mural mural = (Mural) filled(MuralPackage.Literals.MURAL);
    if (mural.getTileKinds().isEmpty()) {
      mural.getTileKinds().add(MuralFactory.eINSTANCE.createTileKind());
      mural.getTileKinds().get(0).setId("T");
    }
    mural.getPanels().add(panel());
    link(mural);
    return mural;
  }

  /** A panel, for references to lead to. */
  Panel panel() {
    return (Panel) filled(MuralPackage.Literals.PANEL);
  }

  /** Lets all references across lead somewhere. */
  void link(Mural mural) {
    mural.eAllContents().forEachRemaining(this::link);
  }

  /** An object with all its attributes and contents, but no references across. */
  EObject filled(EClass type) {
    EObject object = EcoreUtil.create(type);
    for (EAttribute attribute : type.getEAllAttributes()) {
      if (attribute.isRequired() || random.nextInt(4) > 0) {
        Object value = value(attribute);
        object.eSet(attribute, attribute.isMany() ? List.of(value) : value);
      }
    }
    type.getEAllContainments().forEach(reference -> fill(object, reference));
    return object;
  }

  private void fill(EObject object, EReference reference) {
    List<EClass> types = concrete(reference.getEReferenceType());
    if (types.isEmpty()) {
      return;
    }
    int wanted = reference.isMany() ? random.nextInt(most + 1) : reference.isRequired() ? 1 : random.nextInt(2);
    for (int i = 0; i < wanted; i++) {
      add(object, reference, filled(types.get(random.nextInt(types.size()))));
    }
  }

  private void link(EObject object) {
    for (EReference reference : object.eClass().getEAllReferences()) {
      if (!reference.isContainment() && !reference.isContainer()) {
        List<EObject> targets = EcoreUtil.getRootContainer(object).eContents().stream()
            .filter(reference.getEReferenceType()::isInstance).toList();
        add(object, reference, targets.get(random.nextInt(targets.size())));
      }
    }
  }

  @SuppressWarnings("unchecked")
  static void add(EObject owner, EStructuralFeature feature, EObject value) {
    if (feature.isMany()) {
      ((EList<EObject>) owner.eGet(feature)).add(value);
    } else {
      owner.eSet(feature, value);
    }
  }

  static List<EClass> concrete(EClass type) {
    return MuralPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
        .filter(c -> !c.isAbstract() && type.isSuperTypeOf(c)).toList();
  }

  private Object value(EAttribute attribute) {
    if (attribute.getEAttributeType() instanceof EEnum values) {
      return values.getELiterals().get(random.nextInt(values.getELiterals().size())).getInstance();
    }
    return switch (attribute.getEAttributeType().getName()) {
      case "EString" -> TEXTS.get(random.nextInt(TEXTS.size()));
      case "EDouble" -> number();
      case "EBoolean" -> random.nextBoolean();
      case "EInt" -> random.nextInt();
      default -> throw new IllegalArgumentException("teach RandomMural the type of " + attribute);
    };
  }

  private double number() {
    double any = Double.longBitsToDouble(random.nextLong());
    return Double.isFinite(any) && random.nextBoolean() ? any : random.nextInt(10_000) / 16.0;
  }
}
