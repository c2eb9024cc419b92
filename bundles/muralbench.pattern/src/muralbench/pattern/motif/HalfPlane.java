// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Cubic;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * One side of an upright or level line. Cuts areas and lines with it; curves stay curves.
 *
 * @param upright whether the line stands upright
 * @param at where it stands
 * @param above whether what is right of it or above it is kept
 * @param slack what is no farther out lies on the line
 */
record HalfPlane(boolean upright, double at, boolean above, double slack) {
  private static final int HALVINGS = 60;

  /** How far a point is on the side that is kept. */
  private double inside(Vec point) {
    double off = (upright ? point.x() : point.y()) - at;
    return above ? off : -off;
  }

  private double along(Vec point) {
    return upright ? point.y() : point.x();
  }

  /** The kept part of an area whose outer edges run counter-clockwise and holes clockwise. */
  List<Contour> cut(List<Contour> contours) {
    List<Contour> kept = new ArrayList<>();
    List<List<Segment>> chains = new ArrayList<>();
    for (Contour contour : contours) {
      List<List<Segment>> stretches = stretches(contour.segments());
      if (stretches.size() == 1 && closed(stretches.get(0))) {
        kept.add(new Contour(stretches.get(0)));
      } else {
        chains.addAll(ringJoined(stretches));
      }
    }
    kept.addAll(linked(chains));
    return kept;
  }

  private boolean closed(List<Segment> stretch) {
    return stretch.get(0).start().distance(stretch.get(stretch.size() - 1).end()) <= slack / 100;
  }

  /** A contour's first and last stretch are one if they meet off the line. */
  private List<List<Segment>> ringJoined(List<List<Segment>> stretches) {
    int last = stretches.size() - 1;
    if (last < 1 || inside(stretches.get(0).get(0).start()) <= slack) {
      return stretches;
    }
    List<List<Segment>> joined = new ArrayList<>(stretches);
    List<Segment> whole = new ArrayList<>(joined.remove(last));
    whole.addAll(joined.get(0));
    joined.set(0, whole);
    return joined;
  }

  /** The kept part of a line in stretches that start and end on the line of the cut or at the line's own ends. */
  List<List<Segment>> stretches(List<Segment> segments) {
    List<List<Segment>> stretches = new ArrayList<>();
    List<Segment> current = new ArrayList<>();
    for (Segment segment : segments) {
      for (Segment part : parts(segment)) {
        if (seen(part)) {
          current.add(part);
        } else if (!current.isEmpty()) {
          stretches.add(List.copyOf(current));
          current.clear();
        }
      }
    }
    if (!current.isEmpty()) {
      stretches.add(List.copyOf(current));
    }
    return stretches;
  }

  private boolean seen(Segment part) {
    return Math.max(inside(part.at(0.5)), Math.max(inside(part.at(0.25)), inside(part.at(0.75)))) > slack
        && inside(part.at(0.5)) > 0;
  }

  /** The segment divided where it crosses the line. */
  private List<Segment> parts(Segment segment) {
    TreeSet<Double> cuts = new TreeSet<>();
    List<Double> turns = new ArrayList<>(turns(segment));
    turns.add(1.0);
    double from = 0;
    for (double to : turns) {
      if (inside(segment.at(from)) * inside(segment.at(to)) < 0) {
        cuts.add(root(segment, from, to));
      }
      from = to;
    }
    cuts.removeIf(cut -> segment.at(cut).distance(segment.start()) <= slack / 100
        || segment.at(cut).distance(segment.end()) <= slack / 100);
    if (cuts.isEmpty()) {
      return List.of(segment);
    }
    List<Segment> parts = new ArrayList<>();
    double start = 0;
    for (double cut : cuts) {
      parts.add(segment.part(start, cut));
      start = cut;
    }
    parts.add(segment.part(start, 1));
    return parts;
  }

  private double root(Segment segment, double from, double to) {
    boolean starts = inside(segment.at(from)) > 0;
    double low = from;
    double high = to;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (inside(segment.at(middle)) > 0 == starts) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** Where within the segment it turns back as seen from the line, in order. */
  private List<Double> turns(Segment segment) {
    TreeSet<Double> turns = new TreeSet<>();
    if (segment instanceof Arc arc) {
      double cos = Math.cos(arc.tilt());
      double sin = Math.sin(arc.tilt());
      double turn = upright ? Math.atan2(-arc.ry() * sin, arc.rx() * cos) : Math.atan2(arc.ry() * cos, arc.rx() * sin);
      for (int i = -8; i <= 8; i++) {
        turns.add((turn + i * Math.PI - arc.from()) / arc.sweep());
      }
    } else if (segment instanceof Cubic cubic) {
      double p0 = across(cubic.start());
      double p1 = across(cubic.c1());
      double p2 = across(cubic.c2());
      double p3 = across(cubic.end());
      double a = p3 - 3 * p2 + 3 * p1 - p0;
      double b = 2 * (p2 - 2 * p1 + p0);
      double root = Math.sqrt(b * b - 4 * a * (p1 - p0));
      double q = -(b + Math.copySign(root, b)) / 2;
      turns.add(q / a);
      turns.add((p1 - p0) / q);
    }
    turns.removeIf(turn -> !(turn > 0 && turn < 1));
    return List.copyOf(turns);
  }

  private double across(Vec point) {
    return upright ? point.x() : point.y();
  }

  /**
   * Closes chains along the line. Ends and starts take turns along it, so that each end goes to the start of the same
   * rank, whichever way they are counted.
   */
  private List<Contour> linked(List<List<Segment>> chains) {
    List<List<Segment>> byStart = new ArrayList<>(chains);
    byStart.sort(Comparator.comparingDouble(chain -> along(chain.get(0).start())));
    List<List<Segment>> byEnd = new ArrayList<>(chains);
    byEnd.sort(Comparator.comparingDouble(chain -> along(chain.get(chain.size() - 1).end())));
    List<Contour> contours = new ArrayList<>();
    boolean[] used = new boolean[chains.size()];
    for (int i = 0; i < used.length; i++) {
      List<Segment> ring = new ArrayList<>();
      for (int next = i; !used[next];) {
        used[next] = true;
        List<Segment> chain = byStart.get(next);
        ring.addAll(chain);
        next = indexOf(byEnd, chain);
        Vec from = chain.get(chain.size() - 1).end();
        Vec to = byStart.get(next).get(0).start();
        if (from.distance(to) > slack / 100) {
          ring.add(new Line(from, to));
        }
      }
      if (!ring.isEmpty()) {
        contours.add(new Contour(ring));
      }
    }
    return contours;
  }

  private static int indexOf(List<List<Segment>> chains, List<Segment> chain) {
    for (int i = 0; i < chains.size(); i++) {
      if (chains.get(i) == chain) {
        return i;
      }
    }
    throw new IllegalStateException("a chain without its end");
  }
}
