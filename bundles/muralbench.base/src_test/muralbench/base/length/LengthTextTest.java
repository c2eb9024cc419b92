// SPDX-License-Identifier: EPL-2.0
package muralbench.base.length;

import static muralbench.base.length.LengthUnit.INCH;
import static muralbench.base.length.LengthUnit.MILLIMETRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Locale;
import muralbench.base.length.LengthFormatException.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTextTest {
  /** Expected millimetres worked out by hand from 1 in = 25.4 mm, 1 ft = 304.8 mm (ISO 31-1, exact). */
  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
    "5 ft 3 1/2 in|1612.9", "5' 3-1/2\"|1612.9", "5'-3 1/2\"|1612.9", "5′ 3½″|1612.9", "5’ 3½”|1612.9",
    "5'3-1/2''|1612.9", "5 feet 3.5 inches|1612.9", "5FT 3IN|1600.2", "63.5 in|1612.9", "63-1/2|1612.9",
    "63 1/2|1612.9", "63½|1612.9", "1/8|3.175", "⅛|3.175", "3⁄8 in|9.525", "¼|6.35", "¾ in|19.05",
    "7/12|14.8166666666666667",
    "1600 mm|1600", "1.6 m|1600", "160 cm|1600", "160cm|1600", "1600 millimetres|1600", "5 ft|1524", "5'|1524",
    "5 ft.|1524", "1 ft - 3 in|381", "1 ft-3 in|381", "1'- 3\"|381", "63 - 1/2|1612.9", "5 IN|127", "5 Ft|1524",
    "5 Metres|5000", "5.5 ft|1676.4", "5' 6|1676.4", "5' 14\"|1879.6", "1/2 ft|152.4", "0|0", "0 in|0", ".5|12.7",
    "5.|127", "-3-1/2|-88.9", "−3½|-88.9", "+6|152.4", "- 6 in|-152.4", "-5 ft 3 in|-1600.2", "5/4|31.75",
    "  6   in  |152.4", "6\u00a0in|152.4", "6 in.|152.4"})
  void readsWhatPeopleType(String text, double millimetres) throws Exception {
    assertEquals(millimetres, LengthText.parse(text, INCH));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
    "1600|1600", "1.5|1.5", "1/2|0.5", "5' 6|1676.4", "6 in|152.4", "1 m|1000"})
  void bareNumberIsInTheUnitGiven(String text, double millimetres) throws Exception {
    assertEquals(millimetres, LengthText.parse(text, MILLIMETRE));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', nullValues = "null", value = {
    "null|EMPTY", "~~|EMPTY", "   |EMPTY", "wide|UNREADABLE", "5 6|UNREADABLE", "5-6|UNREADABLE", "--5|UNREADABLE",
    "3 in 5 ft|UNREADABLE", "5.5 ft 3 in|UNREADABLE", "1/2 ft 3 in|UNREADABLE", "5 m 3 in|UNREADABLE",
    "5 ft 3 mm|UNREADABLE", "1/0|UNREADABLE", "3-5/4|UNREADABLE", "3.5-1/2|UNREADABLE", "1e3|UNREADABLE",
    "1e-3 mm|UNREADABLE", "1,5|UNREADABLE", "1.2.3|UNREADABLE", "٦|UNREADABLE", "in|UNREADABLE", "3²|UNREADABLE",
    "6 furlongs|UNKNOWN_UNIT", "6 px|UNKNOWN_UNIT", "6 mmm|UNKNOWN_UNIT", "5 yd 3 in|UNKNOWN_UNIT",
    "NaN|UNREADABLE", "Infinity|UNREADABLE", "-inf|UNREADABLE", "∞|UNREADABLE", "1000.001 m|OUT_OF_RANGE",
    "-1000.001 m|OUT_OF_RANGE", "5 Mm|UNKNOWN_UNIT", "5 MM|UNKNOWN_UNIT", "5 Cm|UNKNOWN_UNIT", "5 M|UNKNOWN_UNIT",
    "1 ft -3 in|UNREADABLE", "1' -3\"|UNREADABLE", "63 -1/2 in|UNREADABLE", "5 ft +3 in|UNREADABLE"})
  void refusesWhatIsNoLength(String text, Problem problem) {
    LengthFormatException e = assertThrows(LengthFormatException.class, () -> LengthText.parse(text, INCH));
    assertEquals(problem, e.problem());
    assertEquals(text == null ? "" : text, e.text());
  }

  @ParameterizedTest
  @EnumSource(LengthUnit.class)
  void messageEndsWithAnExampleThatIsRead(LengthUnit unit) throws Exception {
    LengthFormatException e = assertThrows(LengthFormatException.class, () -> LengthText.parse("wide", unit));
    assertTrue(e.getMessage().endsWith(e.example()), e.getMessage());
    assertTrue(e.getMessage().contains("wide"), e.getMessage());
    assertTrue(LengthText.parse(e.example(), unit) > 1500);
  }

  @Test
  void commaIsAnsweredWithTheDecimalPoint() {
    LengthFormatException e = assertThrows(LengthFormatException.class, () -> LengthText.parse("1,5", MILLIMETRE));
    assertTrue(e.getMessage().contains("point"), e.getMessage());
  }

  @Test
  void unknownUnitIsNamedWithTheKnownOnes() {
    LengthFormatException e = assertThrows(LengthFormatException.class, () -> LengthText.parse("6 px", MILLIMETRE));
    assertTrue(e.getMessage().contains("\"px\"") && e.getMessage().contains("cm"), e.getMessage());
  }

  @Test
  void noNumberAndTooLongAreToldApart() throws Exception {
    assertEquals(1e6, LengthText.parse("1000 m", MILLIMETRE));
    LengthFormatException none = assertThrows(LengthFormatException.class, () -> LengthText.parse("∞", MILLIMETRE));
    assertTrue(none.getMessage().startsWith("\"∞\" is not a number."), none.getMessage());
    LengthFormatException far = assertThrows(LengthFormatException.class, () -> LengthText.parse("2000 m", INCH));
    assertTrue(far.getMessage().startsWith("\"2000 m\" is over 1 km;"), far.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1", "1 ", "1/", "-", "'", "a", "1 in "})
  void longTextIsRefusedQuicklyAndShortened(String bit) {
    String text = bit.repeat(100_000) + "?";
    LengthFormatException e = assertTimeoutPreemptively(Duration.ofSeconds(60),
        () -> assertThrows(LengthFormatException.class, () -> LengthText.parse(text, INCH)));
    assertTrue(e.getMessage().length() < 300, e.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva"})
  void noLocaleChangesAnything(String tag) throws Exception {
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.forLanguageTag(tag));
    try {
      assertEquals(1612.9, LengthText.parse("5 FT 3.5 INCHES", INCH));
      assertEquals("138.5 mm", LengthText.shown(138.5, MILLIMETRE));
      assertEquals("5 ft 3-1/2 in", LengthText.shownInFeet(1612.9, INCH));
      assertEquals("0.1 mm", LengthText.exact(0.1, MILLIMETRE));
    } finally {
      Locale.setDefault(before);
    }
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "1612.9|63-1/2 in", "0|0 in", "-0.0|-0 in", "3.175|1/8 in", "-88.9|-3-1/2 in", "0.396875|1/64 in",
    "1611.709375|63-29/64 in", "1|0.03937007874015748 in", "1e9|39370078.74015748 in"})
  void exactInInches(double millimetres, String text) {
    assertEquals(text, LengthText.exact(millimetres, INCH));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {"1612.9|1612.9 mm", "0|0 mm", "1e-5|0.00001 mm", "1e9|1000000000 mm",
    "-2|-2 mm"})
  void exactInMillimetres(double millimetres, String text) {
    assertEquals(text, LengthText.exact(millimetres, MILLIMETRE));
  }

  /** 1/16 in is 1.5875 mm; halves away from zero. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "138.1125|5-7/16 in", "138|5-7/16 in", "0|0 in", "0.7|0 in", "-0.7|0 in", "0.79375|1/16 in", "-0.79375|-1/16 in",
    "0.7937499999999|1/16 in", "152.4|6 in", "152|6 in", "1612.9|63-1/2 in", "-88.9|-3-1/2 in"})
  void showsSixteenths(double millimetres, String text) {
    assertEquals(text, LengthText.shown(millimetres, INCH));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "138.5|138.5 mm", "138.7|138.5 mm", "138.75|139 mm", "-138.75|-139 mm", "0.2|0 mm", "-0.2|0 mm", "1600|1600 mm"})
  void showsHalfMillimetres(double millimetres, String text) {
    assertEquals(text, LengthText.shown(millimetres, MILLIMETRE));
    assertEquals(text, LengthText.shownInFeet(millimetres, MILLIMETRE));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "1612.9|5 ft 3-1/2 in", "1524|5 ft 0 in", "609.6|2 ft 0 in", "608.0125|23-15/16 in", "608.8125|2 ft 0 in",
    "-1612.9|-5 ft 3-1/2 in", "304.8|12 in", "0|0 in"})
  void showsFeetFromTwentyFourInches(double millimetres, String text) {
    assertEquals(text, LengthText.shownInFeet(millimetres, INCH));
  }

  @Test
  void rounds() {
    assertEquals(138.1125, LengthText.rounded(138, INCH));
    assertEquals(138.5, LengthText.rounded(138.6, MILLIMETRE));
    assertEquals(0.0, LengthText.rounded(-0.1, MILLIMETRE));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void nothingIsShownForWhatIsNoNumber(double value) {
    assertThrows(IllegalArgumentException.class, () -> LengthText.exact(value, INCH));
    assertThrows(IllegalArgumentException.class, () -> LengthText.shown(value, INCH));
    assertThrows(IllegalArgumentException.class, () -> LengthText.rounded(value, INCH));
  }

  @Test
  void exactKeepsToTheRange() {
    assertThrows(IllegalArgumentException.class, () -> LengthText.exact(Math.nextUp(1e9), MILLIMETRE));
  }

  @Test
  void fineLengthsAreSixtyFourthsOrThousandths() {
    assertEquals("9/64 in", LengthText.fine(9 * 25.4 / 64, LengthUnit.INCH));
    assertEquals("0.143 in", LengthText.fine(25.4 / 7, LengthUnit.INCH));
    assertEquals("1-1/16 in", LengthText.fine(1.0625 * 25.4, LengthUnit.INCH));
    assertEquals("3.63 mm", LengthText.fine(25.4 / 7, LengthUnit.MILLIMETRE));
    assertEquals("-0.5 mm", LengthText.fine(-0.5, LengthUnit.MILLIMETRE));
  }
}
