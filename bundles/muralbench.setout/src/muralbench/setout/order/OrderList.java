// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import muralbench.base.Messages;
import muralbench.setout.MuralSetOut;

/** Tiles to order with spares, reckoned in exact decimals: 100 tiles and 10 % are 110. */
public final class OrderList {
  private static final Messages TEXTS = Messages.of(OrderList.class);
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private OrderList() {}

  /** One kind of tile while it is counted; {@code hundredths} are tiles with spares, times 100. */
  private static final class Count {
    private final Set<BigDecimal> percents = new TreeSet<>();
    private int laid;
    private int least;
    private BigDecimal hundredths = BigDecimal.ZERO;

    private void add(int tiles, int atLeast, BigDecimal percent) {
      laid += tiles;
      least += atLeast;
      percents.add(percent);
      hundredths = hundredths.add(BigDecimal.valueOf(tiles).multiply(HUNDRED.add(percent)));
    }
  }

  /**
   * One line for each kind of tile, with the spares and boxes of the mural.
   *
   * @param made how its panels are made up, in their order
   */
  public static List<OrderLine> of(MuralSetOut mural, List<MadeUp> made) {
    return of(mural, made, mural.spec().allowances());
  }

  /** One line for each kind of tile, by name. Spares are added over all panels and rounded up once. */
  public static List<OrderLine> of(MuralSetOut mural, Allowances allowances) {
    return of(mural, mural.panels().stream().map(MadeUp::of).toList(), allowances);
  }

  private static List<OrderLine> of(MuralSetOut mural, List<MadeUp> made, Allowances allowances) {
    Map<String, Count> counts = new TreeMap<>();
    for (int i = 0; i < made.size(); i++) {
      BigDecimal percent = allowances.percent(mural.panels().get(i).spec().bond());
      MadeUp panel = made.get(i);
      panel.counts().forEach((tile, laid) -> counts.computeIfAbsent(tile, key -> new Count())
          .add(laid, panel.least().get(tile), percent));
    }
    List<OrderLine> lines = new ArrayList<>();
    counts.forEach((tile, count) -> lines.add(line(tile, count, allowances.boxes().getOrDefault(tile, 0))));
    return lines;
  }

  /** What the spares of a painted mural are, for people. */
  public static String note() {
    return TEXTS.text("order.note");
  }

  private static OrderLine line(String tile, Count count, int box) {
    BigDecimal tiles = count.hundredths.divide(HUNDRED, 0, RoundingMode.CEILING);
    if (box > 0) {
      BigDecimal size = BigDecimal.valueOf(box);
      tiles = tiles.divide(size, 0, RoundingMode.CEILING).multiply(size);
    }
    return new OrderLine(tile, count.laid, count.least, List.copyOf(count.percents), tiles.intValueExact(), box);
  }
}
