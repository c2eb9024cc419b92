// SPDX-License-Identifier: EPL-2.0
package muralbench.extensions.tests;

import java.util.stream.Stream;
import muralbench.extensions.Contributions;
import muralbench.setout.bond.Bond;
import muralbench.testsupport.BondContract;
import org.eclipse.core.runtime.RegistryFactory;

/** Every registered bond, the program's own and those of others, keeps the contract. */
class EveryBondTest extends BondContract {
  @Override
  protected Stream<Bond> bonds() {
    return Contributions.bonds(RegistryFactory.getRegistry()).all().stream();
  }
}
