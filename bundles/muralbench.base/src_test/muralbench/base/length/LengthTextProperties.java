// SPDX-License-Identifier: EPL-2.0
package muralbench.base.length;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.IntRange;

class LengthTextProperties {
  /** Doubles of every size the range allows, by their bits, and ordinary lengths. */
  @Provide
  Arbitrary<Double> lengths() {
    Arbitrary<Double> anyBits = Arbitraries.longs()
        .map(Double::longBitsToDouble).filter(d -> Math.abs(d) <= LengthText.LIMIT);
    Arbitrary<Double> ordinary = Arbitraries.doubles().between(-20000, 20000).ofScale(15);
    return Arbitraries.frequencyOf(Tuple.of(1, anyBits), Tuple.of(1, ordinary));
  }

  @Property(tries = 5000)
  void exactTextGivesTheSameDouble(@ForAll("lengths") double length, @ForAll LengthUnit unit) throws Exception {
    String text = LengthText.exact(length, unit);
    assertEquals(length, LengthText.parse(text, LengthUnit.MILLIMETRE), text);
    assertEquals(length, LengthText.parse(text, LengthUnit.INCH), text);
  }

  @Property
  void sixtyFourthsArePrintedAsFractions(@ForAll @IntRange(min = 0, max = 1_000_000) int parts) throws Exception {
    double length = LengthText.parse(parts + "/64", LengthUnit.INCH);
    String text = LengthText.exact(length, LengthUnit.INCH);
    assertTrue(text.matches("\\d+ in|(\\d+-)?\\d+/(2|4|8|16|32|64) in"), text);
    assertEquals(length, LengthText.parse(text, LengthUnit.INCH));
  }

  @Property
  void shownIsTheRoundedLengthAndNoFurtherThanHalfAStep(@ForAll("lengths") double length, @ForAll LengthUnit unit)
      throws Exception {
    double rounded = LengthText.rounded(length, unit);
    double half = unit == LengthUnit.INCH ? 25.4 / 32 : 0.25;
    assertTrue(Math.abs(length - rounded) <= half + 1e-6, () -> length + " became " + rounded);
    if (Math.abs(rounded) <= LengthText.LIMIT) {
      assertEquals(rounded, LengthText.parse(LengthText.shown(length, unit), unit));
      assertEquals(rounded, LengthText.parse(LengthText.shownInFeet(length, unit), unit));
    }
  }

  /** Foreign check: plain division in double agrees to a few units in the last place. */
  @Property
  void fractionsOfAnyDenominatorAreRead(@ForAll @IntRange(min = 0, max = 500) int whole,
      @ForAll @IntRange(min = 2, max = 997) int denominator, @ForAll @IntRange(min = 1) int any) throws Exception {
    int numerator = any % denominator;
    double length = LengthText.parse(whole + "-" + numerator + "/" + denominator, LengthUnit.INCH);
    assertEquals((whole + (double) numerator / denominator) * 25.4, length, 1e-11);
  }
}
