// SPDX-License-Identifier: EPL-2.0
package muralbench.bench;

import java.util.ArrayList;
import java.util.List;
import muralbench.setout.BondSpec;
import muralbench.setout.OpeningSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSpec;
import muralbench.setout.TileSpec;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/** Walls to measure with; sizes in millimetres. */
final class Facades {
  static final double TILE = 150;
  static final double JOINT = 3;
  static final double MODULE = TILE + JOINT;

  private Facades() {}

  /** A square facade of about so many cells whose top is twelve arcs, with 40 openings of which 10 are round. */
  static PanelSpec facade(int cells, OriginSpec origin) {
    double side = Math.round(Math.sqrt(cells)) * MODULE;
    List<Segment> edge = new ArrayList<>();
    edge.add(new Line(new Vec(0, 0), new Vec(side, 0)));
    edge.add(new Line(new Vec(side, 0), new Vec(side, side)));
    double half = side / 24;
    for (int i = 11; i >= 0; i--) {
      edge.add(Arc.circular(new Vec((2 * i + 1) * half, side), half, 0, Math.PI));
    }
    edge.add(new Line(new Vec(0, side), new Vec(0, 0)));
    List<OpeningSpec> openings = new ArrayList<>();
    double width = side / 40;
    for (int i = 0; i < 40; i++) {
      double x = side * (i % 8 + 0.3) / 8.3;
      double y = side * (i / 8 + 0.2) / 6;
      Contour outline = i % 4 == 3 ? Contour.circle(new Vec(x + width / 2, y + width / 2), width / 2)
          : Contour.rectangle(x, y, width, 1.3 * width);
      openings.add(new OpeningSpec("O" + i, "window", outline));
    }
    return panel(new Contour(edge), openings, origin);
  }

  /** A panel with an arched top of about so many cells. */
  static PanelSpec arch(int cells) {
    double width = Math.round(Math.sqrt(cells / 1.4)) * MODULE;
    Vec left = new Vec(0, width);
    Vec right = new Vec(width, width);
    Contour outline = new Contour(List.of(new Line(new Vec(0, 0), new Vec(width, 0)), new Line(new Vec(width, 0), right),
        Arc.circular(new Vec(width / 2, width), width / 2, 0, Math.PI), new Line(left, new Vec(0, 0))));
    return panel(outline, List.of(), new OriginSpec.Balanced());
  }

  private static PanelSpec panel(Contour outline, List<OpeningSpec> openings, OriginSpec origin) {
    return new PanelSpec("A", "", "wall", "fixed", new TileSpec("T", TILE, TILE, 0, 0, -1), JOINT, 0, outline, openings,
        BondSpec.grid(), origin);
  }
}
