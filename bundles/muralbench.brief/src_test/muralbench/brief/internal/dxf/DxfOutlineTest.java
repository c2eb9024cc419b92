// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Areas against closed forms; bulge = tan(included angle / 4), DXF reference of AutoCAD, LWPOLYLINE group 42. */
class DxfOutlineTest {
  private static final double ARCH = 1200 * 1500 + Math.PI * 600 * 600 / 2;

  private static String path(byte[] file, String layer) throws InputException {
    return DxfOutline.path(file, layer, LengthUnit.MILLIMETRE, "/panels/0/outline/dxf", "wall.dxf");
  }

  private static double area(String... entities) throws InputException {
    return Dxf.area(path(Dxf.units(4, entities), null));
  }

  @ParameterizedTest
  @CsvSource({"arch-2018.dxf, panel", "arch-2000-in.dxf,", "arch-r12.dxf,", "arch-writer.dxf, PANEL",
      "arch-writer.dxf,"})
  void readsDrawingsOfOtherPrograms(String name, String layer) throws Exception {
    try (var in = DxfOutlineTest.class.getResourceAsStream("drawings/" + name)) {
      assertEquals(ARCH, Math.abs(Dxf.area(path(in.readAllBytes(), layer))), 1e-6 * ARCH);
    }
  }

  @Test
  void linesAreJoinedInAnyOrderAndDirection() throws Exception {
    String path = path(Dxf.units(4, Dxf.line(0, 0, 100, 0), Dxf.line(0, 50, 0, 0), Dxf.line(100, 0, 100, 50),
        Dxf.line(100, 50, 0, 50)), null);
    assertEquals("M 0 0 L 100 0 L 100 50 L 0 50 Z", path);
  }

  @Test
  void endsWithinAHundredthOfAMillimetreMeet() throws Exception {
    assertEquals("M 0 0 L 100 0.009 L 50 50 Z", path(Dxf.units(4, Dxf.line(0, 0, 100, 0),
        Dxf.line(100, 0.009, 50, 50), Dxf.line(50, 50, 50, 50.005), Dxf.line(50, 50, 0, 0.005)), null));
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "1, 25.4", "2, 304.8", "4, 1", "5, 10", "6, 1000", "9, 0.0254", "14, 100"})
  void unitsOfTheDrawingAreObeyed(int units, double millimetres) throws Exception {
    double side = 100 * millimetres;
    assertEquals(side * side / 2, Dxf.area(path(Dxf.units(units,
        Dxf.light(true, 0, 0, 0, 100, 0, 0, 0, 100, 0)), null)), 1e-9 * side * side);
  }

  @Test
  void aDrawingWithoutUnitsIsInThoseOfTheBrief() throws Exception {
    String path = DxfOutline.path(Dxf.entities(Dxf.light(true, 0, 0, 0, 10, 0, 0, 10, 10, 0)), null, LengthUnit.INCH,
        "/p", "wall.dxf");
    assertEquals("M 0 0 L 254 0 L 254 254 Z", path);
  }

  @Test
  void aCircleIsACircle() throws Exception {
    assertEquals(Math.PI * 300 * 300, area(Dxf.circle(-100, 900, 300)), 1e-6);
    assertEquals(Math.PI * 300 * 300, area(Dxf.arc(0, 0, 300, 30, 390)), 1e-6);
  }

  /** A segment of the angle a over a chord c has the radius r = c / (2 sin(a / 2)) and the area r² (a - sin a) / 2. */
  @ParameterizedTest
  @CsvSource({"10", "90", "179.9", "180", "180.1", "230", "271", "300", "359"})
  void bulgesAreCircularSegments(double degrees) throws Exception {
    double a = Math.toRadians(degrees);
    double radius = 1000 / (2 * Math.sin(a / 2));
    double segment = radius * radius * (a - Math.sin(a)) / 2;
    double bulge = Math.tan(a / 4);
    assertEquals(segment, area(Dxf.light(true, 0, 0, bulge, 1000, 0, 0)), 1e-7 * segment);
    assertEquals(-segment, area(Dxf.polyline(1, 0, 0, -bulge, 1000, 0, 0)), 1e-7 * segment);
  }

  /** Quarter arcs round a square of side c make the circle of radius c / sqrt 2; inward they leave the rest. */
  @Test
  void bulgesOutAndIn() throws Exception {
    double quarter = Math.sqrt(2) - 1;
    double radius = 500 * Math.sqrt(2);
    double segments = Math.PI * radius * radius - 1e6;
    assertEquals(1e6 + segments, area(Dxf.light(true, 0, 0, quarter, 1000, 0, quarter, 1000, 1000, quarter, 0, 1000,
        quarter)), 1e-5);
    assertEquals(1e6 - segments, area(Dxf.light(true, 0, 0, -quarter, 1000, 0, -quarter, 1000, 1000, -quarter, 0, 1000,
        -quarter)), 1e-5);
  }

  @Test
  void arcsRunCounterClockwiseAcrossZero() throws Exception {
    // Right half of a circle closed by a line: from 270 to 90 degrees.
    assertEquals(Math.PI * 400 * 400 / 2, area(Dxf.arc(0, 0, 400, 270, 90), Dxf.line(0, -400, 0, 400)), 1e-6);
  }

  @Test
  void whatIsSeenFromBehindIsMirrored() throws Exception {
    String seen = Dxf.light(true, 0, 0, 0, -1000, 0, 0.5, -1000, 500, 0) + " 210 0.0 220 0.0 230 -1.0";
    assertEquals("M 0 0 L 1000 0 A 312.5 312.5 0 0 0 1000 500 Z", path(Dxf.units(4, seen), null));
    String arc = Dxf.arc(0, 0, 400, 0, 180) + " 230 -1.0";
    assertEquals(Math.PI * 400 * 400 / 2, Math.abs(area(arc, Dxf.line(-400, 0, 400, 0))), 1e-6);
    String quarter = Dxf.arc(0, 0, 400, 0, 90) + " 230 -1.0";
    assertEquals(Math.PI * 400 * 400 / 4,
        Math.abs(area(quarter, Dxf.line(0, 400, 0, 0), Dxf.line(0, 0, -400, 0))), 1e-6);
  }

  @Test
  void polylinesMeetArcsAndClosingVerticesCountOnce() throws Exception {
    assertEquals(ARCH, area(Dxf.light(false, 0, 1500, 0, 0, 0, 0, 1200, 0, 0, 1200, 1500, 0),
        Dxf.arc(600, 1500, 600, 0, 180)), 1e-6);
    assertEquals("M 0 0 L 100 0 L 0 100 Z", path(Dxf.units(4, Dxf.light(false, 0, 0, 0, 100, 0, 0, 100, 0, 0, 0, 100, 0,
        0, 0.001, 0)), null));
  }

  @Test
  void notesPaperAndOtherLayersArePassedOver() throws Exception {
    byte[] file = Dxf.units(4, "0 TEXT 8 0 1 panel", "0 DIMENSION 8 0", "0 SPLINE 8 OTHER",
        "0 LINE 67 1 10 1 20 1 11 2 21 2", "0 LINE 8 0 10 5 20 5 11 5 21 5", Dxf.circle(0, 0, 10));
    assertTrue(path(file, "0").startsWith("M 10 0 A 10 10 "));
  }

  @Test
  void layersOfOldFilesAreUnescaped() throws Exception {
    byte[] file = Dxf.entities(Dxf.circle(0, 0, 10).replace("8 0", "8 H\\U+00F6he"), Dxf.circle(50, 0, 10));
    assertTrue(path(file, "höhe").startsWith("M 10 0 A 10 10 "));
    byte[] windows = "0\nSECTION\n2\nENTITIES\n0\nCIRCLE\n8\nHöhe\n10\n0\n20\n0\n40\n5\n0\nENDSEC\n0\nEOF"
        .getBytes(StandardCharsets.ISO_8859_1);
    assertTrue(path(windows, "Höhe").startsWith("M 5 0 A 5 5 "));
  }
}
