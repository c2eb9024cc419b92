// SPDX-License-Identifier: EPL-2.0
package muralbench.base;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class InputExceptionTest {
  @Test
  void messageJoinsPlaceProblemAndRemedy() {
    assertEquals("/title: the title is missing. Give the mural a title.",
        new InputException("/title", "the title is missing", "Give the mural a title.").getMessage());
  }

  @Test
  void noPlaceLeavesNoColon() {
    assertEquals("this is no brief. Choose a brief.",
        new InputException("", "this is no brief", "Choose a brief.").getMessage());
  }

  @Test
  void eachPartIsOneLineWhateverWasQuoted() {
    InputException e = new InputException("/a\nb", "\"\u001b[2J\" is not known", "Use \u0085.");
    assertEquals("/a\\nb", e.place());
    assertEquals("/a\\nb: \"\\u001b[2J\" is not known. Use \\u0085.", e.getMessage());
    assertEquals("Use \\u0085.", e.remedy());
  }
}
