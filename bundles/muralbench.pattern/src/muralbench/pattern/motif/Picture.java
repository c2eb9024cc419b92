// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import muralbench.pattern.symmetry.Isometry;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Cubic;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * What a drawing looks like, apart from its size and from the way it was drawn: the colours with their shares and every
 * boundary between two colours, sizes measured in the longer side. Two pictures are compared within a tolerance, so
 * rounding does not tell them apart. All numbers that a search may use are the same for every orientation.
 */
final class Picture {
  /** Points this near are the same, as a share of the longer side. */
  static final double SAME = 2 * Boundaries.SNAP;
  private static final double[] AT = {0, 0.25, 0.5, 0.75, 1};

  /** A boundary by five points; of a whole ellipse by its middle and the squares of its half widths. */
  private record Trace(double[] numbers) {
    boolean near(Trace other) {
      for (int i = 0; i < numbers.length; i++) {
        if (Math.abs(numbers[i] - other.numbers[i]) > SAME) {
          return false;
        }
      }
      return true;
    }

    Trace reversed() {
      double[] back = new double[10];
      for (int i = 0; i < 5; i++) {
        back[2 * i] = numbers[8 - 2 * i];
        back[2 * i + 1] = numbers[9 - 2 * i];
      }
      return new Trace(back);
    }
  }

  private final double width;
  private final double height;
  private final Map<String, Double> shares;
  private final Map<String, List<Trace>> traces;
  private final String rough;
  private final PictureMarks marks;
  private final double slack;

  private Picture(double width, double height, Map<String, Double> shares, Map<String, List<Trace>> traces) {
    this.width = width;
    this.height = height;
    this.shares = shares;
    this.traces = traces;
    rough = roughly();
    marks = marked();
    slack = slacked();
  }

  /** The same picture after a movement that keeps everything a search uses. */
  private Picture(Picture before, boolean swaps, Map<String, List<Trace>> traces) {
    width = swaps ? before.height : before.width;
    height = swaps ? before.width : before.height;
    shares = before.shares;
    this.traces = traces;
    rough = before.rough;
    marks = before.marks;
    slack = before.slack;
  }

  static Picture of(double width, double height, Map<String, Double> shares, List<Boundary> boundaries) {
    double unit = 1 / Math.max(width, height);
    Map<String, List<Trace>> traces = new TreeMap<>();
    for (Boundary boundary : boundaries) {
      boolean swap = boundary.left().compareTo(boundary.right()) > 0;
      Segment segment = swap ? boundary.segment().reversed() : boundary.segment();
      String kind = segment instanceof Cubic ? "C" : !segment.straight() ? boundary.closed() ? "E" : "A" : "L";
      String between = swap ? boundary.right() + "|" + boundary.left() : boundary.left() + "|" + boundary.right();
      // Which of the two colours is inside a whole ellipse.
      String label = kind + between + (boundary.closed() ? ((Arc) segment).sweep() > 0 ? "+" : "-" : "");
      Trace trace = boundary.closed() ? closed((Arc) segment, unit) : open(segment, unit);
      traces.computeIfAbsent(label, name -> new ArrayList<>()).add(trace);
    }
    return new Picture(width * unit, height * unit, new TreeMap<>(shares), traces);
  }

  private static Trace open(Segment segment, double unit) {
    double[] numbers = new double[10];
    for (int i = 0; i < AT.length; i++) {
      Vec point = segment.at(AT[i]).times(unit);
      numbers[2 * i] = point.x();
      numbers[2 * i + 1] = point.y();
    }
    return new Trace(numbers);
  }

  private static Trace closed(Arc arc, double unit) {
    double cos = Math.cos(arc.tilt());
    double sin = Math.sin(arc.tilt());
    double rx2 = arc.rx() * arc.rx() * unit * unit;
    double ry2 = arc.ry() * arc.ry() * unit * unit;
    return new Trace(new double[] {arc.centre().x() * unit, arc.centre().y() * unit, rx2 * cos * cos + ry2 * sin * sin,
        rx2 * sin * sin + ry2 * cos * cos, (rx2 - ry2) * sin * cos});
  }

  /** The picture of the drawing in another orientation. */
  Picture in(Orientation orientation) {
    if (orientation == Orientation.AS_DRAWN) {
      return this;
    }
    Isometry movement = orientation.in(width, height);
    Map<String, List<Trace>> moved = new TreeMap<>();
    traces.forEach((label, list) -> {
      List<Trace> there = new ArrayList<>(list.size());
      list.forEach(trace -> there.add(moved(trace, orientation, movement)));
      moved.put(label, there);
    });
    return new Picture(this, orientation.swapsSides(), moved);
  }

  /** What lies left of a stretch lies right of its mirror image, which is therefore walked backwards. */
  private static Trace moved(Trace trace, Orientation orientation, Isometry movement) {
    double[] numbers = trace.numbers;
    double[] moved = new double[numbers.length];
    boolean closed = numbers.length == 5;
    for (int i = 0; i < (closed ? 1 : 5); i++) {
      Vec point = movement.of(new Vec(numbers[2 * i], numbers[2 * i + 1]));
      moved[2 * i] = point.x();
      moved[2 * i + 1] = point.y();
    }
    if (closed) {
      boolean swaps = orientation.swapsSides();
      moved[2] = numbers[swaps ? 3 : 2];
      moved[3] = numbers[swaps ? 2 : 3];
      moved[4] = swaps != orientation.mirrored() ? -numbers[4] : numbers[4];
      return new Trace(moved);
    }
    return orientation.mirrored() ? new Trace(moved).reversed() : new Trace(moved);
  }

  /** Whether the two look the same. */
  boolean same(Picture other) {
    if (!rough.equals(other.rough) || !marks.near(other.marks, slack) || Math.abs(width - other.width) > SAME
        || Math.abs(height - other.height) > SAME) {
      return false;
    }
    for (Map.Entry<String, Double> share : shares.entrySet()) {
      if (Math.abs(share.getValue() - other.shares.get(share.getKey())) > 10 * SAME) {
        return false;
      }
    }
    return traces.entrySet().stream().allMatch(entry -> match(entry.getKey(), entry.getValue(), other));
  }

  private static boolean match(String label, List<Trace> mine, Picture other) {
    List<Trace> left = new ArrayList<>(other.traces.get(label));
    boolean eitherWay = label.endsWith("|") && !label.startsWith("E");
    for (Trace trace : mine) {
      int found = -1;
      for (int i = 0; i < left.size() && found < 0; i++) {
        boolean near = trace.near(left.get(i)) || eitherWay && trace.near(left.get(i).reversed());
        found = near ? i : -1;
      }
      if (found < 0) {
        return false;
      }
      left.set(found, left.get(left.size() - 1));
      left.remove(left.size() - 1);
    }
    return true;
  }

  /** What two pictures have to share to be compared at all: colours, and how many boundaries between which. */
  String rough() {
    return rough;
  }

  private String roughly() {
    StringBuilder text = new StringBuilder(String.join("|", shares.keySet()));
    traces.forEach((label, list) -> text.append(';').append(label).append(list.size()));
    return text.toString();
  }

  /** Numbers that all orientations of a picture share. */
  PictureMarks marks() {
    return marks;
  }

  private PictureMarks marked() {
    PictureMarks.Sum sum = new PictureMarks.Sum();
    traces.forEach((label, list) -> {
      double weight = PictureMarks.weight(label);
      for (Trace trace : list) {
        boolean closed = trace.numbers.length == 5;
        sum.add(weight, trace.numbers[closed ? 0 : 4] - width / 2, trace.numbers[closed ? 1 : 5] - height / 2);
      }
    });
    shares.forEach((colour, share) -> sum.addShare(PictureMarks.weight(colour), share));
    return sum.marks();
  }

  /**
   * By how much each mark of two pictures that look the same may differ: a middle that is off by SAME both ways, at
   * most half a diagonal from the centre, changes its square by at most 2 SAME; the shares have ten times SAME each.
   */
  double slack() {
    return slack;
  }

  private double slacked() {
    int count = traces.values().stream().mapToInt(List::size).sum();
    return SAME * (10 * shares.size() + 2 * count + 2);
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(rough());
    traces.forEach((label, list) -> list.forEach(trace -> text.append('\n').append(label)
        .append(Arrays.toString(trace.numbers))));
    return text.toString();
  }
}
