// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Vec;

/** What already lies on a sheet: pieces and texts, kept by squares of paper so that looking up stays quick. */
final class Board {
  private static final double SQUARE = 12;

  private final Box bounds;
  private final Map<Long, List<Shape>> pieces = new HashMap<>();
  private final Map<Long, List<Box>> texts = new HashMap<>();

  /** A board on which texts stay inside {@code bounds}. */
  Board(Box bounds) {
    this.bounds = bounds;
  }

  Box bounds() {
    return bounds;
  }

  void addPiece(Shape piece) {
    squares(piece.box()).forEach(square -> pieces.computeIfAbsent(square, s -> new ArrayList<>()).add(piece));
  }

  void addText(Box text) {
    squares(text).forEach(square -> texts.computeIfAbsent(square, s -> new ArrayList<>()).add(text));
  }

  /** Whether a text can stand here without touching another. */
  boolean clearOfTexts(Box text) {
    return bounds.holds(text) && squares(text).stream()
        .noneMatch(square -> texts.getOrDefault(square, List.of()).stream().anyMatch(text::meets));
  }

  /** Whether a text here lies on no piece. */
  boolean clearOfPieces(Box text) {
    return squares(text).stream()
        .noneMatch(square -> pieces.getOrDefault(square, List.of()).stream().anyMatch(piece -> piece.meets(text)));
  }

  /** Whether a leader crosses no text. */
  boolean clearOfTexts(Line leader) {
    return squares(leader.box()).stream().noneMatch(square -> texts.getOrDefault(square, List.of()).stream()
        .anyMatch(text -> Shape.meets(leader.start(), leader.end(), text)));
  }

  private static List<Long> squares(Box box) {
    List<Long> found = new ArrayList<>();
    for (long x = square(box.minX()); x <= square(box.maxX()); x++) {
      for (long y = square(box.minY()); y <= square(box.maxY()); y++) {
        found.add(x << 32 ^ y & 0xFFFFFFFFL);
      }
    }
    return found;
  }

  private static long square(double place) {
    return (long) Math.floor(place / SQUARE);
  }

  /** The end of a leader: the point of a text's box nearest to what it names. */
  static Vec nearest(Box text, Vec from) {
    return new Vec(Math.max(text.minX(), Math.min(text.maxX(), from.x())),
        Math.max(text.minY(), Math.min(text.maxY(), from.y())));
  }
}
