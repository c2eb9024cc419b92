// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.svg;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import muralbench.base.InputException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Where user units of a drawing lie on the wall: x is (x - left) scale and y is (bottom - y) scale, mm, so that the lower
 * left corner of the drawing is the origin.
 *
 * @param scale millimetres for one user unit
 * @param left user x of the left edge of the drawing
 * @param bottom user y of its lower edge
 */
record SvgPlace(BigDecimal scale, BigDecimal left, BigDecimal bottom) {
  /** How much the scales across and up may differ. */
  private static final BigDecimal STRETCH = new BigDecimal("1e-5");
  private static final Pattern STEP = Pattern.compile("\\s*,?\\s*([a-zA-Z]+)\\s*\\(([^)]*)\\)\\s*");

  /** The place of the outermost units: size and viewBox of the drawing, 96 px to the inch where it has no size. */
  static SvgPlace of(Element svg, SvgProblem problem) throws InputException {
    Optional<BigDecimal> width = SvgNumber.length(svg.getAttribute("width"));
    Optional<BigDecimal> height = SvgNumber.length(svg.getAttribute("height"));
    if (!svg.hasAttribute("viewBox")) {
      BigDecimal bottom = height.orElseThrow(() -> problem.of("height")).divide(SvgNumber.pixel(), SvgNumber.DIGITS);
      return new SvgPlace(SvgNumber.pixel(), BigDecimal.ZERO, bottom);
    }
    List<BigDecimal> box = SvgNumber.list(svg.getAttribute("viewBox"));
    if (box.size() != 4 || box.get(2).signum() <= 0 || box.get(3).signum() <= 0) {
      throw problem.of("viewBox");
    }
    Optional<BigDecimal> across = width.map(length -> length.divide(box.get(2), SvgNumber.DIGITS));
    Optional<BigDecimal> up = height.map(length -> length.divide(box.get(3), SvgNumber.DIGITS));
    BigDecimal scale = across.or(() -> up).orElse(SvgNumber.pixel());
    if (up.orElse(scale).subtract(scale).abs().compareTo(scale.multiply(STRETCH)) > 0) {
      throw problem.of("stretched");
    }
    return new SvgPlace(scale, box.get(0), box.get(1).add(box.get(3)));
  }

  /** The place of the units inside an element, all transforms on the way to it taken in. */
  SvgPlace inside(Element element, SvgProblem problem) throws InputException {
    Deque<Element> way = new ArrayDeque<>();
    for (Node node = element; node instanceof Element step; node = node.getParentNode()) {
      way.push(step);
    }
    SvgPlace place = this;
    Element outermost = way.peek();
    for (Element step : way) {
      if (step != outermost && step.getLocalName().equals("svg")) {
        throw problem.of("nested");
      }
      place = place.transformed(step.getAttribute("transform"), problem);
    }
    return place;
  }

  private SvgPlace transformed(String transform, SvgProblem problem) throws InputException {
    SvgPlace place = this;
    Matcher steps = STEP.matcher(transform);
    int at = 0;
    while (at < transform.length() && steps.find(at) && steps.start() == at) {
      place = place.step(steps.group(1), SvgNumber.list(steps.group(2)), problem);
      at = steps.end();
    }
    if (!transform.substring(at).isBlank()) {
      throw problem.of("transform", "transform", transform);
    }
    return place;
  }

  private SvgPlace step(String name, List<BigDecimal> values, SvgProblem problem) throws InputException {
    int count = values.size();
    if (name.equals("translate") && (count == 1 || count == 2)) {
      return moved(BigDecimal.ONE, values.get(0), count == 2 ? values.get(1) : BigDecimal.ZERO);
    }
    boolean even = count == 1 || count == 2 && values.get(0).compareTo(values.get(1)) == 0;
    if (name.equals("scale") && even && values.get(0).signum() > 0) {
      return moved(values.get(0), BigDecimal.ZERO, BigDecimal.ZERO);
    }
    boolean upright = count == 6 && values.get(1).signum() == 0 && values.get(2).signum() == 0
        && values.get(0).compareTo(values.get(3)) == 0 && values.get(0).signum() > 0;
    if (name.equals("matrix") && upright) {
      return moved(values.get(0), values.get(4), values.get(5));
    }
    throw problem.of("transform", "transform", name);
  }

  /** With user units that are {@code factor} of those here, moved by x and y. */
  private SvgPlace moved(BigDecimal factor, BigDecimal x, BigDecimal y) {
    return new SvgPlace(scale.multiply(factor, SvgNumber.DIGITS), left.subtract(x).divide(factor, SvgNumber.DIGITS),
        bottom.subtract(y).divide(factor, SvgNumber.DIGITS));
  }
}
