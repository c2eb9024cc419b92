// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

import java.util.List;

/**
 * What a band maps on to itself.
 *
 * @param repeat the shortest length with which it repeats, mm
 * @param operations the movements that keep the band, one for all that differ by repeats
 * @param group the group they make up
 */
public record FoundBand(double repeat, List<Isometry> operations, FriezeGroup group) {
  public FoundBand {
    operations = List.copyOf(operations);
  }
}
