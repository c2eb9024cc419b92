// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.create;

import java.util.List;

/** Names for new panels: A to Z, then AA, AB and so on. */
final class PanelNames {
  private static final int LETTERS = 26;

  private PanelNames() {}

  /** The first name that no panel has. */
  static String free(List<PanelDraft> taken) {
    int number = 0;
    while (isTaken(taken, name(number))) {
      number++;
    }
    return name(number);
  }

  private static boolean isTaken(List<PanelDraft> taken, String name) {
    return taken.stream().anyMatch(panel -> panel.id().equalsIgnoreCase(name));
  }

  private static String name(int number) {
    String last = String.valueOf((char) ('A' + number % LETTERS));
    return number < LETTERS ? last : name(number / LETTERS - 1) + last;
  }
}
