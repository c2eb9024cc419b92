// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import java.util.ArrayList;
import java.util.List;

/**
 * The colours along a side of a tile, from left to right or from bottom to top.
 *
 * @param length length of the side in units of the drawing
 * @param stretches the colours in order, none twice in a row, from 0 to the length without a gap
 */
public record EdgeProfile(double length, List<Stretch> stretches) {
  /** A change of colour farther off than this share of the side does not meet its neighbour. */
  private static final double MEETS = 1e-4;

  /**
   * One colour.
   *
   * @param from where it begins, units of the drawing
   * @param to where it ends
   * @param colour its name
   */
  public record Stretch(double from, double to, String colour) {}

  public EdgeProfile {
    stretches = List.copyOf(stretches);
  }

  /** Where the colour changes, units of the drawing from the start of the side; empty for one colour. */
  public List<Double> changes() {
    return stretches.subList(1, stretches.size()).stream().map(Stretch::from).toList();
  }

  /** The same side read from its other end. */
  public EdgeProfile backwards() {
    List<Stretch> back = new ArrayList<>();
    for (Stretch stretch : stretches) {
      back.add(0, new Stretch(length - stretch.to, length - stretch.from, stretch.colour));
    }
    return new EdgeProfile(length, back);
  }

  /** Whether a side laid against this one goes on with the same colours at the same places, sizes made equal. */
  public boolean meets(EdgeProfile other) {
    if (stretches.size() != other.stretches.size()) {
      return false;
    }
    for (int i = 0; i < stretches.size(); i++) {
      Stretch mine = stretches.get(i);
      Stretch theirs = other.stretches.get(i);
      if (!mine.colour.equals(theirs.colour) || Math.abs(mine.to / length - theirs.to / other.length) > MEETS) {
        return false;
      }
    }
    return true;
  }
}
