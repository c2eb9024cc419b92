// SPDX-License-Identifier: EPL-2.0
package muralbench.extensions.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.base.Messages;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;

/**
 * The objects contributed to one extension point, made and looked over one by one.
 *
 * @param point full name of the extension point; every element in it has an attribute {@code class}
 * @param type what the objects must be
 * @param name gives the name under which an object is registered
 * @param label gives its name for people
 */
public record ContributedObjects<T>(String point, Class<T> type, Function<T, String> name, Function<T, String> label) {
  private static final Messages TEXT = Messages.of(ContributedObjects.class);
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");

  /** A contribution that cannot be used; the message says why. */
  private static final class Unusable extends Exception {
    private static final long serialVersionUID = 1L;

    Unusable(String message) {
      super(message);
    }
  }

  /**
   * Makes the objects.
   *
   * @param extensions the registry
   * @param taken names that are in use already
   * @param problems receives a finding for every contribution left out
   * @return the usable objects in the registry's order, with names that differ from each other and from those taken
   */
  public List<T> read(IExtensionRegistry extensions, List<String> taken, List<Finding> problems) {
    List<T> usable = new ArrayList<>();
    Set<String> names = new HashSet<>(taken);
    for (IConfigurationElement element : extensions.getConfigurationElementsFor(point)) {
      try {
        usable.add(object(element, names));
      } catch (CoreException | Unusable | RuntimeException | LinkageError e) {
        problems.add(problem(element, e));
      }
    }
    return usable;
  }

  private T object(IConfigurationElement element, Set<String> names) throws CoreException, Unusable {
    Object made = element.createExecutableExtension("class");
    if (!type.isInstance(made)) {
      throw new Unusable(TEXT.text("type", "type", type.getName()));
    }
    T object = type.cast(made);
    String given = name.apply(object);
    if (given == null || !NAME.matcher(given).matches()) {
      throw new Unusable(TEXT.text("name", "name", given));
    }
    String shown = label.apply(object);
    if (shown == null || shown.isBlank()) {
      throw new Unusable(TEXT.text("label", "name", given));
    }
    if (!names.add(given)) {
      throw new Unusable(TEXT.text("duplicate", "name", given));
    }
    return object;
  }

  private Finding problem(IConfigurationElement element, Throwable cause) {
    String plugin = element.getContributor().getName();
    String found = String.valueOf(element.getAttribute("class"));
    String reason = cause instanceof Unusable ? cause.getMessage() : TEXT.text("failed", "error", root(cause));
    return new Finding("extension.unusable", Grade.WARNING, plugin,
        TEXT.text("message", "plugin", plugin, "class", found, "reason", reason), TEXT.text("remedy", "plugin", plugin),
        TEXT.text("source", "point", point), Map.of("point", point, "class", found));
  }

  /** The registry wraps what went wrong; the innermost failure is the one that helps. */
  private static Throwable root(Throwable failure) {
    Throwable root = failure;
    while (root.getCause() != null && root.getCause() != root) {
      root = root.getCause();
    }
    return root;
  }
}
