// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import muralbench.setout.SetOut;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Segment;

/**
 * Cuts single faces with the edges of a region, quickly and without their curves: the edges inside the face are joined to
 * the stretches of the face's own edge between them. An edge that only touches the face does not cut it.
 */
final class FaceCut {
  /** Edges this near to a side of the face, or beyond it, are outside, mm. */
  private static final double TOUCH = 1e-7;
  private static final double SAME = 1e-9;

  /** What is left of a face. */
  enum Result {
    /** No edge cuts it: it is whole or not there at all. */
    UNCUT,
    /** It is cut into the pieces that were listed. */
    CUT,
    /** It cannot be told in this quick way. */
    UNKNOWN
  }

  private final RegionEdges edges;
  private final int[] seen;
  private int serial;
  private int[][] near = {new int[64]};

  private int corners;
  private double[] faceX = new double[8];
  private double[] faceY = new double[8];
  private double[] along = new double[9];

  private int cuts;
  private int[] cutEdge = new int[16];
  private double[] cutFrom = new double[16];
  private double[] cutTo = new double[16];
  private double[] entry = new double[16];
  private double[] exit = new double[16];

  private final List<List<double[]>> pieces = new ArrayList<>();

  FaceCut(RegionEdges edges) {
    this.edges = edges;
    seen = new int[edges.count()];
  }

  /** The pieces of the face that was cut last, each as rings of corners, the edge first. */
  List<List<double[]>> pieces() {
    return pieces;
  }

  /** Area of a ring of corners, positive if it runs counter-clockwise, mm². */
  static double area(double[] ring) {
    double area = 0;
    for (int i = 2; i + 3 < ring.length; i += 2) {
      area += (ring[i] - ring[0]) * (ring[i + 3] - ring[1]) - (ring[i + 2] - ring[0]) * (ring[i + 1] - ring[1]);
    }
    return area / 2;
  }

  /** Cuts a face that is moved by dx and dy. */
  Result cut(Contour face, double dx, double dy) {
    pieces.clear();
    if (!take(face, dx, dy)) {
      return Result.UNKNOWN;
    }
    double left = Double.POSITIVE_INFINITY;
    double low = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < corners; i++) {
      left = Math.min(left, faceX[i]);
      right = Math.max(right, faceX[i]);
      low = Math.min(low, faceY[i]);
      high = Math.max(high, faceY[i]);
    }
    int count = edges.near(left, low, right, high, near);
    serial++;
    cuts = 0;
    for (int i = 0; i < count; i++) {
      int edge = near[0][i];
      if (seen[edge] != serial) {
        seen[edge] = serial;
        clip(edge);
      }
    }
    if (cuts == 0) {
      return Result.UNCUT;
    }
    return joined() ? Result.CUT : Result.UNKNOWN;
  }

  /** Takes the corners of a face; not if it is curved or has a corner inwards. */
  private boolean take(Contour face, double dx, double dy) {
    corners = face.segments().size();
    if (corners > faceX.length) {
      faceX = new double[corners];
      faceY = new double[corners];
      along = new double[corners + 1];
    }
    for (int i = 0; i < corners; i++) {
      Segment side = face.segments().get(i);
      if (!side.straight()) {
        return false;
      }
      faceX[i] = side.start().x() + dx;
      faceY[i] = side.start().y() + dy;
    }
    for (int i = 0; i < corners; i++) {
      int k = (i + 1) % corners;
      int m = (i + 2) % corners;
      along[i + 1] = along[i] + Math.hypot(faceX[k] - faceX[i], faceY[k] - faceY[i]);
      if ((faceX[k] - faceX[i]) * (faceY[m] - faceY[k]) - (faceY[k] - faceY[i]) * (faceX[m] - faceX[k]) <= 0) {
        return false;
      }
    }
    return true;
  }

  /** Notes the part of an edge that lies inside the face, with where it comes in and goes out: -1 if it does not. */
  private void clip(int edge) {
    double x0 = edges.x[edge];
    double y0 = edges.y[edge];
    double x1 = edges.x[edges.next[edge]];
    double y1 = edges.y[edges.next[edge]];
    double from = 0;
    double to = 1;
    int in = -1;
    int out = -1;
    for (int i = 0; i < corners; i++) {
      int k = i + 1 == corners ? 0 : i + 1;
      double length = along[i + 1] - along[i];
      double normalX = (faceY[i] - faceY[k]) / length;
      double normalY = (faceX[k] - faceX[i]) / length;
      double start = normalX * (x0 - faceX[i]) + normalY * (y0 - faceY[i]);
      double end = normalX * (x1 - faceX[i]) + normalY * (y1 - faceY[i]);
      if (start <= TOUCH && end <= TOUCH) {
        return;
      }
      double share = Math.max(0, Math.min(1, start / (start - end)));
      if (start <= TOUCH && share >= from) {
        from = share;
        in = i;
      } else if (end <= TOUCH && share <= to) {
        to = share;
        out = i;
      }
    }
    if (from < to) {
      note(edge, from, to, in < 0 ? -1 : position(in, x0 + from * (x1 - x0), y0 + from * (y1 - y0)),
          out < 0 ? -1 : position(out, x0 + to * (x1 - x0), y0 + to * (y1 - y0)));
    }
  }

  private double position(int side, double px, double py) {
    int k = side + 1 == corners ? 0 : side + 1;
    double length = along[side + 1] - along[side];
    double forward = ((px - faceX[side]) * (faceX[k] - faceX[side]) + (py - faceY[side]) * (faceY[k] - faceY[side]))
        / length;
    return along[side] + Math.max(0, Math.min(length, forward));
  }

  private void note(int edge, double from, double to, double in, double out) {
    if (cuts == cutEdge.length) {
      cutEdge = Arrays.copyOf(cutEdge, 2 * cuts);
      cutFrom = Arrays.copyOf(cutFrom, 2 * cuts);
      cutTo = Arrays.copyOf(cutTo, 2 * cuts);
      entry = Arrays.copyOf(entry, 2 * cuts);
      exit = Arrays.copyOf(exit, 2 * cuts);
    }
    cutEdge[cuts] = edge;
    cutFrom[cuts] = from;
    cutTo[cuts] = to;
    entry[cuts] = in;
    exit[cuts++] = out;
  }

  /** Joins what was noted to pieces; false if it does not fit together. */
  private boolean joined() {
    boolean[] used = new boolean[cuts];
    int entries = 0;
    for (int i = 0; i < cuts; i++) {
      entries += entry[i] >= 0 ? 1 : 0;
    }
    double whole = faceArea();
    if (entries == 0) {
      return loops(used, whole);
    }
    for (int i = 0; i < cuts; i++) {
      if (entry[i] >= 0 && !used[i]) {
        double[] ring = piece(i, used);
        if (ring == null) {
          return false;
        }
        double area = area(ring);
        if (area < -SetOut.DUST_AREA) {
          return false;
        }
        if (area > SetOut.DUST_AREA && whole - area > SetOut.DUST_AREA) {
          pieces.add(List.of(ring));
        }
      }
    }
    for (boolean one : used) {
      if (!one) {
        return false;
      }
    }
    return true;
  }

  private double faceArea() {
    double[] ring = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      ring[2 * i] = faceX[i];
      ring[2 * i + 1] = faceY[i];
    }
    return area(ring);
  }

  private Points points;

  /** The piece that begins where a cut comes in. */
  private double[] piece(int first, boolean[] used) {
    points = new Points();
    int at = first;
    do {
      int last = chain(at, used);
      if (last < 0) {
        return null;
      }
      at = nextEntry(exit[last]);
      walk(exit[last], entry[at]);
      if (used[at] && at != first) {
        return null;
      }
    } while (at != first);
    return points.ring();
  }

  /** Adds the corners of a cut from where it comes in; gives the edge with which it goes out, -1 if it breaks off. */
  private int chain(int first, boolean[] used) {
    int at = first;
    points.add(atEdge(cutEdge[at], cutFrom[at], true), atEdge(cutEdge[at], cutFrom[at], false));
    while (true) {
      if (used[at]) {
        return -1;
      }
      used[at] = true;
      points.add(atEdge(cutEdge[at], cutTo[at], true), atEdge(cutEdge[at], cutTo[at], false));
      if (exit[at] >= 0) {
        return at;
      }
      at = find(edges.next[cutEdge[at]]);
      if (at < 0 || entry[at] >= 0) {
        return -1;
      }
    }
  }

  private double atEdge(int edge, double share, boolean abscissa) {
    double start = abscissa ? edges.x[edge] : edges.y[edge];
    double end = abscissa ? edges.x[edges.next[edge]] : edges.y[edges.next[edge]];
    return share == 1 ? end : start + share * (end - start);
  }

  private int find(int edge) {
    for (int i = 0; i < cuts; i++) {
      if (cutEdge[i] == edge) {
        return i;
      }
    }
    return -1;
  }

  private int nextEntry(double from) {
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < cuts; i++) {
      if (entry[i] >= 0) {
        double ahead = ahead(from, entry[i]);
        if (ahead < least) {
          least = ahead;
          best = i;
        }
      }
    }
    return best;
  }

  private double ahead(double from, double to) {
    double ahead = to - from;
    return ahead < -TOUCH ? ahead + along[corners] : Math.max(0, ahead);
  }

  /** Adds the corners of the face between two places on its edge. */
  private void walk(double from, double to) {
    double ahead = ahead(from, to);
    for (int round = 0; round < 2 * corners; round++) {
      int corner = round % corners;
      double at = along[corner] + (round >= corners ? along[corners] : 0) - from;
      if (at > SAME && at < ahead - SAME) {
        points.add(faceX[corner], faceY[corner]);
      }
    }
  }

  /** Cuts that neither come in nor go out: holes of the face, or parts of the region all inside it. */
  private boolean loops(boolean[] used, double whole) {
    List<double[]> holes = new ArrayList<>();
    double holed = 0;
    for (int i = 0; i < cuts; i++) {
      if (!used[i]) {
        points = new Points();
        for (int at = i; !used[at]; ) {
          used[at] = true;
          points.add(edges.x[cutEdge[at]], edges.y[cutEdge[at]]);
          at = find(edges.next[cutEdge[at]]);
          if (at < 0) {
            return false;
          }
        }
        double[] ring = points.ring();
        double area = area(ring);
        if (area > SetOut.DUST_AREA) {
          pieces.add(List.of(ring));
        } else if (area < -SetOut.DUST_AREA) {
          holes.add(ring);
          holed -= area;
        }
      }
    }
    if (!holes.isEmpty() && !pieces.isEmpty()) {
      return false;
    }
    if (holed > SetOut.DUST_AREA) {
      points = new Points();
      for (int i = 0; i < corners; i++) {
        points.add(faceX[i], faceY[i]);
      }
      holes.add(0, points.ring());
      pieces.add(holes);
    }
    return true;
  }

  /** Corners in order, none twice in succession. */
  private static final class Points {
    private double[] at = new double[32];
    private int size;

    void add(double x, double y) {
      if (size > 0 && Math.hypot(at[size - 2] - x, at[size - 1] - y) < TOUCH) {
        return;
      }
      if (size == at.length) {
        at = Arrays.copyOf(at, 2 * size);
      }
      at[size++] = x;
      at[size++] = y;
    }

    double[] ring() {
      while (size > 2 && Math.hypot(at[size - 2] - at[0], at[size - 1] - at[1]) < TOUCH) {
        size -= 2;
      }
      return Arrays.copyOf(at, size);
    }
  }
}
