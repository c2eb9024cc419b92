// SPDX-License-Identifier: EPL-2.0
package muralbench.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import muralbench.base.Progress;
import muralbench.setout.OpeningDrag;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;

/** Drags one opening of a facade along a path, as a hand would: step by step, once there and back. */
final class Drags {
  private static final BondRegistry BONDS = BondRegistry.standard();
  private static final int STEPS = 120;

  private final OpeningDrag drag;
  private final List<Contour> path = new ArrayList<>();

  private Drags(OpeningDrag drag) {
    this.drag = drag;
  }

  /** A facade of about so many cells and the opening with an id; the path stays between the other openings. */
  static Drags of(int cells, String opening) throws Exception {
    PanelSpec facade = Facades.facade(cells, new OriginSpec.At(new Vec(1, 1)));
    PanelSetOut begun = SetOut.panel(facade, BONDS, Progress.NONE);
    Drags drags = new Drags(OpeningDrag.of(begun, opening, BONDS));
    Contour outline = facade.openings().stream().filter(one -> one.id().equals(opening)).findFirst().orElseThrow()
        .outline();
    double side = facade.outline().box().width();
    for (int i = 0; i < STEPS; i++) {
      double share = i / (double) STEPS;
      drags.path.add(outline.moved(Motion.shift(new Vec(side / 20 * share, side / 14 * Math.sin(Math.PI * share)))));
    }
    return drags;
  }

  /** The median and the longest time of a step, milliseconds, after the path was walked some times. */
  double[] steps() throws Exception {
    double[] times = new double[STEPS];
    for (int round = 0; round < 10; round++) {
      for (int i = 0; i < STEPS; i++) {
        long start = System.nanoTime();
        drag.moved(path.get(i));
        times[i] = (System.nanoTime() - start) / 1e6;
      }
    }
    Arrays.sort(times);
    return new double[] {times[STEPS / 2], times[STEPS - 1]};
  }

  /** The median time of a whole set-out of what a step asks for, milliseconds. */
  double whole() throws Exception {
    return Medians.time(() -> SetOut.panel(drag.asked(path.get(STEPS / 2)), BONDS, Progress.NONE));
  }
}
