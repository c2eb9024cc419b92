// SPDX-License-Identifier: EPL-2.0
package muralbench.base;

/** The version of this program, as files and title blocks tell it. */
public final class ProgramVersion {
  /** Version in the form major.minor.service; the same as that of the bundles, which a test makes sure of. */
  public static final String CURRENT = "0.1.0";

  private ProgramVersion() {}
}
