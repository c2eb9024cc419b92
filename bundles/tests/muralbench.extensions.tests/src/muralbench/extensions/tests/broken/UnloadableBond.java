// SPDX-License-Identifier: EPL-2.0
package muralbench.extensions.tests.broken;

/** Fails while its class is loaded. */
public class UnloadableBond extends FakeBond {
  private static final int LOADED = Integer.parseInt("never");

  /** As the registry makes it. */
  public UnloadableBond() {
    super("unloadable-" + LOADED);
  }
}
