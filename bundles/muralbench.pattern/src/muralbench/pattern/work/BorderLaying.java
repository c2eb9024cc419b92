// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.work;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthUnit;
import muralbench.model.BandSide;
import muralbench.model.BorderBand;
import muralbench.pattern.border.BandLayout;
import muralbench.pattern.border.BandPath;
import muralbench.pattern.border.BandRow;
import muralbench.pattern.border.BandTiles;
import muralbench.pattern.border.Border;
import muralbench.pattern.border.BorderTile;
import muralbench.pattern.border.Closing;
import muralbench.pattern.border.ClosingSolver;
import muralbench.pattern.border.Corner;
import muralbench.pattern.border.Curve;
import muralbench.pattern.border.CurveBorder;
import muralbench.pattern.border.CurveLayout;
import muralbench.pattern.border.CurveSolver;
import muralbench.pattern.border.CurveTile;
import muralbench.pattern.border.CurveTiles;
import muralbench.pattern.border.JointRange;
import muralbench.pattern.border.Permits;
import muralbench.pattern.border.RowMotifs;
import muralbench.pattern.border.Through;
import muralbench.pattern.border.TileTurn;
import muralbench.pattern.work.LaidBorder.Painted;
import muralbench.setout.BandSpec;
import muralbench.setout.BandSpec.BandTile;
import muralbench.setout.PanelSpec;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/** Closes one border of the model and lays its tiles. */
final class BorderLaying {
  private static final Messages TEXTS = Messages.of(BorderLaying.class);

  private final BorderBand band;
  private final PanelSpec panel;
  private final LengthUnit units;
  private final List<BandRow> rows;
  private final List<RowMotifs> motifs;
  private final List<BandTile> tiles = new ArrayList<>();
  private final List<Painted> painted = new ArrayList<>();

  BorderLaying(BorderBand band, PanelSpec panel, MotifReader motifs, LengthUnit units) throws InputException {
    this.band = band;
    this.panel = panel;
    this.units = units;
    BandRows reader = new BandRows(band, panel, motifs, units);
    this.rows = reader.sizes();
    this.motifs = reader.painted();
  }

  LaidBorder laid() throws InputException {
    try {
      Contour field = band.getSides().isEmpty() ? around(BandGround.of(panel)) : along(BandGround.rectangle(panel));
      return new LaidBorder(new BandSpec(field, tiles), painted);
    } catch (InputException e) {
      throw e.place().startsWith("/") ? new InputException(panel.id(), TEXTS.text("border", "id", band.getId(),
          "problem", e.problem()), e.remedy(), e) : e;
    }
  }

  private Contour around(BandGround ground) throws InputException {
    if (ground.curve().isPresent()) {
      return curved(ground.curve().get());
    }
    BandLayout layout = closed(ground.path().orElseThrow(), joint());
    put(BandTiles.lay(layout, motifs), new int[rows.size()]);
    return layout.field().orElseThrow();
  }

  /** Single sides of a rectangle, each a run of its own with the joint of the first. */
  private Contour along(Box box) throws InputException {
    if (band.getSides().size() > 2 || band.getSides().size() == 2 && !opposite(band.getSides())) {
      throw refused("sides.adjacent");
    }
    int[] numbers = new int[rows.size()];
    Box field = box;
    JointRange joint = joint();
    for (BandSide side : band.getSides()) {
      BandLayout layout = closed(path(side, box), joint);
      joint = JointRange.fixed(layout.joint());
      put(BandTiles.lay(layout, motifs), numbers);
      double depth = layout.fieldDepth();
      field = new Box(field.minX() + (side == BandSide.LEFT ? depth : 0),
          field.minY() + (side == BandSide.BOTTOM ? depth : 0), field.maxX() - (side == BandSide.RIGHT ? depth : 0),
          field.maxY() - (side == BandSide.TOP ? depth : 0));
    }
    if (field.width() <= 0 || field.height() <= 0) {
      throw refused("sides.field");
    }
    return Contour.rectangle(field.minX(), field.minY(), field.width(), field.height());
  }

  private static boolean opposite(List<BandSide> sides) {
    return sides.contains(BandSide.LEFT) == sides.contains(BandSide.RIGHT)
        && sides.contains(BandSide.TOP) == sides.contains(BandSide.BOTTOM);
  }

  private static BandPath path(BandSide side, Box box) {
    Vec lowerLeft = new Vec(box.minX(), box.minY());
    Vec upperLeft = new Vec(box.minX(), box.maxY());
    Vec upperRight = new Vec(box.maxX(), box.maxY());
    Vec lowerRight = new Vec(box.maxX(), box.minY());
    return switch (side) {
      case LEFT -> BandPath.straight(lowerLeft, upperLeft);
      case TOP -> BandPath.straight(upperLeft, upperRight);
      case RIGHT -> BandPath.straight(upperRight, lowerRight);
      case BOTTOM -> BandPath.straight(lowerRight, lowerLeft);
    };
  }

  private BandLayout closed(BandPath path, JointRange joint) throws InputException {
    Border border = new Border(path, rows, Corner.valueOf(band.getCorner().name()),
        Through.valueOf(band.getThrough().name()), joint, permits());
    Closing closing = ClosingSolver.solve(border, units);
    return chosen(closing.layouts(), closing.message());
  }

  /** The rows on a circle or an arch, each on the curve that the one before leaves, with the joint of the first. */
  private Contour curved(Curve outer) throws InputException {
    Curve curve = outer;
    JointRange joint = joint();
    CurveLayout layout = null;
    for (int row = 0; row < rows.size(); row++) {
      CurveSolver.Result result = CurveSolver.solve(
          new CurveBorder(curve, rows.get(row), joint, row == 0 ? permits() : permits().move(0, 0)), units);
      layout = chosen(result.layouts(), result.message());
      put(row, CurveTiles.lay(layout, motifs.get(row).run()));
      joint = JointRange.fixed(layout.joint());
      curve = layout.inside();
    }
    return layout.field().orElseThrow();
  }

  private <T> T chosen(List<T> layouts, String message) throws InputException {
    if (layouts.isEmpty()) {
      throw new InputException(panel.id(), TEXTS.text("border", "id", band.getId(), "problem", message),
          TEXTS.text("border.remedy"));
    }
    return layouts.get(Math.max(0, Math.min(band.getChoice(), layouts.size()) - 1));
  }

  /** The joints that are permitted; that of the panel does no harm if it is one of them. */
  private JointRange joint() throws InputException {
    double least = band.getJointLeast() < 0 ? panel.joint() : band.getJointLeast();
    double most = band.getJointMost() < 0 ? panel.joint() : band.getJointMost();
    if (least > most) {
      throw refused("joint.range");
    }
    boolean within = panel.joint() >= least && panel.joint() <= most;
    return new JointRange(least, within ? panel.joint() : (least + most) / 2, most);
  }

  private Permits permits() {
    return new Permits(band.getMoveIn(), band.getMoveOut(), band.getScale() / 100, band.getCentreLeast(),
        band.getCentreMost(), band.getEndShare());
  }

  /** Takes tiles over; {@code before} counts the tiles of each row that are there already. */
  private void put(List<BorderTile> laid, int[] before) {
    int[] added = new int[before.length];
    for (BorderTile tile : laid) {
      int row = tile.row() - 1;
      int number = before[row] + tile.number();
      Box cell = tile.cell();
      tiles.add(new BandTile(tile.row(), number, tileOf(row),
          Contour.rectangle(cell.minX(), cell.minY(), cell.width(), cell.height()), tile.face()));
      painted.add(Steps.painted(tile.row(), number, tile.motif(), tile.turn()));
      added[row] = Math.max(added[row], tile.number());
    }
    for (int row = 0; row < before.length; row++) {
      before[row] += added[row];
    }
  }

  private void put(int row, List<CurveTile> laid) {
    for (CurveTile tile : laid) {
      tiles.add(new BandTile(row + 1, tile.number(), tileOf(row), tile.face(), tile.face()));
      painted.add(Steps.painted(row + 1, tile.number(), tile.motif(), new TileTurn(0, tile.mirrored())));
    }
  }

  private String tileOf(int row) {
    return band.getRows().get(row).getTileKind().getId();
  }

  private InputException refused(String key) {
    return new InputException(panel.id(), TEXTS.text(key), TEXTS.text(key + ".remedy"));
  }
}
