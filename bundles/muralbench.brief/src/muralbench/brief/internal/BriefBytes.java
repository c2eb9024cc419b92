// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/**
 * What a file holds that is said to be a brief.
 *
 * @param bytes all of it
 */
public record BriefBytes(byte[] bytes) {
  /** Whether there is nothing but white space in it, after a byte order mark perhaps. */
  public boolean isBlank() {
    return new String(bytes, StandardCharsets.UTF_8).replace("\uFEFF", "").isBlank();
  }

  /** Whether it starts as JSON does, whatever the encoding. */
  public boolean startsLikeJson() {
    return firstMark() == '{' || firstMark() == '[';
  }

  /**
   * The text in it.
   *
   * @throws CharacterCodingException if it is not UTF-8, or holds control characters, as no text does
   */
  public String text() throws CharacterCodingException {
    String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    if (!startsLikeJson() && text.chars().anyMatch(c -> c < ' ' && !Character.isWhitespace(c))) {
      throw new CharacterCodingException();
    }
    return text;
  }

  /** The first byte that is neither white space, nor zero, nor part of a byte order mark; 0 if there is none. */
  private int firstMark() {
    for (byte mark : bytes) {
      if (mark > ' ') {
        return mark;
      }
    }
    return 0;
  }
}
