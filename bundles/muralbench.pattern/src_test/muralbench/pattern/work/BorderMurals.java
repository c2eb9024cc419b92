// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.work;

import muralbench.model.BorderBand;
import muralbench.model.BorderRow;
import muralbench.model.BorderStep;
import muralbench.model.MotifDrawing;
import muralbench.model.MotifRegion;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Opening;
import muralbench.model.Outline;
import muralbench.model.Panel;
import muralbench.model.PatternBook;
import muralbench.model.Point;
import muralbench.model.PolygonOutline;
import muralbench.model.RectangleOutline;
import muralbench.model.RepeatedOutline;
import muralbench.model.TileKind;

/** Murals of one panel with a border, for tests: field tiles of 150 mm, border tiles of 100 mm, joints of 3 mm. */
final class BorderMurals {
  private static final MuralFactory MAKE = MuralFactory.eINSTANCE;

  private BorderMurals() {}

  static Mural mural(Outline outline, BorderBand band) {
    Mural mural = MAKE.createMural();
    mural.setSite(MAKE.createSite());
    TileKind field = tile("T150", 150);
    TileKind border = tile("B100", 100);
    mural.getTileKinds().add(field);
    mural.getTileKinds().add(border);
    PatternBook book = MAKE.createPatternBook();
    book.getMotifs().add(motif("reed", "M 0 0.4 L 1 0.4 L 1 0.6 L 0 0.6 Z"));
    book.getMotifs().add(motif("knot", "M 0 0.4 L 0.5 0.2 L 1 0.4 L 1 0.6 L 0.5 0.8 L 0 0.6 Z"));
    mural.getBooks().add(book);
    band.getRows().forEach(row -> row.setTileKind(border));
    Panel panel = MAKE.createPanel();
    panel.setId("A");
    panel.setTileKind(field);
    panel.setJoint(3);
    panel.setOutline(outline);
    panel.setBond(MAKE.createBond());
    panel.getBond().setKind("grid");
    panel.setOrigin(MAKE.createBalancedOrigin());
    panel.getWorks().add(band);
    mural.getPanels().add(panel);
    return mural;
  }

  /** A band of one row with corner tiles, whose joint is that of the panel. */
  static BorderBand band(String... motifs) {
    BorderBand band = MAKE.createBorderBand();
    band.setId("rim");
    BorderRow row = MAKE.createBorderRow();
    for (String motif : motifs.length == 0 ? new String[] {"reed"} : motifs) {
      BorderStep step = MAKE.createBorderStep();
      step.setMotif(motif);
      row.getSteps().add(step);
    }
    band.getRows().add(row);
    return band;
  }

  static Panel repeat(Mural mural, String id, double x, boolean mirrored) {
    Panel panel = MAKE.createPanel();
    panel.setId(id);
    RepeatedOutline outline = MAKE.createRepeatedOutline();
    outline.setPanel(mural.getPanels().get(0));
    outline.setX(x);
    outline.setMirrored(mirrored);
    panel.setOutline(outline);
    return panel;
  }

  static RectangleOutline rectangle(double x, double y, double width, double height) {
    RectangleOutline outline = MAKE.createRectangleOutline();
    outline.setX(x);
    outline.setY(y);
    outline.setWidth(width);
    outline.setHeight(height);
    return outline;
  }

  static PolygonOutline polygon(double... coordinates) {
    PolygonOutline outline = MAKE.createPolygonOutline();
    for (int i = 0; i < coordinates.length; i += 2) {
      Point point = MAKE.createPoint();
      point.setX(coordinates[i]);
      point.setY(coordinates[i + 1]);
      outline.getPoints().add(point);
    }
    return outline;
  }

  static Opening opening(String id, double x, double y, double width, double height) {
    Opening opening = MAKE.createOpening();
    opening.setId(id);
    opening.setKind("outlet");
    opening.setOutline(rectangle(x, y, width, height));
    return opening;
  }

  private static TileKind tile(String id, double size) {
    TileKind tile = MAKE.createTileKind();
    tile.setId(id);
    tile.setWidth(size);
    tile.setHeight(size);
    return tile;
  }

  private static MotifDrawing motif(String id, String path) {
    MotifDrawing motif = MAKE.createMotifDrawing();
    motif.setId(id);
    motif.setGround("cream");
    MotifRegion region = MAKE.createMotifRegion();
    region.setColour("reed");
    region.setData(path);
    motif.getRegions().add(region);
    return motif;
  }
}
