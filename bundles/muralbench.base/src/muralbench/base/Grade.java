// SPDX-License-Identifier: EPL-2.0
package muralbench.base;

/** How much a finding weighs, heaviest first. */
public enum Grade {
  /** The mural breaks a rule; work made from it would be wrong. */
  ERROR,
  /** Against good practice; someone should decide knowingly. */
  WARNING,
  /** Worth knowing. */
  ADVICE
}
