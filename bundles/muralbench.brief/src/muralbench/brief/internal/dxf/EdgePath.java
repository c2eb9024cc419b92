// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.dxf;

/** Writes a closed line as path data, y up, so that a sweep flag of 1 runs counter-clockwise. */
final class EdgePath {
  /** Bulge of three quarters of a turn: longer arcs are written in two, as their ends say little about the centre. */
  private static final double LONGEST = Math.tan(1.5 * Math.PI / 4);

  private final StringBuilder out = new StringBuilder();

  private EdgePath() {}

  static String of(Strand closed) {
    EdgePath path = new EdgePath();
    path.out.append('M');
    path.point(closed.start());
    int last = closed.edges().size() - 1;
    for (int i = 0; i <= last; i++) {
      // Z draws the last straight side.
      if (i < last || closed.edges().get(i).bulge() != 0) {
        path.edge(closed.edges().get(i));
      }
    }
    return path.out.append(" Z").toString();
  }

  private void edge(Edge edge) {
    if (edge.bulge() == 0) {
      out.append(" L");
    } else if (Math.abs(edge.bulge()) > LONGEST) {
      // Half the angle: tan(a / 2) from t = tan a is (sqrt(1 + t²) - 1) / t.
      double half = (Math.hypot(1, edge.bulge()) - 1) / edge.bulge();
      edge(new Edge(edge.from(), edge.middle(), half));
      edge(new Edge(edge.middle(), edge.to(), half));
      return;
    } else {
      out.append(" A");
      point(new Spot(edge.radius(), edge.radius()));
      out.append(" 0 ").append(Math.abs(edge.bulge()) > 1 ? '1' : '0').append(edge.bulge() > 0 ? " 1" : " 0");
    }
    point(edge.to());
  }

  private void point(Spot point) {
    out.append(' ').append(number(point.x())).append(' ').append(number(point.y()));
  }

  /** The shortest text that reads back as the same double. */
  private static String number(double value) {
    String text = Double.toString(value + 0.0);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
