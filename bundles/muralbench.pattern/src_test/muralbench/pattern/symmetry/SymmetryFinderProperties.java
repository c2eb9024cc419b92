// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** The group is found wherever the pattern lies and however it is turned. */
class SymmetryFinderProperties {
  @Property(tries = 120)
  void theGroupIsFoundWhereverThePatternLies(@ForAll WallpaperGroup group, @ForAll @DoubleRange(max = 6) double angle,
      @ForAll @DoubleRange(max = 3) double x, @ForAll @DoubleRange(min = 0.7, max = 0.9) double height) {
    Isometry moved = new Isometry(Math.cos(angle), -Math.sin(angle), Math.sin(angle), Math.cos(angle), new Vec(x, 0.3));
    Cell cell = group.lattice().cell(1, height);
    Patch flag = new Patch("red", List.of(Contour.polygon(List.of(new Vec(0.05, 0.03), new Vec(0.16, 0.05),
        new Vec(0.08, 0.09)))));
    List<Patch> pattern = group.placements(cell, 1, 1).stream().map(each -> flag.moved(each.then(moved))).toList();
    Cell turned = new Cell(moved.direction(cell.a()), moved.direction(cell.b()));
    assertEquals(group, SymmetryFinder.inPlane(turned, pattern).orElseThrow().group());
  }

  @Property(tries = 60)
  void theBandIsFoundWhereverItLies(@ForAll FriezeGroup group, @ForAll @DoubleRange(max = 300) double x,
      @ForAll @DoubleRange(min = -50, max = 50) double middle) {
    Patch leaf = new Patch("green", List.of(Contour.polygon(List.of(new Vec(5, middle + 4), new Vec(20, middle + 7),
        new Vec(9, middle + 23)))));
    List<Patch> band = group.placements(150, middle, 1).stream()
        .map(each -> leaf.moved(each.then(Isometry.shift(x, 0)))).toList();
    assertEquals(group, SymmetryFinder.alongBand(150, band).orElseThrow().group());
  }
}
