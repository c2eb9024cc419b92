// SPDX-License-Identifier: EPL-2.0
package muralbench.extensions.tests.broken;

import muralbench.setout.bond.Bond;
import muralbench.setout.bond.BondRequest;
import muralbench.setout.bond.Pattern;

/** A bond of a given kind that lays nothing. */
abstract class FakeBond implements Bond {
  private final String kind;

  FakeBond(String kind) {
    this.kind = kind;
  }

  @Override
  public String kind() {
    return kind;
  }

  @Override
  public String label() {
    return "Fake";
  }

  @Override
  public Pattern lay(BondRequest request) {
    throw new UnsupportedOperationException();
  }
}
