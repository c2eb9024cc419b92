// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.List;
import java.util.Optional;

/**
 * What came of closing a band.
 *
 * @param layouts the best ways, the least harm first, at most three; empty if the band does not close
 * @param message empty if it closes; else that it does not, and what would work instead, in plain words
 * @param hints what would work instead, one text each, in the order of {@link Means}; empty if the band closes
 */
public record Closing(List<BandLayout> layouts, String message, List<String> hints) {
  public Closing {
    layouts = List.copyOf(layouts);
    hints = List.copyOf(hints);
  }

  /** The way with the least harm. */
  public Optional<BandLayout> best() {
    return layouts.stream().findFirst();
  }
}
