// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

/** What the command tells the shell. 13, 23 and 24 mean something to the launcher and stay free. */
final class ExitCode {
  /** Done. */
  static final int DONE = 0;

  /** Done, and the mural breaks a rule of error grade. */
  static final int RULE_BROKEN = 1;

  /** The command or its input cannot be used; nothing was written. */
  static final int BAD_INPUT = 2;

  /** A fault of the program. */
  static final int OUR_FAULT = 3;

  private ExitCode() {}
}
