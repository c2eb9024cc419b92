// SPDX-License-Identifier: EPL-2.0
package muralbench.base;

/** The person cancelled; whoever catches this leaves no partial result behind. */
public class CancelledException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** A cancellation. */
  public CancelledException() {
    super("cancelled");
  }
}
