// SPDX-License-Identifier: EPL-2.0
package muralbench.extensions.tests.broken;

/** Takes the kind of a bond that is there already. */
public class SecondGrid extends FakeBond {
  /** As the registry makes it. */
  public SecondGrid() {
    super("grid");
  }
}
