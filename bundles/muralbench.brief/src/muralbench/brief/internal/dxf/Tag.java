// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.dxf;

/**
 * A group of a DXF file: a code, and on the next line its value.
 *
 * @param line number of the line with the value
 */
record Tag(int code, String value, int line) {
  boolean is(int wantedCode, String wanted) {
    return code == wantedCode && value.equals(wanted);
  }
}
