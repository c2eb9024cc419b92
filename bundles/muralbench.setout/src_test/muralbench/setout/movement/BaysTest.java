// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BaysTest {
  private static List<Bays.Place> places(double... at) {
    return DoubleStream.of(at).mapToObj(place -> new Bays.Place(place, false)).toList();
  }

  private static List<Double> cut(double length, double greatest, List<Bays.Place> places) {
    return new Bays(0, length, greatest).divided(places).stream().map(Bays.Place::at).toList();
  }

  @Test
  void dividesAsEquallyAsThePlacesAllow() {
    assertEquals(List.of(34.0, 66.0), cut(100, 40, places(25, 34, 38, 62, 66, 70)));
  }

  @Test
  void needsNothingForTheGreatestLength() {
    assertEquals(List.of(), cut(40, 40, places(20)));
  }

  @Test
  void takesOneMoreWhereThePlacesDoNotFit() {
    assertEquals(List.of(30.0, 50.0), cut(80, 40, places(30, 50)));
  }

  @Test
  void knowsWhereItCannotBeDone() {
    assertNull(new Bays(0, 100, 40).divided(places(30, 75)));
    assertNull(new Bays(0, 100, 40).divided(List.of()));
  }

  @Test
  void keepsOutOfAPlaceEvenIfThatTakesOneMore() {
    List<Bays.Place> places = List.of(new Bays.Place(30, false), new Bays.Place(40, true), new Bays.Place(50, false));
    assertEquals(List.of(30.0, 50.0), cut(80, 40, places));
  }

  @Test
  void goesThroughAKeptPlaceWhereThereIsNoOther() {
    List<Bays.Place> places = List.of(new Bays.Place(30, false), new Bays.Place(40, true));
    assertEquals(List.of(40.0), cut(80, 40, places));
  }

  /** Thirty metres of 5 mm mosaic: 6000 joints to choose from. */
  @Test
  void copesWithVeryManyPlaces() {
    List<Bays.Place> places = IntStream.range(1, 6000).mapToObj(i -> new Bays.Place(i * 5.0, false)).toList();
    List<Double> cuts = cut(30_000, 3657.6, places);
    assertEquals(8, cuts.size());
    for (int i = 1; i < 8; i++) {
      assertEquals(30_000 / 9.0, cuts.get(i) - cuts.get(i - 1), 40);
    }
  }
}
