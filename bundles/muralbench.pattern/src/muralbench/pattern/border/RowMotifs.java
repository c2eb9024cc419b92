// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.List;
import muralbench.base.Messages;

/**
 * What is painted on the tiles of a row.
 *
 * @param run the sequence along every side; of a plain row one step
 * @param corner name of the motif on the corner tiles
 * @param innerCorner name of the motif on the corner tiles of inner corners, where the band turns the other way
 * @param centre name of the motif on centre pieces
 */
public record RowMotifs(Sequence run, String corner, String innerCorner, String centre) {
  private static final Messages TEXTS = Messages.of(RowMotifs.class);

  /** A sequence with the usual names of the other pieces. */
  public static RowMotifs of(Sequence run) {
    return new RowMotifs(run, TEXTS.text("motif.corner"), TEXTS.text("motif.corner.inner"), TEXTS.text("motif.centre"));
  }

  /** A row with no motif. */
  public static RowMotifs plain() {
    String plain = TEXTS.text("motif.plain");
    return new RowMotifs(Sequence.free(List.of(plain)), plain, plain, plain);
  }
}
