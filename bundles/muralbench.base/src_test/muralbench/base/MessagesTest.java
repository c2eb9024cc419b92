// SPDX-License-Identifier: EPL-2.0
package muralbench.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.MissingResourceException;
import org.junit.jupiter.api.Test;

class MessagesTest {
  private final Messages messages = Messages.of(MessagesTest.class);

  @Test
  void placeholdersAreFilledByName() {
    assertEquals("Panel A is 6 in wide", messages.text("panel.width", "width", "6 in", "id", "A"));
  }

  @Test
  void valuesAreNotReadForPlaceholders() {
    assertEquals("Panel {width} is {id} wide", messages.text("panel.width", "width", "{id}", "id", "{width}"));
  }

  @Test
  void textWithoutValuesStaysAsItIs() {
    assertEquals("No {braces} are filled without values", messages.text("plain"));
    assertEquals("An open { stays", messages.text("open", "any", 1));
  }

  @Test
  void missingValueIsOurFault() {
    assertThrows(IllegalArgumentException.class, () -> messages.text("panel.width", "id", "A"));
  }

  @Test
  void missingKeyIsOurFault() {
    assertThrows(MissingResourceException.class, () -> messages.text("panel.height"));
  }
}
