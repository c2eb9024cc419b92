// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import muralbench.setout.BondSpec;

/**
 * How many spare tiles are ordered, and how they are packed.
 *
 * @param percent spares by kind of bond, percent of the tiles that are laid, at least 0
 * @param turned spares for courses that are neither level nor plumb, percent, unless the bond itself asks for more
 * @param other spares for bonds that are not named, percent
 * @param boxes tiles in a box by kind of tile, above 0; a kind that is not named is ordered singly
 */
public record Allowances(Map<String, BigDecimal> percent, BigDecimal turned, BigDecimal other,
    Map<String, Integer> boxes) {
  /** Stands for the bonds that are not named. */
  public static final String OTHER = "other";
  /** Stands for courses that are neither level nor plumb. */
  public static final String TURNED = "turned";

  private static final BigDecimal STRAIGHT = BigDecimal.TEN;
  private static final BigDecimal DIAGONAL = BigDecimal.valueOf(15);
  private static final BigDecimal HERRINGBONE = BigDecimal.valueOf(20);

  public Allowances {
    percent = Map.copyOf(percent);
    boxes = Map.copyOf(boxes);
    if (turned.signum() < 0 || other.signum() < 0 || percent.values().stream().anyMatch(share -> share.signum() < 0)
        || boxes.values().stream().anyMatch(size -> size < 1)) {
      throw new IllegalArgumentException("allowance below 0 or empty box");
    }
  }

  /** Common practice: 10 % laid straight, 15 % laid diagonally, 20 % in herringbone, 15 % in others; single tiles. */
  public static Allowances commonPractice() {
    return new Allowances(Map.of("grid", STRAIGHT, "running", STRAIGHT, "diagonal", DIAGONAL, "herringbone",
        HERRINGBONE), DIAGONAL, DIAGONAL, Map.of());
  }

  /** These allowances with another percentage for a kind of bond, for {@link #OTHER} or for {@link #TURNED} courses. */
  public Allowances withPercent(String bond, BigDecimal share) {
    if (bond.equals(OTHER)) {
      return new Allowances(percent, turned, share, boxes);
    }
    if (bond.equals(TURNED)) {
      return new Allowances(percent, share, other, boxes);
    }
    return new Allowances(with(percent, bond, share), turned, other, boxes);
  }

  /** These allowances with a kind of tile packed in boxes. */
  public Allowances withBox(String tile, int size) {
    return new Allowances(percent, turned, other, with(boxes, tile, size));
  }

  /** The spares for a bond as it is laid, percent. */
  public BigDecimal percent(BondSpec bond) {
    BigDecimal share = percent.getOrDefault(bond.kind(), other);
    return bond.rotation() % 90 == 0 ? share : share.max(turned);
  }

  private static <V> Map<String, V> with(Map<String, V> map, String key, V value) {
    Map<String, V> changed = new HashMap<>(map);
    changed.put(key, value);
    return changed;
  }
}
