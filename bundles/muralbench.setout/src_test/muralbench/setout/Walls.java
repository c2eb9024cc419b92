// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.PathData;
import muralbench.setout.geometry.Vec;

/** Builds panels for tests, in inches as the worked examples are. */
final class Walls {
  static final double IN = 25.4;

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

  static Walls rectangle(double x, double y, double width, double height) {
    return new Walls(Contour.rectangle(x * IN, y * IN, width * IN, height * IN));
  }

  static Walls circle(double x, double y, double radius) {
    return new Walls(Contour.circle(new Vec(x * IN, y * IN), radius * IN));
  }

  static Walls polygon(double... coordinates) {
    List<Vec> corners = new ArrayList<>();
    for (int i = 0; i < coordinates.length; i += 2) {
      corners.add(new Vec(coordinates[i] * IN, coordinates[i + 1] * IN));
    }
    return new Walls(Contour.polygon(corners));
  }

  static Walls outline(Contour millimetres) {
    return new Walls(millimetres);
  }

  static Walls path(String millimetres) throws PathData.PathDataException {
    return new Walls(PathData.parse(millimetres).get(0).counterClockwise());
  }

  static TileSpec tile(double width, double height) {
    return new TileSpec("T", width * IN, height * IN, 0, 0, -1);
  }

  Walls tiles(double width, double height, double joint) {
    this.tile = tile(width, height);
    this.joint = joint * IN;
    return this;
  }

  Walls edgeGap(double gap) {
    this.gap = gap * IN;
    return this;
  }

  Walls bond(String kind, double offset, double rotation) {
    bond = new BondSpec(kind, offset, rotation, Map.of());
    return this;
  }

  /** Settings of the bond, as {@code name=value;name=value}; a slash stands for a semicolon in a value. */
  Walls setting(String text) {
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

  Walls from(double x, double y) {
    origin = new OriginSpec.At(new Vec(x * IN, y * IN));
    return this;
  }

  Walls opening(Contour contour) {
    openings.add(new OpeningSpec("O" + (openings.size() + 1), "outlet", contour));
    return this;
  }

  Walls opening(double x, double y, double width, double height) {
    return opening(Contour.rectangle(x * IN, y * IN, width * IN, height * IN));
  }

  PanelSpec spec() {
    return new PanelSpec("A", "", "wall", "fixed", tile, joint, gap, outline, openings, bond, origin);
  }

  PanelSetOut setOut() throws InputException {
    return SetOut.panel(spec(), BondRegistry.standard(), Progress.NONE);
  }
}
