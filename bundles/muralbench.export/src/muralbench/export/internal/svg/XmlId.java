// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.svg;

/**
 * Keys as XML ids. An id must be a name of XML 1.0: it begins with a letter or underline and holds no spaces. Keys that
 * are names stay as they are; of others every character that does not fit becomes {@code _xHEX_}, so that two keys
 * never fall together, since an underline followed by x is written that way too.
 */
final class XmlId {
  private XmlId() {}

  static String of(String key) {
    StringBuilder id = new StringBuilder(key.length() + 8);
    for (int i = 0; i < key.length(); i++) {
      char c = key.charAt(i);
      boolean letter = c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z' || c == '_' && !key.startsWith("_x", i);
      boolean later = c >= '0' && c <= '9' || c == '-' || c == '.';
      if (letter || later && i > 0) {
        id.append(c);
      } else {
        id.append("_x").append(Integer.toHexString(c)).append('_');
      }
    }
    return id.toString();
  }
}
