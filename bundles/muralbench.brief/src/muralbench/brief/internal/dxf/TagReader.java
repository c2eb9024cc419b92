// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.dxf;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Pattern;
import muralbench.base.InputException;

/** Takes a DXF file apart into its groups. A file has to end with the group {@code 0 EOF}, or part of it is lost. */
final class TagReader {
  private static final byte[] BINARY = "AutoCAD Binary DXF".getBytes(StandardCharsets.US_ASCII);
  private static final Pattern CODE = Pattern.compile("-?[0-9]{1,4}");
  private static final int COMMENT = 999;

  private final String text;
  private final DxfProblem problem;
  private int at;
  private int line;
  private Tag next;

  TagReader(byte[] file, DxfProblem problem) throws InputException {
    this.problem = problem;
    if (file.length >= BINARY.length && Arrays.equals(file, 0, BINARY.length, BINARY, 0, BINARY.length)) {
      throw problem.of("binary");
    }
    this.text = text(file);
    this.next = read();
  }

  /** UTF-8 since the release of 2007, a code page of Windows before; what matters is in ASCII in all of them. */
  private static String text(byte[] file) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(file)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      return new String(file, Charset.forName("windows-1252"));
    }
  }

  /** The group that {@link #take} gives next. */
  Tag peek() {
    return next;
  }

  boolean atEnd() {
    return next.is(0, "EOF");
  }

  Tag take() throws InputException {
    Tag taken = next;
    next = read();
    return taken;
  }

  private Tag read() throws InputException {
    int code = COMMENT;
    String value = "";
    while (code == COMMENT) {
      String number = line();
      if (number == null) {
        throw problem.at(line, line < 2 ? "empty" : "truncated");
      }
      if (!CODE.matcher(number.trim()).matches()) {
        throw problem.at(line, "code");
      }
      code = Integer.parseInt(number.trim());
      value = line();
      if (value == null) {
        throw problem.at(line, "truncated");
      }
    }
    return new Tag(code, value.trim(), line);
  }

  /** The next line, ended by CR LF, LF or CR; null at the end of the text. */
  private String line() {
    if (at >= text.length()) {
      return null;
    }
    int end = at;
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    String found = text.substring(at, end);
    boolean two = end + 1 < text.length() && text.charAt(end) == '\r' && text.charAt(end + 1) == '\n';
    at = end + (two ? 2 : 1);
    line++;
    return found;
  }
}
