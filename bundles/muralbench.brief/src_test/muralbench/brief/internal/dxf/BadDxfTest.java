// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class BadDxfTest {
  private static final String SQUARE = Dxf.light(true, 0, 0, 0, 100, 0, 0, 100, 100, 0, 0, 100, 0);

  private static String path(byte[] file, String layer) throws InputException {
    return DxfOutline.path(file, layer, LengthUnit.MILLIMETRE, "/panels/0/outline/dxf", "wall.dxf");
  }

  static Stream<Arguments> drawings() {
    return Stream.of(
        // chains
        bad("open at (0 mm, 0 mm) and at (100 mm, 50.5 mm); 2 ends", Dxf.line(0, 0, 100, 0),
            Dxf.line(100, 0, 100, 50.5)),
        bad("2 ends are loose", Dxf.line(0, 0, 100, 0), Dxf.line(100, 0, 50, 50), Dxf.line(50, 50, 0, 0.02)),
        bad("open at", Dxf.light(false, 0, 0, 0, 100, 0, 0, 100, 100, 0)),
        bad("3 ends meet at (100 mm, 0 mm)", Dxf.line(0, 0, 100, 0), Dxf.line(100, 0, 50, 50),
            Dxf.line(50, 50, 0, 0), Dxf.line(100, 0, 200, 0)),
        bad("3 ends meet at (0 mm, 0 mm)", Dxf.line(0, 0, 100, 0), Dxf.line(100, 0, 0, 50), Dxf.line(0, 50, 0, 0),
            Dxf.line(0, 0, 100, 0)),
        bad("2 closed lines are drawn, on these layers: 0, OPENINGS", SQUARE,
            Dxf.circle(50, 50, 10).replace("8 0", "8 OPENINGS")),
        bad("there is no line, arc, circle or polyline"), bad("there is no line", "0 TEXT 1 empty"),
        // entities
        bad("what an outline cannot be made of: 1 INSERT, 2 SPLINE", SQUARE, "0 SPLINE 8 0", "0 INSERT 8 0 2 B",
            "0 SPLINE 8 0"),
        bad("the POLYLINE has no SEQEND", Dxf.polyline(1, 0, 0, 0, 9, 0, 0, 9, 9, 0).replace("0 SEQEND 8 0", SQUARE)),
        bad("POLYLINE does not lie in the plan", Dxf.polyline(8, 0, 0, 0, 9, 0, 0, 9, 9, 0)),
        bad("line 26: LWPOLYLINE does not lie in the plan", Dxf.circle(0, 0, 1), SQUARE + " 210 1.0 220 0 230 0"),
        bad("LINE does not lie in the plan", "0 LINE 10 0 20 0 30 0 11 9 21 9 31 5"),
        bad("the LWPOLYLINE has 4 vertices, but says another", SQUARE.replace("90 4", "90 5")),
        bad("LINE has no group 21", "0 LINE 10 0 20 0 11 9"), bad("CIRCLE has no group 40", "0 CIRCLE 10 0 20 0"),
        bad("LWPOLYLINE has no group 20", "0 LWPOLYLINE 70 1 10 0 10 5 20 5 10 9 20 9"),
        bad("CIRCLE has a radius", Dxf.circle(0, 0, 0)), bad("ARC has a radius", Dxf.arc(0, 0, -5, 0, 90)),
        bad("farther than 1000 m", Dxf.circle(2e6, 0, 10)),
        // numbers
        bad("line 20: \"NaN\" is not a number", Dxf.circle(Double.NaN, 0, 10)),
        bad("\"Infinity\" is not a number", Dxf.circle(0, 0, Double.POSITIVE_INFINITY)),
        bad("\"152,4\" is not a number", Dxf.circle(0, 0, 10).replace("40 10.0", "40 152,4")),
        bad("\"1e999\" is not a number", Dxf.circle(0, 0, 10).replace("40 10.0", "40 1e999")));
  }

  private static Arguments bad(String message, String... entities) {
    return Arguments.of(Dxf.units(4, entities), message);
  }

  static Stream<Arguments> files() {
    byte[] good = Dxf.units(4, SQUARE);
    byte[] binary = Arrays.copyOf("AutoCAD Binary DXF\r\n\u001a\0".getBytes(StandardCharsets.US_ASCII), 100);
    return Stream.of(Arguments.of(new byte[0], "the file is empty"), Arguments.of(binary, "binary DXF"),
        Arguments.of(Dxf.text("0 SECTION 2 ENTITIES " + SQUARE + " 0 ENDSEC"), "without its closing EOF"),
        Arguments.of(Dxf.file("0 SECTION 2 ENTITIES " + SQUARE), "without its closing EOF"),
        Arguments.of("<svg/>\n".getBytes(StandardCharsets.US_ASCII), "line 1: here a DXF file has the number"),
        Arguments.of(Dxf.file("0 LINE 8 0"), "the begin of a section"),
        Arguments.of(Arrays.copyOf(good, good.length / 2), "line "),
        Arguments.of(Dxf.units(11, SQUARE), "units of number 11"),
        Arguments.of(Dxf.units(4, SQUARE + (" " + Dxf.line(0, 0, 1, 1)).repeat(200_001)),
            "more than 200000 entities"));
  }

  @ParameterizedTest
  @MethodSource({"drawings", "files"})
  void saysWhatIsWrongAndWhatToDo(byte[] file, String message) {
    InputException e = assertThrows(InputException.class, () -> path(file, null));
    assertEquals("/panels/0/outline/dxf", e.place());
    assertTrue(e.problem().startsWith("wall.dxf"), e.problem());
    assertTrue(e.getMessage().contains(message), e.getMessage());
    assertTrue(e.remedy().endsWith(".") && !e.problem().endsWith("."), e.getMessage());
  }

  @Test
  void truncatedAnywhere() {
    byte[] good = Dxf.units(4, SQUARE);
    for (int length = 0; length < good.length - 4; length++) {
      byte[] start = Arrays.copyOf(good, length);
      assertThrows(InputException.class, () -> path(start, null), "at " + length);
    }
  }

  @Test
  void layerThatIsNotThere() {
    byte[] file = Dxf.units(4, SQUARE, Dxf.circle(0, 0, 5).replace("8 0", "8 A"));
    InputException e = assertThrows(InputException.class, () -> path(file, "PANEL"));
    assertTrue(e.getMessage().contains("nothing is drawn on layer PANEL"), e.getMessage());
    assertTrue(e.remedy().contains("drawn: 0, A"), e.getMessage());
    byte[] twice = Dxf.units(4, SQUARE, Dxf.circle(50, 50, 5));
    e = assertThrows(InputException.class, () -> path(twice, "0"));
    assertTrue(e.problem().contains("2 closed lines are drawn on this layer"), e.getMessage());
  }

  @Test
  void nothingButInputExceptionsEscapeFromDamagedFiles() {
    Random random = new Random(7);
    byte[] good = Dxf.units(4, SQUARE, Dxf.polyline(1, 0, 0, 1, 9, 0, 0), Dxf.arc(0, 0, 5, 0, 90));
    assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
      for (int round = 0; round < 5000; round++) {
        byte[] damaged = good.clone();
        for (int i = 0; i < 3; i++) {
          damaged[random.nextInt(damaged.length)] = (byte) (random.nextBoolean() ? random.nextInt() : '0');
        }
        try {
          path(damaged, null);
        } catch (InputException e) {
          assertEquals("/panels/0/outline/dxf", e.place());
        }
      }
    });
  }
}
