// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The bonds that are known, by kind. Immutable. */
public final class BondRegistry {
  private final Map<String, Bond> bonds;

  private BondRegistry(Map<String, Bond> bonds) {
    this.bonds = bonds;
  }

  /** The bonds that come with the program. */
  public static BondRegistry standard() {
    return new BondRegistry(Map.of()).with(StandardBonds.all());
  }

  /**
   * These bonds and more.
   *
   * @throws IllegalArgumentException if a kind is there already
   */
  public BondRegistry with(List<? extends Bond> more) {
    Map<String, Bond> all = new LinkedHashMap<>(bonds);
    for (Bond bond : more) {
      if (all.putIfAbsent(bond.kind(), bond) != null) {
        throw new IllegalArgumentException("two bonds of kind " + bond.kind());
      }
    }
    return new BondRegistry(all);
  }

  /** The bond of a kind. */
  public Optional<Bond> find(String kind) {
    return Optional.ofNullable(bonds.get(kind));
  }

  /** All bonds in order of registration. */
  public List<Bond> all() {
    return List.copyOf(bonds.values());
  }
}
