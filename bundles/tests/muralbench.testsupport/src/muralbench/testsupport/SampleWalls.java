// SPDX-License-Identifier: EPL-2.0
package muralbench.testsupport;

import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
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

/** Small murals, set out by the program itself, in which every kind of piece occurs. */
public final class SampleWalls {
  private static final TileSpec TILE = new TileSpec("T6", 152.4, 152.4, 9.525, 0.8, 0.3);

  private SampleWalls() {}

  /** A wall with an outlet and a pipe, and a round face, in inches. */
  public static MuralSetOut inches() throws InputException {
    return mural("Harbour wall", LengthUnit.INCH, "A", "B");
  }

  /** The same in millimetres. */
  public static MuralSetOut millimetres() throws InputException {
    return mural("Hafenwand", LengthUnit.MILLIMETRE, "A", "B");
  }

  /** Texts that would do harm in markup, tables and file names if they were taken as they are. */
  public static MuralSetOut hostile() throws InputException {
    return mural("=1+1 <b>&\"' \u0000\u0007 \u202e x".repeat(20), LengthUnit.INCH, "=A/../1", "<&>");
  }

  /** One panel, 1000 mm by 700 mm, laid in a bond. */
  public static PanelSetOut laidIn(String kind, BondRegistry bonds) throws InputException {
    PanelSpec panel = new PanelSpec("A", "", "wall", "fixed", TILE, 3.175, 0, Contour.rectangle(0, 914.4, 1000, 700),
        List.of(), new BondSpec(kind, 0, 0, Map.of()), new OriginSpec.Balanced());
    return SetOut.panel(panel, bonds, Progress.NONE);
  }

  private static MuralSetOut mural(String title, LengthUnit units, String wall, String round) throws InputException {
    PanelSpec first = panel(wall, title, Contour.rectangle(0, 914.4, 1000, 700),
        List.of(new OpeningSpec(wall + "1", "outlet", Contour.rectangle(300, 1000, 60, 90)),
            new OpeningSpec(wall + "2", "pipe", Contour.circle(new Vec(730, 1264.4), 15))));
    PanelSpec second = panel(round, title, Contour.circle(new Vec(2000, 1300), 400), List.of());
    MuralSpec mural = new MuralSpec(title, "Marsh Café", "C", units, "interior-dry", List.of(first, second));
    return SetOut.mural(mural, BondRegistry.standard(), Progress.NONE);
  }

  private static PanelSpec panel(String id, String title, Contour outline, List<OpeningSpec> openings) {
    return new PanelSpec(id, title, "wall", "fixed", TILE, 3.175, 0, outline, openings, BondSpec.grid(),
        new OriginSpec.Balanced());
  }
}
