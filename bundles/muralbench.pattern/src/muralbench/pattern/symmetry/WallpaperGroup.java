// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import muralbench.base.Messages;

/**
 * The seventeen ways a pattern can fill the plane. The operations are the general positions of the conventional cell,
 * centring included. Source: International Tables for Crystallography, volume A, plane groups 1 to 17; the orbifold
 * symbols are Conway's.
 */
public enum WallpaperGroup {
  /** Shifts only. */
  P1("o", Lattice.OBLIQUE, "x,y"),
  /** Half turns. */
  P2("2222", Lattice.OBLIQUE, "x,y", "-x,-y"),
  /** Mirrors one way. */
  PM("**", Lattice.RECTANGULAR, "x,y", "-x,y"),
  /** Glides one way. */
  PG("\u00d7\u00d7", Lattice.RECTANGULAR, "x,y", "-x,y+1/2"),
  /** Mirrors with glides between them. */
  CM("*\u00d7", Lattice.RHOMBIC, "x,y", "-x,y"),
  /** Mirrors both ways. */
  PMM("*2222", Lattice.RECTANGULAR, "x,y", "-x,-y", "-x,y", "x,-y"),
  /** Mirrors one way, half turns between them. */
  PMG("22*", Lattice.RECTANGULAR, "x,y", "-x,-y", "-x+1/2,y", "x+1/2,-y"),
  /** Glides both ways, half turns. */
  PGG("22\u00d7", Lattice.RECTANGULAR, "x,y", "-x,-y", "-x+1/2,y+1/2", "x+1/2,-y+1/2"),
  /** Mirrors both ways with half turns off them. */
  CMM("2*22", Lattice.RHOMBIC, "x,y", "-x,-y", "-x,y", "x,-y"),
  /** Quarter turns. */
  P4("442", Lattice.SQUARE, "x,y", "-x,-y", "-y,x", "y,-x"),
  /** Quarter turns on mirrors. */
  P4M("*442", Lattice.SQUARE, "x,y", "-x,-y", "-y,x", "y,-x", "-x,y", "x,-y", "y,x", "-y,-x"),
  /** Quarter turns off the mirrors. */
  P4G("4*2", Lattice.SQUARE, "x,y", "-x,-y", "-y,x", "y,-x", "-x+1/2,y+1/2", "x+1/2,-y+1/2", "y+1/2,x+1/2",
      "-y+1/2,-x+1/2"),
  /** Third turns. */
  P3("333", Lattice.HEXAGONAL, "x,y", "-y,x-y", "-x+y,-x"),
  /** Third turns, all of them on mirrors. */
  P3M1("*333", Lattice.HEXAGONAL, "x,y", "-y,x-y", "-x+y,-x", "-y,-x", "-x+y,y", "x,x-y"),
  /** Third turns, some of them off the mirrors. */
  P31M("3*3", Lattice.HEXAGONAL, "x,y", "-y,x-y", "-x+y,-x", "y,x", "x-y,-y", "-x,-x+y"),
  /** Sixth turns. */
  P6("632", Lattice.HEXAGONAL, "x,y", "-y,x-y", "-x+y,-x", "-x,-y", "y,-x+y", "x-y,x"),
  /** Sixth turns on mirrors. */
  P6M("*632", Lattice.HEXAGONAL, "x,y", "-y,x-y", "-x+y,-x", "-x,-y", "y,-x+y", "x-y,x", "-y,-x", "-x+y,y", "x,x-y",
      "y,x", "x-y,-y", "-x,-x+y");

  private final Orbifold orbifold;
  private final Lattice lattice;
  private final List<Operation> operations;

  WallpaperGroup(String orbifold, Lattice lattice, String... positions) {
    this.orbifold = new Orbifold(orbifold);
    this.lattice = lattice;
    List<Operation> all = new ArrayList<>();
    for (Operation centring : lattice.centrings()) {
      Stream.of(positions).map(Operation::parse).map(position -> position.then(centring).modulo()).forEach(all::add);
    }
    operations = List.copyOf(all);
  }

  /** Number of the plane group in the International Tables, 1 to 17. */
  public int number() {
    return ordinal() + 1;
  }

  /** The short symbol of the International Tables, as p4g. */
  public String standardSymbol() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The orbifold symbol. */
  public Orbifold orbifold() {
    return orbifold;
  }

  /** What the cell must look like. */
  public Lattice lattice() {
    return lattice;
  }

  /** The group in plain words. */
  public String label() {
    return Messages.of(WallpaperGroup.class).text("wallpaper." + standardSymbol());
  }

  /** The general positions of the conventional cell, modulo whole cells; the first does nothing. */
  public List<Operation> operations() {
    return operations;
  }

  /** The group with a short symbol of the International Tables or an orbifold symbol, also as typed. */
  public static Optional<WallpaperGroup> of(String symbol) {
    return Stream.of(values()).filter(group -> group.standardSymbol().equals(symbol)
        || group.orbifold.symbol().equals(symbol) || group.orbifold.typed().equals(symbol)).findFirst();
  }

  /**
   * Where the copies of a drawing go in a field of whole cells.
   *
   * @param cell the conventional cell
   * @param columns cells along the first edge, at least 1
   * @param rows cells along the second edge, at least 1
   * @throws IllegalArgumentException if the cell is not one of the group's lattice
   */
  public List<Isometry> placements(Cell cell, int columns, int rows) {
    if (!lattice.admits(cell)) {
      throw new IllegalArgumentException(standardSymbol() + " needs a cell that is " + lattice);
    }
    List<Isometry> placed = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        Operation along = Operation.shift(Rational.of(column), Rational.of(row));
        operations.forEach(operation -> placed.add(cell.isometry(operation.then(along))));
      }
    }
    return placed;
  }
}
