// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** A band round four sides with three permitted means besides the joint is solved within 50 ms, hints included. */
class ClosingSpeedTest {
  private static final long LIMIT_MS = 50;

  @Test
  void fourSidesCloseInTime() {
    Random random = new Random(4);
    solve(random, 40);
    long start = System.nanoTime();
    solve(random, 100);
    long each = (System.nanoTime() - start) / 100 / 1_000_000;
    assertTrue(each <= LIMIT_MS, each + " ms for one band");
  }

  private static void solve(Random random, int times) {
    Permits[] three = {Permits.NONE.move(12, 12).scale(0.02).ends(0.5), Permits.NONE.move(12, 12).scale(0.02).centre(25, 200),
        Permits.NONE.move(12, 12).centre(25, 200).ends(0.6), Permits.NONE.scale(0.02).centre(25, 200).ends(0.6)};
    for (int i = 0; i < times; i++) {
      double width = 30 + 70 * random.nextDouble();
      Border border = Bands.square(width, 24 + 40 * random.nextDouble(), 3 + 3 * random.nextInt(2),
          Bands.joints(0.0625, 0.125, 0.1875), three[i % three.length]);
      assertTrue(Bands.solve(border).layouts().size() + Bands.solve(border).hints().size() > 0);
    }
  }
}
