// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.PathData;
import muralbench.setout.geometry.Vec;

/** Builds panels for tests, in inches as the worked examples are. */
public final class Walls {
  public static final double IN = 25.4;

  private final Contour outline;
  private final List<OpeningSpec> openings = new ArrayList<>();
  private TileSpec tile = tile(6, 6);
  private double joint = IN / 8;
  private double gap;
  private BondSpec bond = BondSpec.grid();
  private OriginSpec origin = new OriginSpec.Balanced();

  private Walls(Contour outline) {
    this.outline = outline;
  }

  public static Walls rectangle(double x, double y, double width, double height) {
    return new Walls(Contour.rectangle(x * IN, y * IN, width * IN, height * IN));
  }

  public static Walls circle(double x, double y, double radius) {
    return new Walls(Contour.circle(new Vec(x * IN, y * IN), radius * IN));
  }

  public static Walls polygon(double... coordinates) {
    List<Vec> corners = new ArrayList<>();
    for (int i = 0; i < coordinates.length; i += 2) {
      corners.add(new Vec(coordinates[i] * IN, coordinates[i + 1] * IN));
    }
    return new Walls(Contour.polygon(corners));
  }

  public static Walls outline(Contour millimetres) {
    return new Walls(millimetres);
  }

  public static Walls path(String millimetres) throws PathData.PathDataException {
    return new Walls(PathData.parse(millimetres).get(0).counterClockwise());
  }

  public static TileSpec tile(double width, double height) {
    return new TileSpec("T", width * IN, height * IN, 0, 0, -1);
  }

  public Walls tiles(double width, double height, double joint) {
    this.tile = tile(width, height);
    this.joint = joint * IN;
    return this;
  }

  public Walls edgeGap(double gap) {
    this.gap = gap * IN;
    return this;
  }

  public Walls bond(String kind, double offset, double rotation) {
    bond = new BondSpec(kind, offset, rotation, Map.of());
    return this;
  }

  /** Settings of the bond, as {@code name=value;name=value}; a slash stands for a semicolon in a value. */
  public Walls setting(String text) {
    bond = new BondSpec(bond.kind(), bond.offset(), bond.rotation(), settings(text));
    return this;
  }

  static Map<String, String> settings(String text) {
    Map<String, String> settings = new HashMap<>();
    for (String part : text.split(";")) {
      if (part.contains("=")) {
        settings.put(part.substring(0, part.indexOf('=')), part.substring(part.indexOf('=') + 1).replace('/', ';'));
      }
    }
    return settings;
  }

  public Walls from(double x, double y) {
    origin = new OriginSpec.At(new Vec(x * IN, y * IN));
    return this;
  }

  /** A balanced start that lays a face centre or a crossing on a point. */
  public Walls focus(double x, double y) {
    origin = new OriginSpec.Balanced(Optional.of(new Vec(x * IN, y * IN)));
    return this;
  }

  public Walls opening(Contour contour) {
    openings.add(new OpeningSpec("O" + (openings.size() + 1), "outlet", contour));
    return this;
  }

  public Walls opening(double x, double y, double width, double height) {
    return opening(Contour.rectangle(x * IN, y * IN, width * IN, height * IN));
  }

  public PanelSpec spec() {
    return new PanelSpec("A", "", "wall", "fixed", tile, joint, gap, outline, openings, bond, origin);
  }

  public PanelSetOut setOut() throws InputException {
    return SetOut.panel(spec(), BondRegistry.standard(), Progress.NONE);
  }
}
