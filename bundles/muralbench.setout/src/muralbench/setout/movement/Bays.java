// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.movement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Divides a length at some of many places so that no bay is longer than allowed: with as few cuts as will do, through
 * as few places that are better kept out of as can be, and then with bays as equal as can be (least sum of squares).
 */
final class Bays {
  /** More places than this are thinned out before they are tried. */
  private static final int MOST_PLACES = 1500;
  private static final double ROUNDING = 1e-6;

  /** Where a length may be divided. */
  record Place(double at, boolean keepOut) {}

  private final double low;
  private final double high;
  private final double greatest;

  Bays(double low, double high, double greatest) {
    this.low = low;
    this.high = high;
    this.greatest = greatest + ROUNDING;
  }

  /** The chosen places in growing order; null if the places are too far apart. */
  List<Place> divided(List<Place> places) {
    List<Place> inside = places.stream().filter(place -> place.at() > low && place.at() < high).toList();
    List<Place> free = inside.stream().filter(place -> !place.keepOut()).toList();
    int cuts = fewest(free);
    if (cuts >= 0) {
      return mostEqual(thinned(free), cuts);
    }
    cuts = fewest(inside);
    return cuts < 0 ? null : mostEqual(thinned(inside), cuts);
  }

  /** How many cuts it takes when every bay is made as long as can be; -1 if it cannot be done. */
  private int fewest(List<Place> places) {
    int cuts = 0;
    double last = low;
    double reached = low;
    for (Place place : places) {
      if (place.at() - last > greatest) {
        if (reached == last) {
          return -1;
        }
        last = reached;
        cuts++;
      }
      if (place.at() - last > greatest) {
        return -1;
      }
      reached = place.at();
    }
    if (high - last > greatest) {
      cuts++;
      last = reached;
    }
    return high - last > greatest ? -1 : cuts;
  }

  /** Keeps the places nearest to a fine, even division. */
  private List<Place> thinned(List<Place> places) {
    if (places.size() <= MOST_PLACES) {
      return places;
    }
    List<Place> few = new ArrayList<>();
    double step = (high - low) / MOST_PLACES;
    double last = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < places.size(); i++) {
      // Those that end a gap are kept, so that what could be reached still can.
      boolean gap = i + 1 == places.size() || places.get(i + 1).at() - last > step;
      if (gap) {
        few.add(places.get(i));
        last = places.get(i).at();
      }
    }
    return few;
  }

  /** The cheapest way to divide with a number of cuts, or with one more where thinning took the only way. */
  private List<Place> mostEqual(List<Place> places, int cuts) {
    List<Place> best = cheapest(places, cuts);
    return best == null ? cheapest(places, cuts + 1) : best;
  }

  private List<Place> cheapest(List<Place> places, int cuts) {
    int count = places.size();
    double[][] cost = new double[cuts + 1][count];
    int[][] before = new int[cuts + 1][count];
    for (int cut = 1; cut <= cuts; cut++) {
      Arrays.fill(cost[cut], Double.POSITIVE_INFINITY);
      int first = 0;
      for (int i = 0; i < count; i++) {
        double at = places.get(i).at();
        while (at - places.get(first).at() > greatest) {
          first++;
        }
        if (cut == 1) {
          cost[1][i] = bay(at - low) + price(places.get(i));
        }
        for (int k = first; cut > 1 && k < i; k++) {
          double here = cost[cut - 1][k] + bay(at - places.get(k).at()) + price(places.get(i));
          if (here < cost[cut][i]) {
            cost[cut][i] = here;
            before[cut][i] = k;
          }
        }
      }
    }
    return traced(places, cuts, cost, before);
  }

  private List<Place> traced(List<Place> places, int cuts, double[][] cost, int[][] before) {
    if (cuts == 0) {
      return high - low > greatest ? null : List.of();
    }
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < places.size(); i++) {
      double whole = cost[cuts][i] + bay(high - places.get(i).at());
      if (whole < least) {
        least = whole;
        best = i;
      }
    }
    if (best < 0) {
      return null;
    }
    List<Place> chosen = new ArrayList<>();
    for (int cut = cuts; cut > 0; cut--) {
      chosen.add(0, places.get(best));
      best = before[cut][best];
    }
    return chosen;
  }

  private double bay(double length) {
    return length > greatest ? Double.POSITIVE_INFINITY : length * length;
  }

  /** More than all bays together can cost. */
  private double price(Place place) {
    return place.keepOut() ? 4 * (high - low) * (high - low) : 0;
  }
}
