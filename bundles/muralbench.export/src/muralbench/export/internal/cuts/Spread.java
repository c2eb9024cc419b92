// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.util.ArrayList;
import java.util.List;

/** Moves labels apart that would overlap, each as little as can be: neighbours that clash share the move. */
final class Spread {
  private static final class Cluster {
    private double sum;
    private int count;

    Cluster(double wish) {
      sum = wish;
      count = 1;
    }

    double first(double step) {
      return sum / count - (count - 1) * step / 2;
    }

    double last(double step) {
      return first(step) + (count - 1) * step;
    }
  }

  private Spread() {}

  /**
   * The places of labels.
   *
   * @param wishes where they should stand, ascending
   * @param step the least distance between two
   */
  static List<Double> apart(List<Double> wishes, double step) {
    List<Cluster> clusters = new ArrayList<>();
    for (double wish : wishes) {
      Cluster next = new Cluster(wish);
      while (!clusters.isEmpty() && clusters.get(clusters.size() - 1).last(step) + step > next.first(step)) {
        Cluster before = clusters.remove(clusters.size() - 1);
        before.sum += next.sum;
        before.count += next.count;
        next = before;
      }
      clusters.add(next);
    }
    List<Double> places = new ArrayList<>();
    for (Cluster cluster : clusters) {
      for (int i = 0; i < cluster.count; i++) {
        places.add(cluster.first(step) + i * step);
      }
    }
    return places;
  }
}
