// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.base.place.PlaceIds;
import muralbench.model.BalancedOrigin;
import muralbench.model.Bond;
import muralbench.model.FixedOrigin;
import muralbench.model.Opening;
import muralbench.model.Origin;
import muralbench.model.Panel;
import muralbench.model.Setting;
import muralbench.model.TileKind;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/**
 * Takes from the model what a panel has of its own.
 *
 * @param units units for the messages
 * @param works takes what is worked on panels
 */
record PanelReader(LengthUnit units, WorkReader works) {
  /**
   * What a panel has of its own, with an origin that was made out before.
   *
   * @throws InputException if a value is missing or cannot be
   */
  PanelSpec own(Panel panel, OriginSpec origin) throws InputException {
    checkPanelId(panel);
    Ranges ranges = at(panel.getId());
    TileKind kind = panel.getTileKind();
    if (kind == null || kind.eIsProxy()) {
      throw ranges.error("read.tile.missing");
    }
    TileSpec tile = tile(kind);
    double gap = ranges.notNegative("gap", panel.getEdgeGap());
    MakingReader making = new MakingReader(ranges);
    return works.with(panel, new PanelSpec(panel.getId(), text(panel.getTitle()), panel.getSurface().getLiteral(),
        panel.getMounting().getLiteral(), tile, joint(ranges, panel, tile), gap,
        new OutlineReader(ranges).contour(panel.getOutline()), openings(panel), bond(ranges, panel.getBond()), origin,
        new SurveyReader(ranges).survey(panel.getOutline()), new MovementReader(ranges).movement(panel),
        making.making(panel), making.board(panel.getBoard())));
  }

  void checkPanelId(Panel panel) throws InputException {
    checkId(panel.getId(), "panel", "", new HashSet<>());
    if (!PlaceIds.isPanelId(panel.getId())) {
      throw new InputException(panel.getId(), PlaceIds.panelProblem(panel.getId()), PlaceIds.panelRemedy());
    }
  }

  /** A kind of tile. */
  TileSpec tile(TileKind tile) throws InputException {
    checkId(tile.getId(), "tile", "", new HashSet<>());
    Ranges ranges = at(tile.getId());
    return new TileSpec(tile.getId(), ranges.positive("tile.width", tile.getWidth()),
        ranges.positive("tile.height", tile.getHeight()), ranges.notNegative("tile.thickness", tile.getThickness()),
        ranges.notNegative("tile.variation", tile.getFacialVariation()),
        ranges.plain("tile.absorption", tile.getWaterAbsorption()), tile.getTileClass().getLiteral(),
        ranges.position("tile.warpage", tile.getWarpage()),
        new MakingReader(ranges).atLeastZero("tile.expansion", tile.getExpansion()));
  }

  private static double joint(Ranges ranges, Panel panel, TileSpec tile) throws InputException {
    double joint = ranges.notNegative("joint", panel.getJoint());
    if (joint >= Math.min(tile.width(), tile.height())) {
      throw ranges.error("read.joint.wide", "joint", ranges.length(joint), "width", ranges.length(tile.width()),
          "height", ranges.length(tile.height()));
    }
    return joint;
  }

  private List<OpeningSpec> openings(Panel panel) throws InputException {
    List<OpeningSpec> openings = new ArrayList<>();
    for (Opening opening : panel.getOpenings()) {
      checkId(opening.getId(), "opening", panel.getId(), new HashSet<>());
      Contour outline = new OutlineReader(at(opening.getId())).contour(opening.getOutline());
      openings.add(new OpeningSpec(opening.getId(), text(opening.getKind()), outline));
    }
    return openings;
  }

  private static BondSpec bond(Ranges ranges, Bond bond) throws InputException {
    if (bond == null) {
      throw ranges.error("read.bond.missing");
    }
    Map<String, String> settings = new LinkedHashMap<>();
    for (Setting setting : bond.getSettings()) {
      if (text(setting.getName()).isBlank()) {
        throw ranges.error("read.setting.unnamed");
      }
      settings.put(setting.getName(), text(setting.getValue()));
    }
    return new BondSpec(text(bond.getKind()), ranges.plain("offset", bond.getOffset()),
        ranges.plain("rotation", bond.getRotation()), settings);
  }

  /** The origin of a panel that has one of its own. */
  OriginSpec origin(Panel panel) throws InputException {
    Ranges ranges = at(panel.getId());
    Origin origin = panel.getOrigin();
    if (origin instanceof FixedOrigin fixed) {
      double x = ranges.position("origin", fixed.getX());
      return new OriginSpec.At(new Vec(x, ranges.position("origin", fixed.getY())));
    }
    if (origin instanceof BalancedOrigin balanced) {
      return new OriginSpec.Balanced(focus(ranges, balanced));
    }
    throw ranges.error("read.origin.missing");
  }

  private static Optional<Vec> focus(Ranges ranges, BalancedOrigin origin) throws InputException {
    if (!origin.isSetFocalX() && !origin.isSetFocalY()) {
      return Optional.empty();
    }
    if (!origin.isSetFocalX() || !origin.isSetFocalY()) {
      throw ranges.error("read.focus.half");
    }
    double x = ranges.position("focus", origin.getFocalX());
    return Optional.of(new Vec(x, ranges.position("focus", origin.getFocalY())));
  }

  /** Refuses an id that is missing or known. */
  void checkId(String id, String what, String panel, Set<String> known) throws InputException {
    if (text(id).isBlank()) {
      throw at(panel).error("read." + what + ".id.missing", "panel", panel);
    }
    if (!known.add(id)) {
      throw at(id).error("read." + what + ".id.twice");
    }
  }

  /** Refuses values of a panel, opening or tile kind. */
  Ranges at(String place) {
    return new Ranges(place, units);
  }

  /** A text, empty if there is none. */
  static String text(String value) {
    return value == null ? "" : value;
  }
}
