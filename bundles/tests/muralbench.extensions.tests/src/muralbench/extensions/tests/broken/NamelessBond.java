// SPDX-License-Identifier: EPL-2.0
package muralbench.extensions.tests.broken;

/** Has no kind. */
public class NamelessBond extends FakeBond {
  /** As the registry makes it. */
  public NamelessBond() {
    super(null);
  }
}
