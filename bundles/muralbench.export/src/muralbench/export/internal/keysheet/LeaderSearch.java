// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.util.Optional;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Vec;

/**
 * Finds a place for a text that has no room where it belongs: in ever wider rings around its point, on bare paper, or,
 * boxed, on top of a piece before a leader would get long; never on another text and never with a leader across one.
 */
final class LeaderSearch {
  private static final double NEAR_ON_PIECES = 14;
  private static final double NEAR = 25;
  private static final double FAR = 60;
  private static final double STEP = 1;
  private static final int DIRECTIONS = 32;

  /** Distance kept from other texts, mm. */
  private static final double OFF_TEXTS = 0.6;
  /** Distance kept from pieces, mm. */
  private static final double OFF_PIECES = 0.9;

  private final Board board;

  LeaderSearch(Board board) {
    this.board = board;
  }

  /**
   * A place for a text.
   *
   * @param words text and its size
   * @param type letters
   * @param point what the text names
   * @param away a direction to try first
   * @return empty if every place is taken
   */
  Optional<Label> place(KeyRoom.Words words, Type type, Vec point, Vec away) {
    return place(words, type, point, away, true, NEAR)
        .or(() -> place(words, type, point, away, false, NEAR_ON_PIECES))
        .or(() -> place(words, type, point, away, true, FAR))
        .or(() -> place(words, type, point, away, false, NEAR));
  }

  private Optional<Label> place(KeyRoom.Words words, Type type, Vec point, Vec away, boolean bare,
      double farthest) {
    double first = Math.atan2(away.y(), away.x());
    for (double distance = 3; distance < farthest; distance += STEP) {
      for (int i = 0; i < DIRECTIONS; i++) {
        double turn = (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * 2 * Math.PI / DIRECTIONS;
        Vec middle = point.plus(new Vec(Math.cos(first + turn), Math.sin(first + turn)).times(distance));
        for (boolean upwards : new boolean[] {false, true}) {
          Optional<Label> label = label(words, type, point, middle, upwards, bare);
          if (label.isPresent()) {
            return label;
          }
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Label> label(KeyRoom.Words words, Type type, Vec point, Vec middle, boolean upwards, boolean bare) {
    Box place = KeyPlacer.around(middle, words, 1, upwards);
    Box roomy = place.grown(OFF_TEXTS);
    boolean taken = !board.clearOfTexts(roomy) || bare && !board.clearOfPieces(place.grown(OFF_PIECES));
    if (taken || roomy.holds(Box.of(point, point))) {
      return Optional.empty();
    }
    Line leader = new Line(point, Board.nearest(place, point));
    return board.clearOfTexts(leader)
        ? Optional.of(new Label(words.text(), type, place.grown(-Label.AIR), upwards, Optional.of(leader)))
        : Optional.empty();
  }
}
