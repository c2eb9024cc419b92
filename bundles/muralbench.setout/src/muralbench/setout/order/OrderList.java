// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import muralbench.base.Messages;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.bond.Cell;

/** Tiles to order with spares, reckoned in exact decimals: 100 tiles and 10 % are 110. */
public final class OrderList {
  private static final Messages TEXTS = Messages.of(OrderList.class);
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private OrderList() {}

  /** One kind of tile while it is counted; {@code hundredths} are tiles with spares, times 100. */
  private static final class Count {
    private final Set<BigDecimal> percents = new TreeSet<>();
    private int laid;
    private BigDecimal hundredths = BigDecimal.ZERO;

    private void add(int tiles, BigDecimal percent) {
      laid += tiles;
      percents.add(percent);
      hundredths = hundredths.add(BigDecimal.valueOf(tiles).multiply(HUNDRED.add(percent)));
    }
  }

  /** One line for each kind of tile, by name. Spares are added over all panels and rounded up once. */
  public static List<OrderLine> of(MuralSetOut mural, Allowances allowances) {
    Map<String, Count> counts = new TreeMap<>();
    for (PanelSetOut panel : mural.panels()) {
      BigDecimal percent = allowances.percent(panel.spec().bond());
      Map<String, Set<Cell>> cells = new TreeMap<>();
      for (Piece piece : panel.pieces()) {
        cells.computeIfAbsent(piece.tile(), tile -> new HashSet<>()).add(piece.cell());
      }
      cells.forEach((tile, laid) -> counts.computeIfAbsent(tile, key -> new Count()).add(laid.size(), percent));
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
    return new OrderLine(tile, count.laid, List.copyOf(count.percents), tiles.intValueExact(), box);
  }
}
