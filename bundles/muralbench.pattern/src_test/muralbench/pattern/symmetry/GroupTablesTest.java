// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The tables of the groups, checked from outside: the theorem on costs, group laws, orders of the point groups. */
class GroupTablesTest {
  /** Orders of the point groups; International Tables for Crystallography, volume A, plane groups 1 to 17. */
  private static final List<Integer> POINT_GROUPS = List.of(1, 2, 2, 2, 2, 4, 4, 4, 4, 4, 8, 8, 3, 6, 6, 6, 12);
  /** Highest turn of each plane group, same source. */
  private static final List<Integer> TURNS = List.of(1, 2, 1, 1, 1, 2, 2, 2, 2, 4, 4, 4, 3, 3, 3, 6, 6);

  /** The Magic Theorem of Conway: the symbols of plane patterns cost exactly 2. */
  @ParameterizedTest
  @EnumSource
  void everyPlaneSymbolCostsTwo(WallpaperGroup group) {
    assertEquals(Rational.of(2), group.orbifold().cost());
  }

  /** The same for bands, with 1 for the sign of the endless ends before a star and 1/2 after. */
  @ParameterizedTest
  @EnumSource
  void everyBandSymbolCostsTwo(FriezeGroup group) {
    assertEquals(Rational.of(2), group.orbifold().cost());
  }

  @Test
  void aPatternOnABallCostsLess() {
    assertTrue(new Orbifold("*532").cost().compareTo(Rational.of(2)) < 0);
  }

  @ParameterizedTest
  @EnumSource
  void planeOperationsMakeAGroup(WallpaperGroup group) {
    assertGroup(group.operations(), Operation::modulo);
  }

  @ParameterizedTest
  @EnumSource
  void bandOperationsMakeAGroup(FriezeGroup group) {
    assertGroup(group.operations(), Operation::moduloX);
  }

  @ParameterizedTest
  @EnumSource
  void planeGroupsHaveThePublishedOrderAndTurn(WallpaperGroup group) {
    int centrings = group.lattice().centrings().size();
    assertEquals(POINT_GROUPS.get(group.ordinal()) * centrings, group.operations().size());
    int turn = group.operations().stream().filter(each -> !each.mirrors()).mapToInt(Operation::order).max().orElse(0);
    assertEquals(TURNS.get(group.ordinal()), turn);
  }

  /** The features of the seven bands; International Tables, volume E: half turns, upright mirrors, lying mirrors. */
  @Test
  void bandsHaveThePublishedFeatures() {
    Map<String, String> features = Map.of("p1", "---", "p11g", "---", "p1m1", "-u-", "p2", "t--", "p2mg", "tu-",
        "p11m", "--l", "p2mm", "tul");
    Map<String, String> found = Stream.of(FriezeGroup.values())
        .collect(Collectors.toMap(FriezeGroup::standardSymbol, GroupTablesTest::features));
    assertEquals(features, found);
  }

  private static String features(FriezeGroup group) {
    boolean turns = group.operations().stream().anyMatch(each -> each.xx() < 0 && each.yy() < 0);
    boolean upright = group.operations().stream().anyMatch(each -> each.xx() < 0 && each.yy() > 0);
    boolean lying = group.operations().contains(Operation.parse("x,-y"));
    return (turns ? "t" : "-") + (upright ? "u" : "-") + (lying ? "l" : "-");
  }

  @Test
  void onlyTheOrbifoldSymbolIsAKey() {
    assertEquals(FriezeGroup.SIDLE, FriezeGroup.ofOrbifold("*ii").orElseThrow());
    assertTrue(FriezeGroup.ofOrbifold("p1m1").isEmpty());
    assertEquals(7, Stream.of(FriezeGroup.values()).map(group -> group.orbifold().typed()).distinct().count());
  }

  @Test
  void planeGroupsAreFoundByEitherSymbol() {
    assertEquals(WallpaperGroup.P4G, WallpaperGroup.of("4*2").orElseThrow());
    assertEquals(WallpaperGroup.P4G, WallpaperGroup.of("p4g").orElseThrow());
    assertTrue(WallpaperGroup.of("p5").isEmpty());
  }

  @Test
  void everyGroupHasPlainWords() {
    Set<String> labels = new HashSet<>();
    Stream.of(FriezeGroup.values()).map(FriezeGroup::label).forEach(labels::add);
    Stream.of(WallpaperGroup.values()).map(WallpaperGroup::label).forEach(labels::add);
    assertFalse(labels.contains(""));
    assertTrue(labels.size() >= 21, "labels that say the same: " + labels);
  }

  private static void assertGroup(List<Operation> operations, UnaryOperator<Operation> reduce) {
    Set<Operation> all = new HashSet<>(operations);
    assertEquals(operations.size(), all.size(), "an operation twice");
    assertEquals(Operation.NONE, operations.get(0));
    for (Operation first : operations) {
      assertTrue(all.contains(reduce.apply(first.inverse())), "no inverse of " + first);
      for (Operation second : operations) {
        Operation product = reduce.apply(first.then(second));
        assertTrue(all.contains(product), first + " then " + second + " is " + product);
      }
    }
  }
}
