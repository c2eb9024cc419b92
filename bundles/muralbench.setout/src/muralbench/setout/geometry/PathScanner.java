// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import muralbench.base.Messages;
import muralbench.setout.geometry.PathData.PathDataException;

/** Reads commands, numbers and flags of path data one by one, in the grammar of SVG 1.1 (8.3.9). */
final class PathScanner {
  private static final String COMMANDS = "MmLlHhVvCcSsQqTtAaZz";
  private static final Messages MESSAGES = Messages.of(PathData.class);

  private final String text;
  private int at;

  PathScanner(String text) {
    this.text = text;
  }

  /** Whether anything but white space is left. */
  boolean more() {
    skipSpace();
    return at < text.length();
  }

  /** The position of the next character, from 1. */
  int position() {
    return at + 1;
  }

  /** Whether a command that starts a subpath is next. */
  boolean startsSubpath() {
    return at < text.length() && (text.charAt(at) == 'M' || text.charAt(at) == 'm');
  }

  /** The command letter here. */
  char command() throws PathDataException {
    skipSpace();
    if (at >= text.length() || COMMANDS.indexOf(text.charAt(at)) < 0) {
      throw expected("path.command");
    }
    return text.charAt(at++);
  }

  /** Whether the command goes on with another set of arguments; passes the comma before it. */
  boolean repeats() {
    return separator() || at < text.length() && "+-.0123456789".indexOf(text.charAt(at)) >= 0;
  }

  /** The number that begins a set of arguments; no comma may stand before it. */
  double first() throws PathDataException {
    skipSpace();
    return number();
  }

  /** The next number of a set of arguments. */
  double next() throws PathDataException {
    separator();
    return number();
  }

  /** The next flag of a set of arguments: one character, which needs no separator after it. */
  boolean flag() throws PathDataException {
    separator();
    if (at >= text.length() || text.charAt(at) != '0' && text.charAt(at) != '1') {
      throw expected("path.flag");
    }
    return text.charAt(at++) == '1';
  }

  private boolean separator() {
    skipSpace();
    if (at < text.length() && text.charAt(at) == ',') {
      at++;
      skipSpace();
      return true;
    }
    return false;
  }

  private void skipSpace() {
    while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
  }

  private double number() throws PathDataException {
    int start = at;
    if (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
      at++;
    }
    int digits = digits();
    if (at < text.length() && text.charAt(at) == '.') {
      at++;
      digits += digits();
    }
    if (digits == 0) {
      at = start;
      throw expected("path.number");
    }
    exponent();
    double value = Double.parseDouble(text.substring(start, at));
    if (Double.isInfinite(value)) {
      throw new PathDataException(MESSAGES.text("path.large", "at", start + 1));
    }
    return value;
  }

  /** Passes an exponent; an e that no number follows is left where it is. */
  private void exponent() {
    int before = at;
    if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
      at++;
      if (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
        at++;
      }
      if (digits() == 0) {
        at = before;
      }
    }
  }

  private int digits() {
    int start = at;
    while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      at++;
    }
    return at - start;
  }

  /** The error that something else was expected here. */
  PathDataException expected(String key) {
    String found = at < text.length() ? '"' + new StringBuilder().appendCodePoint(text.codePointAt(at)).toString() + '"'
        : MESSAGES.text("path.end");
    return new PathDataException(MESSAGES.text(key, "at", at + 1, "found", found));
  }
}
