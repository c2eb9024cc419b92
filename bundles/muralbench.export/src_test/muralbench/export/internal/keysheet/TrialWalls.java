// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.export.ExportContext;
import muralbench.export.Paper;
import muralbench.setout.BondSpec;
import muralbench.setout.MuralSetOut;
import muralbench.setout.MuralSpec;
import muralbench.setout.OpeningSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/** Walls of our own invention for the key sheets; measures in inches, 6 in tiles with a 1/8 in joint. */
final class TrialWalls {
  private static final double INCH = 25.4;

  private TrialWalls() {}

  static Contour rectangle(double x, double y, double width, double height) {
    return Contour.rectangle(x * INCH, y * INCH, width * INCH, height * INCH);
  }

  static OpeningSpec opening(String id, String kind, double x, double y, double width, double height) {
    return new OpeningSpec(id, kind, rectangle(x, y, width, height));
  }

  static PanelSetOut panel(String id, String title, double tile, Contour outline, BondSpec bond, OriginSpec origin,
      OpeningSpec... openings) throws InputException {
    TileSpec kind = new TileSpec("T" + (int) tile, tile * INCH, tile * INCH, 9.525, 0.8, 0.3);
    PanelSpec spec = new PanelSpec(id, title, "wall", "fixed", kind, INCH / 8, 0, outline, List.of(openings), bond,
        origin);
    return SetOut.panel(spec, BondRegistry.standard(), Progress.NONE);
  }

  static PanelSetOut grid(String id, String title, Contour outline, OpeningSpec... openings) throws InputException {
    return panel(id, title, 6, outline, BondSpec.grid(), new OriginSpec.Balanced(), openings);
  }

  /** A splash of 6 ft by 18 in above a counter, with an outlet. */
  static PanelSetOut splash() throws InputException {
    return grid("S", "Low water", rectangle(0, 36, 72, 18), opening("S1", "outlet", 20, 42, 2.25, 3.5));
  }

  /** A facade of 12 ft by 8 ft with a window, half bond. */
  static PanelSetOut facade() throws InputException {
    BondSpec half = new BondSpec("grid", 0.5, 0, Map.of());
    return panel("F", "The crossing", 6, rectangle(80, 12, 144, 96), half, new OriginSpec.Balanced(),
        opening("F1", "window", 130, 48, 40, 36));
  }

  /** A round face of 60 in. */
  static PanelSetOut round() throws InputException {
    return grid("R", "Compass", Contour.circle(new Vec(270 * INCH, 60 * INCH), 30 * INCH));
  }

  /** A round face of 48 in, laid in six rings. */
  static PanelSetOut rings() throws InputException {
    BondSpec rings = new BondSpec("rings", 0, 0,
        Map.of("radius", "24 in", "rings", String.join(", ", Collections.nCopies(6, "3-5/8 in"))));
    return panel("G", "Hours", 4.25, Contour.circle(new Vec(380 * INCH, 60 * INCH), 24 * INCH), rings,
        new OriginSpec.Balanced());
  }

  /** A panel whose given start leaves slivers on all sides. */
  static PanelSetOut slivers() throws InputException {
    return panel("V", "Storm light", 6, rectangle(310, 36, 37, 25), BondSpec.grid(),
        new OriginSpec.At(new Vec(310.4 * INCH, 36.3 * INCH)), opening("V1", "pipe", 322.3, 48.2, 3, 6.5));
  }

  /** A panel of 98 by 98 tiles of 1 in. */
  static PanelSetOut tenThousand() throws InputException {
    return panel("M", "Lamps home", 1, rectangle(0, 36, 112, 112), BondSpec.grid(), new OriginSpec.Balanced());
  }

  static MuralSetOut mural(LengthUnit units, PanelSetOut... panels) {
    List<PanelSpec> specs = List.of(panels).stream().map(PanelSetOut::spec).toList();
    return new MuralSetOut(new MuralSpec("Ferry landing", "Marsh Café, Łódź", "B", units, "interior-dry", specs),
        List.of(panels));
  }

  static ExportContext context(MuralSetOut mural, Paper paper) {
    return new ExportContext(mural, List.of(), paper, LocalDate.of(2031, 5, 6));
  }
}
