// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.base.length.LengthUnit;
import muralbench.pattern.border.ClosingSearch.Aim;

/**
 * What would make a band close that does not: one bound after the other is widened, everything else stays as
 * permitted, and the nearest that works is told. How far to look is common practice: joints of 1/64 in to twice the
 * widest or half an inch, a move of up to half a tile and joint, a tile up to a tenth longer or shorter, a centre
 * piece of a quarter of a tile to two, end tiles cut to no less than a half, a third, a quarter of a tile.
 */
final class Hints {
  private static final double FINEST = 25.4 / 64;
  private static final double WIDE = 12.7;
  private static final double MOST_SCALE = 0.1;
  private static final double[] SHARES = {1 / 2.0, 1 / 3.0, 1 / 4.0};

  private final Border border;
  private final List<RunClass> classes;
  private final BandWords words;

  Hints(Border border, List<RunClass> classes, LengthUnit units) {
    this.border = border;
    this.classes = classes;
    words = new BandWords(units);
  }

  /** The hints, at most two for the joint and the move, one for each other means. */
  List<String> texts() {
    if (classes.isEmpty()) {
      return List.of();
    }
    List<String> texts = new ArrayList<>();
    joints().ifPresent(found -> texts.add(words.joint(found)));
    moves().ifPresent(found -> texts.add(words.moved(found)));
    scale().ifPresent(found -> texts.add(words.scaled(found)));
    centre().ifPresent(found -> texts.add(words.centre(found, border)));
    ends().ifPresent(texts::add);
    return texts;
  }

  private Optional<Found> joints() {
    JointRange joint = border.joint();
    double tile = classes.stream().mapToDouble(RunClass::tile).min().orElseThrow();
    double widest = Math.min(Math.max(2 * joint.max(), WIDE), tile / 2);
    Found finer = joint.min() <= FINEST ? null
        : nearest(border.joint(new JointRange(FINEST, joint.min(), joint.min())), Scope.JOINT);
    Found wider = joint.max() >= widest ? null
        : nearest(border.joint(new JointRange(joint.max(), joint.max(), widest)), Scope.JOINT);
    if (finer == null || wider == null) {
      return Optional.ofNullable(finer == null ? wider : finer);
    }
    return Optional.of(joint.min() - finer.joint() <= wider.joint() - joint.max() ? finer : wider);
  }

  private Optional<Found> moves() {
    if (!border.path().closed()) {
      return Optional.empty();
    }
    Permits permits = border.permits();
    double half = (classes.get(0).tile() + border.joint().max()) / 2;
    Found in = nearest(border.permits(permits.move(Math.max(permits.moveIn(), half), 0)), Scope.MOVE);
    Found out = nearest(border.permits(permits.move(0, Math.max(permits.moveOut(), half))), Scope.MOVE);
    if (in == null || out == null) {
      return Optional.ofNullable(in == null ? out : in);
    }
    return Optional.of(in.move() <= -out.move() ? in : out);
  }

  private Optional<Found> scale() {
    return Optional.ofNullable(nearest(
        border.permits(border.permits().scale(Math.max(MOST_SCALE, border.permits().scale()))), Scope.STRETCH));
  }

  private Optional<Found> centre() {
    double tile = classes.get(0).tile();
    Permits permits = border.permits();
    double min = permits.centreMax() > 0 ? Math.min(permits.centreMin(), tile / 4) : tile / 4;
    return best(border.permits(permits.centre(min, Math.max(permits.centreMax(), 2 * tile))), Means.CENTRE);
  }

  private Optional<String> ends() {
    double now = border.permits().endShare();
    for (double share : SHARES) {
      if (now == 0 || share < now) {
        Optional<Found> found = best(border.permits(border.permits().ends(share)), Means.ENDS);
        if (found.isPresent()) {
          return Optional.of(words.ends(found.get(), border));
        }
      }
    }
    return Optional.empty();
  }

  private Found nearest(Border widened, int unknown) {
    return new ClosingSearch(widened, classes, 1, new Aim(unknown), found -> Runs.possible(widened, found)).nearest();
  }

  private Optional<Found> best(Border widened, Means means) {
    return new ClosingSearch(widened, classes, 1, Aim.ALL, found -> Runs.possible(widened, found)).best().stream()
        .filter(found -> means.in(found.mask())).findFirst();
  }
}
