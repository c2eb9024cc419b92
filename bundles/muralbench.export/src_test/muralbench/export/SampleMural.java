// SPDX-License-Identifier: EPL-2.0
package muralbench.export;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import muralbench.base.length.LengthUnit;
import muralbench.setout.BondSpec;
import muralbench.setout.KeyScheme;
import muralbench.setout.MuralSetOut;
import muralbench.setout.MuralSpec;
import muralbench.setout.OpeningSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.Piece;
import muralbench.setout.PieceKind;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.Cell;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;

/**
 * Murals set out by hand, so that exporters are tested against numbers a person can check. Panel {@code A} has three
 * courses of 6 in tiles with a 1/8 in joint, its lower left corner at (0, 914.4):
 *
 * <pre>
 *  course 3   curved (radius 100)   whole     whole     trimmed (100 wide)
 *  course 2   whole                 pierced   whole     trimmed
 *  course 1   whole                 whole     notched   trimmed
 * </pre>
 */
public final class SampleMural {
  /** Side of a tile, mm. */
  public static final double TILE = 152.4;
  /** Tile and joint, mm. */
  public static final double MODULE = 155.575;
  /** Left and bottom edge of panel A, mm. */
  public static final Vec CORNER = new Vec(0, 914.4);
  /** Width of the trimmed pieces, mm. */
  public static final double TRIMMED = 100;
  /** The day printed on documents. */
  public static final LocalDate DATE = LocalDate.of(2026, 3, 14);

  private static final double WIDTH = 3 * MODULE + TRIMMED;
  private static final double HEIGHT = 2 * MODULE + TILE;

  private SampleMural() {}

  /** Panel A in inches. */
  public static MuralSetOut inches() {
    return of(LengthUnit.INCH, panel("A"));
  }

  /** A mural of the given panels. */
  public static MuralSetOut of(LengthUnit units, PanelSetOut... panels) {
    return of("Harbour wall", units, panels);
  }

  /** A mural of the given panels with a title. */
  public static MuralSetOut of(String title, LengthUnit units, PanelSetOut... panels) {
    List<PanelSpec> specs = List.of(panels).stream().map(PanelSetOut::spec).toList();
    return new MuralSetOut(new MuralSpec(title, "Marsh Café", "C", units, "interior-dry", specs), List.of(panels));
  }

  /** What an exporter is given. */
  public static ExportContext context(MuralSetOut setOut) {
    return new ExportContext(setOut, List.of(), Paper.LETTER, DATE);
  }

  /** The panel of the class comment under another id. */
  public static PanelSetOut panel(String id) {
    return panel(id, "Low water");
  }

  /** The panel of the class comment under another id and title. */
  public static PanelSetOut panel(String id, String title) {
    double areaOfOpenings = Math.PI * 20 * 20 + 60 * 40;
    double roundedOff = 100 * 100 * (1 - Math.PI / 4);
    double area = WIDTH * HEIGHT - areaOfOpenings - roundedOff;
    PanelSpec spec = spec(id, title);
    List<Contour> tiled = new ArrayList<>(List.of(spec.outline()));
    spec.openings().forEach(opening -> tiled.add(opening.outline().reversed()));
    return new PanelSetOut(spec, CORNER, area, tiled, pieces(id));
  }

  private static PanelSpec spec(String id, String title) {
    TileSpec tile = new TileSpec("T6", TILE, TILE, 9.525, 0.79375, 0.3);
    List<OpeningSpec> openings = List.of(
        new OpeningSpec(id + "1", "pipe", Contour.circle(middle(1, 1), 20)),
        new OpeningSpec(id + "2", "outlet",
            Contour.rectangle(2 * MODULE, CORNER.y(), 60, 40)));
    return new PanelSpec(id, title, "wall", "fixed", tile, MODULE - TILE, 0, outline(), openings, BondSpec.grid(),
        new OriginSpec.Balanced());
  }

  private static Contour outline() {
    double top = CORNER.y() + HEIGHT;
    return new Contour(List.of(new Line(CORNER, new Vec(WIDTH, CORNER.y())),
        new Line(new Vec(WIDTH, CORNER.y()), new Vec(WIDTH, top)), new Line(new Vec(WIDTH, top), new Vec(100, top)),
        Arc.circular(new Vec(100, top - 100), 100, Math.PI / 2, Math.PI / 2),
        new Line(new Vec(0, top - 100), CORNER)));
  }

  private static List<Piece> pieces(String panel) {
    List<Piece> pieces = new ArrayList<>();
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 4; column++) {
        pieces.add(piece(panel, row, column));
      }
    }
    return pieces;
  }

  private static Piece piece(String panel, int row, int column) {
    if (column == 3) {
      return piece(panel, row, column, PieceKind.TRIMMED,
          Contour.rectangle(3 * MODULE, bottom(row), TRIMMED, TILE), List.of());
    }
    if (row == 0 && column == 2) {
      return piece(panel, row, column, PieceKind.NOTCHED, notched(), List.of());
    }
    if (row == 1 && column == 1) {
      return piece(panel, row, column, PieceKind.PIERCED, whole(row, column),
          List.of(Contour.circle(middle(1, 1), 20).reversed()));
    }
    if (row == 2 && column == 0) {
      return piece(panel, row, column, PieceKind.CURVED, curved(), List.of());
    }
    return piece(panel, row, column, PieceKind.WHOLE, whole(row, column), List.of());
  }

  private static Piece piece(String panel, int row, int column, PieceKind kind, Contour outline, List<Contour> holes) {
    double area = outline.area() - holes.stream().mapToDouble(Contour::area).sum();
    Cell cell = new Cell(row, column, Contour.rectangle(column * MODULE, row * MODULE, TILE, TILE));
    String key = KeyScheme.coursePosition().key(panel, row + 1, 3, column + 1, 4, 0);
    return new Piece(key, row + 1, column + 1, kind, "T6", area, outline, holes, cell, Motion.shift(CORNER));
  }

  private static Contour whole(int row, int column) {
    return Contour.rectangle(column * MODULE, bottom(row), TILE, TILE);
  }

  /** The lower left corner is cut away by an opening 60 x 40. */
  private static Contour notched() {
    double left = 2 * MODULE;
    double low = bottom(0);
    return Contour.polygon(List.of(new Vec(left + 60, low), new Vec(left + TILE, low),
        new Vec(left + TILE, low + TILE), new Vec(left, low + TILE), new Vec(left, low + 40),
        new Vec(left + 60, low + 40)));
  }

  /** The upper left corner is rounded with a radius of 100. */
  private static Contour curved() {
    double low = bottom(2);
    double top = low + TILE;
    return new Contour(List.of(new Line(new Vec(0, low), new Vec(TILE, low)),
        new Line(new Vec(TILE, low), new Vec(TILE, top)), new Line(new Vec(TILE, top), new Vec(100, top)),
        Arc.circular(new Vec(100, top - 100), 100, Math.PI / 2, Math.PI / 2),
        new Line(new Vec(0, top - 100), new Vec(0, low))));
  }

  private static double bottom(int row) {
    return CORNER.y() + row * MODULE;
  }

  private static Vec middle(int row, int column) {
    return new Vec(column * MODULE + TILE / 2, bottom(row) + TILE / 2);
  }

}
