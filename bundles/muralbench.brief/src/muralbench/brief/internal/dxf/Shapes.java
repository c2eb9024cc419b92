// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.dxf;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import muralbench.base.InputException;

/**
 * Turns entities into strands, as the DXF reference of AutoCAD describes them.
 *
 * @param scale millimetres for one unit of the drawing
 */
record Shapes(double scale, DxfProblem problem) {
  /** What is known here. */
  static final Set<String> KNOWN = Set.of("LINE", "ARC", "CIRCLE", "LWPOLYLINE", "POLYLINE");

  /** Nothing on a wall is farther than this, mm; the set-out draws the same line. */
  private static final double LARGEST = 1e6;
  private static final int CLOSED = 1;
  private static final int SPLINE_FRAME = 16;
  /** Flags of a POLYLINE that is no line in the plane: in space, mesh of polygons or faces. */
  private static final int SPACE = 8 | 16 | 64;

  /** The strand of an entity of a known type; none if it has no length. */
  Optional<Strand> strand(Entity entity) throws InputException {
    return switch (entity.type()) {
      case "LINE" -> line(entity);
      case "ARC" -> Optional.of(arc(entity));
      case "CIRCLE" -> Optional.of(circle(entity));
      case "LWPOLYLINE" -> lightPolyline(entity);
      default -> polyline(entity);
    };
  }

  private Optional<Strand> line(Entity line) throws InputException {
    if (line.number(30, 0, problem) != line.number(31, 0, problem)) {
      throw problem.at(line.line(), "space", "type", line.type());
    }
    Spot from = spot(line.number(10, problem), line.number(20, problem), line);
    Spot to = spot(line.number(11, problem), line.number(21, problem), line);
    // Its own ends would meet.
    boolean dust = from.distance(to) <= Chains.TOLERANCE;
    return dust ? Optional.empty() : Optional.of(new Strand(List.of(new Edge(from, to, 0)), false));
  }

  private Strand circle(Entity circle) throws InputException {
    Spot centre = centre(circle);
    double radius = radius(circle);
    Spot right = new Spot(centre.x() + radius, centre.y());
    Spot left = new Spot(centre.x() - radius, centre.y());
    return new Strand(List.of(new Edge(right, left, 1), new Edge(left, right, 1)), true);
  }

  private Strand arc(Entity arc) throws InputException {
    double mirror = mirror(arc);
    double start = arc.number(50, problem);
    double sweep = (arc.number(51, problem) - start) % 360;
    sweep = sweep <= 0 ? sweep + 360 : sweep;
    if (sweep == 360) {
      return circle(arc);
    }
    Spot centre = centre(arc);
    double radius = radius(arc);
    Spot from = around(centre, mirror * radius, radius, start);
    Spot to = around(centre, mirror * radius, radius, start + sweep);
    return new Strand(List.of(new Edge(from, to, mirror * Math.tan(Math.toRadians(sweep / 4)))), false);
  }

  private static Spot around(Spot centre, double rx, double ry, double degrees) {
    double angle = Math.toRadians(degrees);
    return new Spot(centre.x() + rx * Math.cos(angle), centre.y() + ry * Math.sin(angle));
  }

  private Spot centre(Entity round) throws InputException {
    return spot(mirror(round) * round.number(10, problem), round.number(20, problem), round);
  }

  private double radius(Entity round) throws InputException {
    double radius = scaled(round.number(40, problem));
    if (!(radius > Chains.TOLERANCE) || radius > LARGEST) {
      throw problem.at(round.line(), "radius", "type", round.type());
    }
    return radius;
  }

  private Optional<Strand> lightPolyline(Entity polyline) throws InputException {
    double mirror = mirror(polyline);
    List<double[]> vertices = new ArrayList<>();
    for (Tag tag : polyline.tags()) {
      if (tag.code() == 10) {
        vertices.add(new double[] {Entity.number(tag, problem), Double.NaN, 0});
      } else if ((tag.code() == 20 || tag.code() == 42) && !vertices.isEmpty()) {
        vertices.get(vertices.size() - 1)[tag.code() == 20 ? 1 : 2] = Entity.number(tag, problem);
      }
    }
    if (vertices.size() != (int) polyline.number(90, vertices.size(), problem)) {
      throw problem.at(polyline.line(), "vertices", "count", vertices.size());
    }
    return strand(polyline, vertices, mirror);
  }

  private Optional<Strand> polyline(Entity polyline) throws InputException {
    double mirror = mirror(polyline);
    if ((polyline.flags(problem) & SPACE) != 0) {
      throw problem.at(polyline.line(), "space", "type", polyline.type());
    }
    List<double[]> vertices = new ArrayList<>();
    for (Entity vertex : polyline.vertices()) {
      if ((vertex.flags(problem) & SPLINE_FRAME) == 0) {
        vertices.add(new double[] {vertex.number(10, problem), vertex.number(20, problem),
            vertex.number(42, 0, problem)});
      }
    }
    return strand(polyline, vertices, mirror);
  }

  /** From vertices of x, y and the bulge of the edge that follows; those that lie on one another count once. */
  private Optional<Strand> strand(Entity polyline, List<double[]> vertices, double mirror) throws InputException {
    List<Spot> spots = new ArrayList<>();
    List<Double> bulges = new ArrayList<>();
    for (double[] vertex : vertices) {
      Spot spot = spot(mirror * vertex[0], vertex[1], polyline);
      if (!spots.isEmpty() && spots.get(spots.size() - 1).distance(spot) <= Chains.TOLERANCE) {
        bulges.set(spots.size() - 1, mirror * vertex[2]);
      } else {
        spots.add(spot);
        bulges.add(mirror * vertex[2]);
      }
    }
    int count = spots.size();
    boolean meets = count > 2 && spots.get(0).distance(spots.get(count - 1)) <= Chains.TOLERANCE;
    boolean closed = meets || (polyline.flags(problem) & CLOSED) != 0;
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < (closed && !meets ? count : count - 1); i++) {
      edges.add(new Edge(spots.get(i), spots.get((i + 1) % count), bulges.get(i)));
    }
    return count < 2 ? Optional.empty() : Optional.of(new Strand(edges, closed));
  }

  /** -1 for an entity seen from behind, whose x runs to the left; the plan has no other directions. */
  private double mirror(Entity entity) throws InputException {
    double x = entity.number(210, 0, problem);
    double y = entity.number(220, 0, problem);
    double z = entity.number(230, 1, problem);
    if (Math.hypot(x, y) > 1e-9 * Math.abs(z) || z == 0) {
      throw problem.at(entity.line(), "space", "type", entity.type());
    }
    return Math.signum(z);
  }

  private Spot spot(double x, double y, Entity entity) throws InputException {
    if (Double.isNaN(y)) {
      throw problem.at(entity.line(), "missing", "type", entity.type(), "code", 20);
    }
    Spot spot = new Spot(scaled(x), scaled(y));
    if (Math.abs(spot.x()) > LARGEST || Math.abs(spot.y()) > LARGEST) {
      throw problem.at(entity.line(), "far", "type", entity.type());
    }
    return spot;
  }

  /** In decimals, so that 96 in are 2438.4 mm to the last digit. */
  private double scaled(double length) {
    return BigDecimal.valueOf(length).multiply(BigDecimal.valueOf(scale)).doubleValue();
  }
}
