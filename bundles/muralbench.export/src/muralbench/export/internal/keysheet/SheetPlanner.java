// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.export.internal.pdf.Placing;
import muralbench.setout.OpeningSpec;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/** Works out all sheets of a panel for one scale and paper, or finds that some text has no place. */
final class SheetPlanner {
  /** Distance of texts from match lines, mm. */
  private static final double OFF_MATCH = 0.6;
  /** A tile that a match line only touches lies on one sheet, mm. */
  private static final double TOUCH = 0.01;

  private final PanelFacts facts;
  private final PanelPlanner.Trial trial;
  private final KeyLetters letters;
  private final double reduction;

  SheetPlanner(PanelFacts facts, PanelPlanner.Trial trial, KeyLetters letters) {
    this.facts = facts;
    this.trial = trial;
    this.letters = letters;
    this.reduction = trial.scale().reduction();
  }

  Optional<PanelPlan> plan() throws IOException {
    WindowGrid grid = trial.grid();
    List<List<Integer>> shown = shown();
    List<SheetPlan> sheets = new ArrayList<>();
    for (int row = grid.rows() - 1; row >= 0; row--) {
      for (int column = 0; column < grid.columns(); column++) {
        List<Integer> pieces = shown.get(row * grid.columns() + column);
        if (!pieces.isEmpty()) {
          Optional<SheetPlan> sheet = sheet(row, column, pieces);
          if (sheet.isEmpty()) {
            return Optional.empty();
          }
          sheets.add(sheet.get());
        }
      }
    }
    FirstTile first = FirstTile.of(facts.panel(), piece -> grid.keepsWhole(piece.box(), TOUCH));
    return Optional.of(new PanelPlan(facts.startingWith(first), trial.scale(), grid, sheets));
  }

  /** For every window the numbers of the pieces that reach into it. */
  private List<List<Integer>> shown() {
    WindowGrid grid = trial.grid();
    List<List<Integer>> shown = new ArrayList<>();
    for (int i = 0; i < grid.count(); i++) {
      shown.add(new ArrayList<>());
    }
    for (int i = 0; i < facts.keys().size(); i++) {
      Box box = piece(i).box();
      for (int row = grid.row(box.minY()); row <= grid.row(box.maxY()); row++) {
        for (int column = grid.column(box.minX()); column <= grid.column(box.maxX()); column++) {
          shown.get(row * grid.columns() + column).add(i);
        }
      }
    }
    return shown;
  }

  private Optional<SheetPlan> sheet(int row, int column, List<Integer> numbers) throws IOException {
    Box window = trial.grid().window(row, column);
    Placing placing = placing(window);
    Box paper = placing.of(window);
    Board board = new Board(bounded(row, column, paper, trial.gutters().labels() - 1, -OFF_MATCH));
    if (facts.floor() && window.grown(TOUCH).holds(Box.of(facts.zero(), facts.zero()))) {
      board.addText(ReferenceLines.cornerMark(placing.of(facts.zero())).box());
    }
    Box within = bounded(row, column, paper, 0, -OFF_MATCH);
    KeyPlacer names = new KeyPlacer(placing, board, within, placing.of(facts.box()));
    KeyPlacer keys = new KeyPlacer(placing, board, within, placing.of(facts.box()));
    Shape[] shapes = new Shape[numbers.size()];
    for (int i = 0; i < shapes.length; i++) {
      shapes[i] = shape(piece(numbers.get(i)), placing);
      board.addPiece(shapes[i]);
    }
    List<OpeningSpec> unnamed = nameInside(row, column, names, placing);
    boolean placed = place(row, column, numbers, shapes, keys) && nameOutside(unnamed, names);
    List<Piece> pieces = numbers.stream().map(this::piece).toList();
    return placed ? Optional.of(new SheetPlan(trial.layout(), trial.gutters(), row, column, window, placing, pieces,
        keys.labels(), names.labels())) : Optional.empty();
  }

  /** The window on paper with its sides moved out: by one measure at the panel's edge, by another at match lines. */
  private Box bounded(int row, int column, Box paper, double edge, double match) {
    boolean last = column == trial.grid().columns() - 1;
    boolean top = row == trial.grid().rows() - 1;
    return new Box(paper.minX() - (column == 0 ? edge : match), paper.minY() - (row == 0 ? edge : match),
        paper.maxX() + (last ? edge : match), paper.maxY() + (top ? edge : match));
  }

  /** The window stands in the middle of its room. */
  private Placing placing(Box window) {
    return new Placing(reduction, window.centre(), trial.gutters().room(trial.layout().drawing()).centre());
  }

  private static Shape shape(Piece piece, Placing placing) {
    List<Contour> edges = new ArrayList<>(List.of(placing.of(piece.outline())));
    edges.addAll(placing.of(piece.holes()));
    return new Shape(edges);
  }

  private boolean place(int row, int column, List<Integer> numbers, Shape[] shapes, KeyPlacer keys) {
    double factor = fieldFactor();
    List<KeyRoom> left = new ArrayList<>();
    for (int i = 0; i < shapes.length; i++) {
      KeyRoom room = facts.keys().get(numbers.get(i));
      if (carries(row, column, room.middle()) && !keys.inside(room, shapes[i], factor)) {
        left.add(room);
      }
    }
    return left.stream().allMatch(room -> keys.outside(room, room.middle()));
  }

  /** Keys of the field are as large as a face holds with some air, within limits. */
  private double fieldFactor() {
    double fit = Math.max(facts.face().lyingFit(reduction), facts.face().uprightFit(reduction));
    return Math.max(1, Math.min(KeyLetters.LARGEST / KeyLetters.SMALLEST, 0.85 * fit));
  }

  private boolean carries(int row, int column, Vec point) {
    return trial.grid().row(point.y()) == row && trial.grid().column(point.x()) == column;
  }

  /** Names the openings where they have room; returns those that must be named on this sheet and are not yet. */
  private List<OpeningSpec> nameInside(int row, int column, KeyPlacer names, Placing placing) throws IOException {
    Box window = trial.grid().window(row, column);
    List<OpeningSpec> left = new ArrayList<>();
    for (OpeningSpec opening : facts.panel().spec().openings()) {
      boolean named = opening.outline().box().meets(window) && name(opening, window, names, placing);
      if (!named && carries(row, column, opening.outline().box().centre())) {
        left.add(opening);
      }
    }
    return left;
  }

  /** Writes id and kind, or the id alone, into the part of an opening that shows. */
  private boolean name(OpeningSpec opening, Box window, KeyPlacer names, Placing placing) throws IOException {
    Shape shape = new Shape(List.of(placing.of(opening.outline())));
    Box box = opening.outline().box();
    Box part = new Box(Math.max(box.minX(), window.minX()), Math.max(box.minY(), window.minY()),
        Math.min(box.maxX(), window.maxX()), Math.min(box.maxY(), window.maxY()));
    Contour room = window.holds(box) ? opening.outline()
        : Contour.rectangle(part.minX(), part.minY(), part.width(), part.height());
    return part.width() > 0 && part.height() > 0
        && (names.inside(KeyRoom.in(room, List.of(), letters.words(opening.id() + ' ' + opening.kind())), shape, 1)
            || names.inside(KeyRoom.in(room, List.of(), letters.words(opening.id())), shape, 1));
  }

  private boolean nameOutside(List<OpeningSpec> openings, KeyPlacer names) throws IOException {
    for (OpeningSpec opening : openings) {
      KeyRoom room = KeyRoom.in(opening.outline(), List.of(), letters.words(opening.id() + ' ' + opening.kind()));
      if (!names.outside(room, room.middle())) {
        return false;
      }
    }
    return true;
  }

  private Piece piece(int number) {
    return facts.panel().pieces().get(number);
  }
}
