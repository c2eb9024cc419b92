// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.export.internal.pdf.Placing;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Vec;

/** Places the keys of the pieces of one sheet: in the piece, lying or else upright, or else beside it with a leader. */
final class KeyPlacer {
  private final Placing placing;
  private final Board board;
  private final Box window;
  private final Vec middle;
  private final List<Label> labels = new ArrayList<>();

  /**
   * A placer.
   *
   * @param placing how the panel lies on the sheet
   * @param board what lies on the sheet; takes the labels placed
   * @param window the part of the panel this sheet shows, on paper
   * @param panel the whole panel, on paper; texts outside are put away from its middle
   */
  KeyPlacer(Placing placing, Board board, Box window, Box panel) {
    this.placing = placing;
    this.board = board;
    this.window = window;
    this.middle = panel.centre();
  }

  /** The box of a text of some size about its middle, air included. */
  static Box around(Vec middle, KeyRoom.Words words, double factor, boolean upwards) {
    double width = (upwards ? words.height() : words.width()) * factor / 2;
    double height = (upwards ? words.width() : words.height()) * factor / 2;
    return new Box(middle.x() - width, middle.y() - height, middle.x() + width, middle.y() + height);
  }

  /**
   * Places a text inside its shape if there is room on this sheet.
   *
   * @param room the room in the shape
   * @param shape the shape on paper
   * @param factor the size wanted, as a multiple of the smallest allowed
   * @return whether it was placed
   */
  boolean inside(KeyRoom room, Shape shape, double factor) {
    for (boolean upwards : new boolean[] {false, true}) {
      double fit = upwards ? room.uprightFit(placing.reduction()) : room.lyingFit(placing.reduction());
      if (fit >= 1) {
        double size = Math.min(fit, factor);
        Vec spot = placing.of((upwards ? room.upright() : room.lying()).middle());
        Optional<Box> place = onSheet(around(spot, room.words(), size, upwards), shape);
        if (place.isPresent()) {
          Box box = place.get().grown(-Label.AIR * size);
          add(new Label(room.words().text(), KeyLetters.type(size), box, upwards, Optional.empty()));
          return true;
        }
      }
    }
    return false;
  }

  /** The place moved back into the window where it reaches over a match line, if it then still lies in the shape. */
  private Optional<Box> onSheet(Box place, Shape shape) {
    if (window.holds(place) && shape.holds(place.grown(-Label.AIR / 2))) {
      return Optional.of(place);
    }
    double right = Math.max(0, window.minX() - place.minX()) - Math.max(0, place.maxX() - window.maxX());
    double up = Math.max(0, window.minY() - place.minY()) - Math.max(0, place.maxY() - window.maxY());
    Box moved = new Box(place.minX() + right, place.minY() + up, place.maxX() + right, place.maxY() + up);
    return window.grown(1e-9).holds(moved) && shape.holds(moved) ? Optional.of(moved) : Optional.empty();
  }

  /** Places a text beside what it names, with a leader; false if there is no room anywhere near. */
  boolean outside(KeyRoom room, Vec point) {
    Vec from = placing.of(point);
    Optional<Label> label =
        new LeaderSearch(board).place(room.words(), KeyLetters.type(1), from, from.minus(middle));
    label.ifPresent(this::add);
    return label.isPresent();
  }

  private void add(Label label) {
    labels.add(label);
    board.addText(label.place());
    label.leader().ifPresent(this::addLeader);
  }

  /** Later texts and leaders keep off a leader as well. */
  private void addLeader(Line leader) {
    int parts = (int) Math.ceil(leader.length());
    for (int i = 0; i < parts; i++) {
      board.addText(Box.of(leader.at((double) i / parts), leader.at((i + 1.0) / parts)).grown(0.1));
    }
  }

  /** The texts placed so far. */
  List<Label> labels() {
    return List.copyOf(labels);
  }
}
