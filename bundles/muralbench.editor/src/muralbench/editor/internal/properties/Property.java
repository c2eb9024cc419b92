// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.ui.views.properties.ComboBoxPropertyDescriptor;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.PropertyDescriptor;
import org.eclipse.ui.views.properties.TextPropertyDescriptor;

/**
 * One line of the Properties view.
 *
 * @param id stable name, also in the keys of its texts
 * @param group stable name of the category
 * @param choices what can be chosen; empty for a text
 * @param get the present value: a text, or the number of the choice
 * @param normal the text that the line would show after a text was taken, to tell whether it changes anything
 * @param refuse why a text cannot be taken, in plain words; empty if it can
 * @param set takes a value that was not refused; null for a line that is only read
 */
record Property(String id, String group, String[] choices, Supplier<Object> get,
    UnaryOperator<String> normal, Function<String, Optional<String>> refuse, Consumer<Object> set) {
  private static final String[] NONE = {};

  /** A line that is only read. */
  static Property info(String id, String group, Supplier<Object> get) {
    return new Property(id, group, NONE, get, text -> text, text -> Optional.empty(), null);
  }

  /** A text. */
  static Property text(String id, String group, Supplier<String> get, Function<String, Optional<String>> refuse,
      Consumer<String> set) {
    return text(id, group, get, text -> text, refuse, set);
  }

  /** A text that stands for something which can be written in several ways. */
  static Property text(String id, String group, Supplier<String> get, UnaryOperator<String> normal,
      Function<String, Optional<String>> refuse, Consumer<String> set) {
    return new Property(id, group, NONE, () -> get.get() == null ? "" : get.get(), normal, refuse,
        value -> set.accept((String) value));
  }

  /** A choice by number. */
  static Property choice(String id, String group, String[] choices, Supplier<Integer> get, Consumer<Integer> set) {
    return new Property(id, group, choices, get::get, text -> text, text -> Optional.empty(),
        value -> set.accept((Integer) value));
  }

  /** Whether a value can be taken and would change something. */
  boolean changes(Object value) {
    if (set == null || value instanceof String text && refuse.apply(text).isPresent()) {
      return false;
    }
    return !get.get().equals(value instanceof String text ? normal.apply(text) : value);
  }

  /** How the view shows and edits the line. */
  IPropertyDescriptor descriptor(String label, String category) {
    PropertyDescriptor descriptor = editor(label);
    descriptor.setCategory(category);
    if (choices.length == 0 && set != null) {
      descriptor.setValidator(value -> refuse.apply(String.valueOf(value)).orElse(null));
    }
    return descriptor;
  }

  private PropertyDescriptor editor(String label) {
    if (set == null) {
      return new PropertyDescriptor(id, label);
    }
    if (choices.length == 0) {
      return new TextPropertyDescriptor(id, label);
    }
    ComboBoxPropertyDescriptor combo = new ComboBoxPropertyDescriptor(id, label, choices);
    combo.setLabelProvider(new LabelProvider() {
      @Override
      public String getText(Object value) {
        return value instanceof Integer index && index >= 0 && index < choices.length ? choices[index] : "";
      }
    });
    return combo;
  }
}
