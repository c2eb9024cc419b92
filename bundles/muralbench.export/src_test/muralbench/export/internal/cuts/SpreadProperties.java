// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class SpreadProperties {
  @Example
  void labelsWithRoomStay() {
    assertEquals(List.of(0.0, 10.0, 20.0), Spread.apart(List.of(0.0, 10.0, 20.0), 3));
  }

  @Example
  void twoThatClashShareTheMove() {
    assertEquals(List.of(8.5, 11.5), Spread.apart(List.of(10.0, 10.0), 3));
  }

  @Property(tries = 200)
  void noTwoAreTooNearAndTheirMiddleStays(
      @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 0, max = 50) Double> any) {
    List<Double> wishes = any.stream().sorted().toList();
    List<Double> places = Spread.apart(wishes, 3);
    for (int i = 1; i < places.size(); i++) {
      assertTrue(places.get(i) - places.get(i - 1) > 3 - 1e-9, places.toString());
    }
    double moved = places.stream().mapToDouble(p -> p).sum() - wishes.stream().mapToDouble(w -> w).sum();
    assertEquals(0, moved, 1e-9);
  }
}
