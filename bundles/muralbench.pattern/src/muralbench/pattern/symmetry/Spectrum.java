// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * The Fourier coefficients of the colours of a repeating drawing: the integral of exp(-2 pi i (h x + k y)) over the
 * areas of one cell, x and y in edges of the cell, divided by the area of the cell. They depend on nothing but where
 * each colour is: not on how areas are divided, nor on the cell they were drawn in. The integrals over areas are taken
 * as line integrals along their edges (Green's theorem) with Gauss-Legendre quadrature.
 */
final class Spectrum {
  /** How many waves per cell are looked at each way. */
  static final int REACH = 6;

  private static final int SIDE = 2 * REACH + 1;
  /** Nodes and weights of eight-point Gauss-Legendre quadrature on -1..1; Abramowitz and Stegun, table 25.4. */
  private static final double[] NODES =
      {0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363};
  private static final double[] WEIGHTS =
      {0.3626837833783620, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763};
  /** Waves per stretch for which eight points are as good as exact. */
  private static final double WAVES = 0.5;

  private record Node(Vec at, double dx, double dy) {}

  private final List<double[][]> colours = new ArrayList<>();

  /** The spectrum of patches that, with all their copies shifted by cells, make up the drawing. */
  Spectrum(Cell cell, List<Patch> patches) {
    Map<String, double[][]> byColour = new TreeMap<>();
    for (Patch patch : patches) {
      double[][] sum = byColour.computeIfAbsent(patch.colour(), colour -> new double[SIDE * SIDE][2]);
      double area = patch.contours().stream().mapToDouble(Contour::signedArea).sum();
      add(sum, nodes(cell, patch), Math.signum(area));
    }
    colours.addAll(byColour.values());
  }

  int colours() {
    return colours.size();
  }

  double re(int colour, int h, int k) {
    return colours.get(colour)[index(h, k)][0];
  }

  double im(int colour, int h, int k) {
    return colours.get(colour)[index(h, k)][1];
  }

  double size(int colour, int h, int k) {
    return Math.hypot(re(colour, h, k), im(colour, h, k));
  }

  static boolean within(int h, int k) {
    return Math.abs(h) <= REACH && Math.abs(k) <= REACH;
  }

  private static int index(int h, int k) {
    return (h + REACH) * SIDE + k + REACH;
  }

  private static List<Node> nodes(Cell cell, Patch patch) {
    List<Node> nodes = new ArrayList<>();
    for (Contour contour : patch.contours()) {
      for (Segment segment : contour.segments()) {
        double waves = REACH * Math.max(span(cell, segment, 1), span(cell, segment, -1));
        int parts = (int) Math.ceil(waves / WAVES) + (segment.straight() ? 0 : 8);
        for (int i = 0; i < Math.max(1, parts); i++) {
          addNodes(nodes, cell, segment, (double) i / Math.max(1, parts), 1.0 / Math.max(1, parts));
        }
      }
    }
    return nodes;
  }

  /** How far one diagonal of the box around a segment reaches, in edges of the cell. */
  private static double span(Cell cell, Segment segment, int sense) {
    Vec span = cell.fractions(new Vec(segment.box().width(), sense * segment.box().height()));
    return Math.abs(span.x()) + Math.abs(span.y());
  }

  private static void addNodes(List<Node> nodes, Cell cell, Segment segment, double from, double width) {
    for (int i = 0; i < NODES.length; i++) {
      for (int side = -1; side <= 1; side += 2) {
        double t = from + width * (1 + side * NODES[i]) / 2;
        Vec step = cell.fractions(segment.tangent(t)).times(WEIGHTS[i] * width / 2);
        nodes.add(new Node(cell.fractions(segment.at(t)), step.x(), step.y()));
      }
    }
  }

  private static void add(double[][] sum, List<Node> nodes, double sign) {
    for (int h = -REACH; h <= REACH; h++) {
      for (int k = -REACH; k <= REACH; k++) {
        double[] value = h == 0 && k == 0 ? area(nodes) : wave(nodes, h, k);
        sum[index(h, k)][0] += sign * value[0];
        sum[index(h, k)][1] += sign * value[1];
      }
    }
  }

  private static double[] area(List<Node> nodes) {
    double area = 0;
    for (Node node : nodes) {
      area += node.at.x() * node.dy;
    }
    return new double[] {area, 0};
  }

  /** The area integral of the wave: along the edge, i/q times the wave, against the coordinate with the larger q. */
  private static double[] wave(List<Node> nodes, int h, int k) {
    boolean alongX = Math.abs(h) >= Math.abs(k);
    double q = 2 * Math.PI * (alongX ? h : -k);
    double re = 0;
    double im = 0;
    for (Node node : nodes) {
      double phase = 2 * Math.PI * (h * node.at.x() + k * node.at.y());
      double step = (alongX ? node.dy : node.dx) / q;
      re += Math.sin(phase) * step;
      im += Math.cos(phase) * step;
    }
    return new double[] {re, im};
  }
}
