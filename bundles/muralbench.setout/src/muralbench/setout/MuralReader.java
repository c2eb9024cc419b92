// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.base.place.PlaceIds;
import muralbench.model.BalancedOrigin;
import muralbench.model.Bond;
import muralbench.model.DisplayUnits;
import muralbench.model.Exposure;
import muralbench.model.FixedOrigin;
import muralbench.model.Mural;
import muralbench.model.Opening;
import muralbench.model.Origin;
import muralbench.model.Outline;
import muralbench.model.Panel;
import muralbench.model.Setting;
import muralbench.model.TileKind;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.eclipse.emf.ecore.EObject;

/** Takes what the set-out needs from the model. */
public final class MuralReader {
  private final LengthUnit units;

  private MuralReader(LengthUnit units) {
    this.units = units;
  }

  /**
   * The whole mural.
   *
   * @throws InputException naming the panel, opening or tile kind if a value is missing or out of range, an id is there
   *     twice or a path cannot be read
   */
  public static MuralSpec mural(Mural mural) throws InputException {
    MuralReader reader = new MuralReader(units(mural));
    reader.checkIds(mural);
    for (TileKind tile : mural.getTileKinds()) {
      reader.tile(tile);
    }
    List<PanelSpec> panels = new ArrayList<>();
    for (Panel panel : mural.getPanels()) {
      panels.add(reader.read(panel));
    }
    return mural(mural, panels);
  }

  /**
   * The mural with panels that were read before.
   *
   * @throws InputException if the spares, a box or the swing of temperature cannot be
   */
  public static MuralSpec mural(Mural mural, List<PanelSpec> panels) throws InputException {
    MakingReader making = new MakingReader(new Ranges("", units(mural)));
    Exposure exposure = mural.getSite() == null ? Exposure.INTERIOR_DRY : mural.getSite().getExposure();
    return new MuralSpec(text(mural.getTitle()), text(mural.getClient()), text(mural.getRevision()), units(mural),
        exposure.getLiteral(), panels, making.swing(mural), making.allowances(mural));
  }

  /** One panel; see {@link #mural}. Whether its ids are unique in the mural is not looked at. */
  public static PanelSpec panel(Panel panel) throws InputException {
    return new MuralReader(units(panel)).read(panel);
  }

  /**
   * An outline as a counter-clockwise contour.
   *
   * @param owner id of the panel or opening it belongs to, for errors
   */
  public static Contour outline(Outline outline, String owner) throws InputException {
    return new OutlineReader(new Ranges(owner, units(outline))).contour(outline);
  }

  /** The units of the mural something belongs to; millimetres for what stands alone. */
  private static LengthUnit units(EObject part) {
    EObject owner = part;
    while (owner != null && !(owner instanceof Mural)) {
      owner = owner.eContainer();
    }
    return owner instanceof Mural mural && mural.getUnits() == DisplayUnits.INCHES ? LengthUnit.INCH
        : LengthUnit.MILLIMETRE;
  }

  private void checkIds(Mural mural) throws InputException {
    Set<String> tiles = new HashSet<>();
    for (TileKind tile : mural.getTileKinds()) {
      checkId(tile.getId(), "tile", "", tiles);
    }
    Set<String> places = new LinkedHashSet<>();
    for (Panel panel : mural.getPanels()) {
      checkPlace(panel.getId(), "panel", "", places);
      for (Opening opening : panel.getOpenings()) {
        checkPlace(opening.getId(), "opening", panel.getId(), places);
      }
    }
  }

  private void checkPlace(String id, String what, String panel, Set<String> places) throws InputException {
    checkId(id, what, panel, new HashSet<>());
    Optional<String> other = PlaceIds.taken(id, places);
    if (other.isPresent()) {
      throw new InputException(id, PlaceIds.takenProblem(id, other.get()), PlaceIds.takenRemedy());
    }
    places.add(id);
  }

  private void checkId(String id, String what, String panel, Set<String> known) throws InputException {
    if (text(id).isBlank()) {
      throw at(panel).error("read." + what + ".id.missing", "panel", panel);
    }
    if (!known.add(id)) {
      throw at(id).error("read." + what + ".id.twice");
    }
  }

  private PanelSpec read(Panel panel) throws InputException {
    checkId(panel.getId(), "panel", "", new HashSet<>());
    if (!PlaceIds.isPanelId(panel.getId())) {
      throw new InputException(panel.getId(), PlaceIds.panelProblem(panel.getId()), PlaceIds.panelRemedy());
    }
    Ranges ranges = at(panel.getId());
    TileKind kind = panel.getTileKind();
    if (kind == null || kind.eIsProxy()) {
      throw ranges.error("read.tile.missing");
    }
    TileSpec tile = tile(kind);
    double gap = ranges.notNegative("gap", panel.getEdgeGap());
    MakingReader making = new MakingReader(ranges);
    return new PanelSpec(panel.getId(), text(panel.getTitle()), panel.getSurface().getLiteral(),
        panel.getMounting().getLiteral(), tile, joint(ranges, panel, tile), gap,
        new OutlineReader(ranges).contour(panel.getOutline()), openings(panel), bond(ranges, panel.getBond()),
        origin(ranges, panel.getOrigin()), new SurveyReader(ranges).survey(panel.getOutline()),
        new MovementReader(ranges).movement(panel), making.making(panel), making.board(panel.getBoard()));
  }

  private TileSpec tile(TileKind tile) throws InputException {
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

  private static OriginSpec origin(Ranges ranges, Origin origin) throws InputException {
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

  private Ranges at(String place) {
    return new Ranges(place, units);
  }

  private static String text(String value) {
    return value == null ? "" : value;
  }
}
