// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import muralbench.base.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SvgOutlineTest {
  private static final String PATH = "<path id='outline' d='M0 0H9V9Z'/>";

  private static SvgOutline read(String svg, String id) throws InputException {
    return SvgOutline.of(svg.getBytes(StandardCharsets.UTF_8), id, "/panels/0/outline/svg", "wall.svg");
  }

  private static String svg(String attributes, String content) {
    return "<svg xmlns='http://www.w3.org/2000/svg' " + attributes + ">" + content + "</svg>";
  }

  /** Where the user point (100, 50) comes to lie on the wall, by hand: 1 in = 25.4 mm = 96 px = 72 pt = 6 pc. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "width='1200mm' height='600mm' viewBox='0 0 1200 600'|||100|550",
    "width='120cm' height='60cm' viewBox='0 0 240 120'|||500|350",
    "width='96in' height='48in' viewBox='-20 -10 960 480'|||304.8|1066.8",
    "width='960' height='480'|||26.4583333333|113.7708333333", "width='960px' height='480px'|||26.4583333333|113.7708333333",
    "viewBox='0 0 960 480'|||26.4583333333|113.7708333333",
    "width='100%' height='720pt' viewBox='0 0 960 480'|||52.9166666667|227.5416666667",
    "width='100mm' viewBox='0,0,200,100'|||50|25", "height='6pc' width='48pc' viewBox='0 0 800 100'|||25.4|12.7",
    "width='400Q' height='400Q' viewBox='0 0 400 400'|||25|87.5",
    "width='1200mm' height='600mm' viewBox='0 0 1200 600'|translate(10 20)||110|530",
    "width='1200mm' height='600mm' viewBox='0 0 1200 600'|translate(10)|scale(2)|210|500",
    "width='1200mm' height='600mm' viewBox='0 0 1200 600'|scale(2, 2)|translate(10,20)|220|460",
    "width='1200mm' height='600mm' viewBox='0 0 1200 600'|matrix(3,0,0,3,5,-5) translate(1 1)|scale(.5)|158|527"})
  void userUnitsHaveTheirPlaceOnTheWall(String size, String outer, String inner, double x, double y) throws Exception {
    String content = "<g transform='" + (outer == null ? "" : outer) + "'>"
        + PATH.replace("<path", "<path transform='" + (inner == null ? "" : inner) + "'") + "</g>";
    SvgOutline outline = read(svg(size, content), "outline");
    assertEquals(x, (100 - outline.left().doubleValue()) * outline.scale().doubleValue(), 1e-6);
    assertEquals(y, (outline.bottom().doubleValue() - 50) * outline.scale().doubleValue(), 1e-6);
    assertEquals("M0 0H9V9Z", outline.data());
  }

  @Test
  void theOnlyPathThatIsDrawnNeedsNoId() throws Exception {
    String content = "<defs><path id='tip' d='M0 0Z'/></defs><clipPath><path d='M0 0Z'/></clipPath>" + PATH;
    assertEquals("M0 0H9V9Z", read(svg("viewBox='0 0 9 9'", content), null).data());
    assertEquals("M0 0Z", read(svg("viewBox='0 0 9 9'", content), "tip").data());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
    "|<rect id='outline'/><path id='a' d=''/>|outline|no path with the id \"outline\". Use one of these",
    "|<rect/>|~~|there is no path", "|<path id='a'/><path id='b'/>|~~|2 paths are drawn. Give the id of the one",
    "|<path id='a'/><path id='a'/>|a|more than one path has the id \"a\"",
    "|<g transform='rotate(30)'><path id='a'/></g>|a|turned, mirrored or stretched by rotate",
    "|<path id='a' transform='scale(1 -1)'/>|a|stretched by scale", "|<path id='a' transform='scale(0)'/>|a|by scale",
    "|<path id='a' transform='matrix(0 1 -1 0 0 0)'/>|a|by matrix", "|<path id='a' transform='nonsense'/>|a|by nonsense",
    "|<svg><path id='a'/></svg>|a|a drawing inside the drawing",
    "width='90mm' height='91mm' viewBox='0 0 9 9'|<path/>|~~|differently across and up",
    "viewBox='0 0 9'|<path/>|~~|the viewBox cannot be read", "viewBox='0 0 9 NaN'|<path/>|~~|the viewBox cannot",
    "viewBox='0 0 -9 9'|<path/>|~~|the viewBox cannot be read", "width='9'|<path/>|~~|has no height",
    "height='100%'|<path/>|~~|has no height", "height='-9mm'|<path/>|~~|has no height"})
  void saysWhatIsWrongAndWhatToDo(String size, String content, String id, String message) {
    String attributes = size == null ? "viewBox='0 0 9 9'" : size;
    assertRefused(svg(attributes, content), id.isEmpty() ? null : id, message);
  }

  @Test
  void otherAndDamagedFiles() {
    assertRefused("<!DOCTYPE svg [<!ENTITY a SYSTEM 'file:///etc/hostname'>]>" + svg("", PATH), null, "it has a DOCTYPE");
    assertRefused("<html/>", null, "not an SVG drawing");
    assertRefused("<svg viewBox='0 0 9 9'>" + PATH + "</svg>", null, "not an SVG drawing");
    assertRefused("", null, "not whole XML, at line 1");
    String good = svg("viewBox='0 0 9 9'", "\n" + PATH);
    for (int length = 0; length < good.length() - 1; length++) {
      assertRefused(good.substring(0, length), null, "not whole XML, at line ");
    }
  }

  @Test
  void deepNestingIsNoProblem() throws Exception {
    char[] deep = new char[50_000];
    Arrays.fill(deep, 'g');
    String open = new String(deep).replace("g", "<g>");
    assertEquals("M0 0H9V9Z", read(svg("viewBox='0 0 9 9'", open + PATH + open.replace("<", "</")), null).data());
  }

  private static void assertRefused(String svg, String id, String message) {
    InputException e = assertThrows(InputException.class, () -> read(svg, id));
    assertEquals("/panels/0/outline/svg", e.place());
    assertTrue(e.problem().startsWith("wall.svg: ") && e.getMessage().contains(message), e.getMessage());
  }
}
