// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import muralbench.base.Messages;

/**
 * The seven ways a band can repeat. The key is the orbifold symbol, since the symbol p1m1 names two different groups in
 * two notations. The operations are those of the group modulo the repeat: x runs along the band in repeats, y across it
 * from its middle line. Sources: International Tables for Crystallography, volume E, frieze groups (symbols and
 * operations); J. H. Conway, H. Burgiel, C. Goodman-Strauss, The Symmetries of Things, 2008 (orbifold symbols; the
 * names of the constants are the steps given there).
 */
public enum FriezeGroup {
  /** The motif is only moved along. */
  HOP("\u221e\u221e", "p1", "x,y"),
  /** The motif is moved along half a repeat and mirrored in the middle line, like footprints. */
  STEP("\u221e\u00d7", "p11g", "x,y", "x+1/2,-y"),
  /** Mirrors stand upright on the band. */
  SIDLE("*\u221e\u221e", "p1m1", "x,y", "-x,y"),
  /** The band looks the same upside down. */
  SPINNING_HOP("22\u221e", "p2", "x,y", "-x,-y"),
  /** Upright mirrors and half turns between them. */
  SPINNING_SIDLE("2*\u221e", "p2mg", "x,y", "-x,-y", "-x+1/2,y", "x+1/2,-y"),
  /** The middle line is a mirror. */
  JUMP("\u221e*", "p11m", "x,y", "x,-y"),
  /** Upright mirrors, and the middle line is a mirror too. */
  SPINNING_JUMP("*22\u221e", "p2mm", "x,y", "-x,-y", "-x,y", "x,-y");

  private final Orbifold orbifold;
  private final String standardSymbol;
  private final List<Operation> operations;

  FriezeGroup(String orbifold, String standardSymbol, String... operations) {
    this.orbifold = new Orbifold(orbifold);
    this.standardSymbol = standardSymbol;
    this.operations = Stream.of(operations).map(Operation::parse).toList();
  }

  /** The key of the group. */
  public Orbifold orbifold() {
    return orbifold;
  }

  /** The symbol of the International Tables, as p2mg. */
  public String standardSymbol() {
    return standardSymbol;
  }

  /** The group in plain words. */
  public String label() {
    return Messages.of(FriezeGroup.class).text("frieze." + name().toLowerCase(Locale.ROOT));
  }

  /** All operations modulo the repeat, the first the one that does nothing. */
  public List<Operation> operations() {
    return operations;
  }

  /** The group with an orbifold symbol, also as {@link Orbifold#typed typed}. */
  public static Optional<FriezeGroup> ofOrbifold(String symbol) {
    return Stream.of(values())
        .filter(group -> group.orbifold.symbol().equals(symbol) || group.orbifold.typed().equals(symbol)).findFirst();
  }

  /**
   * Where the copies of a drawing go. The drawing is thought between x = 0 and the first mirror or half turn.
   *
   * @param repeat length of one repeat, mm
   * @param middle height of the middle line, mm
   * @param repeats how many repeats, at least 1
   * @return for each repeat from left to right one movement for every operation
   */
  public List<Isometry> placements(double repeat, double middle, int repeats) {
    Cell cell = Cell.upright(repeat, repeat);
    Isometry down = Isometry.shift(0, -middle);
    Isometry up = Isometry.shift(0, middle);
    List<Isometry> placed = new ArrayList<>();
    for (int i = 0; i < repeats; i++) {
      Operation along = Operation.shift(Rational.of(i), Rational.ZERO);
      for (Operation operation : operations) {
        placed.add(down.then(cell.isometry(operation.then(along))).then(up));
      }
    }
    return placed;
  }
}
