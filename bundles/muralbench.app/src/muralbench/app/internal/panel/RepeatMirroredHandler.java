// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

/** Panel > Repeat Panel Mirrored: the mirror image of the selected panel, on its right. */
public final class RepeatMirroredHandler extends RepeatHandler {
  /** Repeats a panel mirrored. */
  public RepeatMirroredHandler() {
    super(true);
  }
}
