// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

/** Which side runs through at a {@linkplain Corner#BUTTED butted} corner. */
public enum Through {
  /** Top and bottom run through, the upright sides stop against them. */
  LEVEL,
  /** The upright sides run through. */
  UPRIGHT,
  /** Each side runs through at its end and starts against the side before, all round. */
  ROUND
}
