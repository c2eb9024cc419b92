// SPDX-License-Identifier: EPL-2.0
package muralbench.extensions.tests.broken;

/** Cannot be made. */
public class ThrowingBond extends FakeBond {
  /** As the registry makes it. */
  public ThrowingBond() {
    super("throwing");
    throw new IllegalStateException("out of glaze");
  }
}
