// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file.internal;

import java.io.IOException;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import muralbench.base.Messages;
import muralbench.model.Mural;
import muralbench.model.MuralPackage;
import muralbench.model.Panel;
import muralbench.model.RepeatedOutline;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Whether a mural is whole: every required part is there, every reference leads to a part of the same mural, every
 * number is finite and every text can be written as XML. It says nothing about whether the mural can be built.
 */
public final class Consistency {
  private static final Messages MESSAGES = Messages.of(Consistency.class);

  private static final Set<EStructuralFeature> REPEATED = Set.of(MuralPackage.Literals.PANEL__TILE_KIND,
      MuralPackage.Literals.PANEL__BOND, MuralPackage.Literals.PANEL__ORIGIN);

  private Consistency() {}

  /** Refuses to save a mural that could not be read again. */
  public static void refuseBroken(Mural mural) throws IOException {
    Optional<String> problem = firstProblem(mural);
    if (problem.isPresent()) {
      throw new IOException(MESSAGES.text("save.broken", "what", problem.get()));
    }
  }

  /** The first thing that is not whole, in plain words, if there is one. */
  public static Optional<String> firstProblem(Mural mural) {
    Optional<String> problem = problemOf(mural, mural);
    for (Iterator<EObject> all = mural.eAllContents(); all.hasNext() && problem.isEmpty();) {
      problem = problemOf(all.next(), mural);
    }
    return problem;
  }

  private static Optional<String> problemOf(EObject object, Mural mural) {
    if (object.eIsProxy()) {
      return problem("part.outside", object.eContainer(), object.eContainmentFeature());
    }
    for (EStructuralFeature feature : object.eClass().getEAllStructuralFeatures()) {
      List<?> values = values(object, feature);
      boolean isReference = feature instanceof EReference reference && !reference.isContainment();
      boolean missing = values.stream().allMatch(value -> value == null || "".equals(value));
      if (feature.isRequired() && !isRepeated(object, feature) && missing) {
        return problem("part.missing", object, feature);
      }
      if (isReference && values.stream().anyMatch(target -> !isInside((EObject) target, mural))) {
        return problem("part.outside", object, feature);
      }
      if (values.stream().anyMatch(value -> value instanceof Double d && !Double.isFinite(d))) {
        return problem("part.notFinite", object, feature);
      }
      if (values.stream().anyMatch(value -> value instanceof String s && !isXml(s))) {
        return problem("part.text", object, feature);
      }
    }
    return Optional.empty();
  }

  /** Whether a panel need not have something, since it takes it from the panel that it repeats. */
  private static boolean isRepeated(EObject object, EStructuralFeature feature) {
    return object instanceof Panel panel && panel.getOutline() instanceof RepeatedOutline && REPEATED.contains(feature);
  }

  private static List<?> values(EObject object, EStructuralFeature feature) {
    Object value = object.eGet(feature, false);
    return value instanceof Collection<?> all ? List.copyOf(all) : value == null ? List.of() : List.of(value);
  }

  private static boolean isInside(EObject target, Mural mural) {
    return !target.eIsProxy() && EcoreUtil.isAncestor(mural, target);
  }

  /** Production 2 of XML 1.0: the characters a document may hold. */
  private static boolean isXml(String text) {
    return text.codePoints().allMatch(c -> c == 0x9 || c == 0xA || c == 0xD || c >= 0x20 && c <= 0xD7FF
        || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000);
  }

  private static Optional<String> problem(String key, EObject owner, EStructuralFeature feature) {
    return Optional.of(MESSAGES.text(key, "owner", label(owner), "feature", words(feature.getName())));
  }

  /** Such as {@code panel A}; a part without an id is told by what it belongs to. */
  private static String label(EObject object) {
    String name = words(object.eClass().getName());
    EStructuralFeature id = object.eClass().getEStructuralFeature("id");
    if (id != null && object.eGet(id) instanceof String text && !text.isBlank()) {
      return name + " " + text;
    }
    EObject owner = object.eContainer();
    return owner == null || owner instanceof Mural ? "the " + name : "the " + name + " of " + label(owner);
  }

  private static String words(String camelCase) {
    return camelCase.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
  }
}
