// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import com.fasterxml.jackson.databind.JsonNode;
import muralbench.base.InputException;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.model.BackingBoard;
import muralbench.model.Bond;
import muralbench.model.DisplayUnits;
import muralbench.model.Exposure;
import muralbench.model.BalancedOrigin;
import muralbench.model.FixedOrigin;
import muralbench.model.FocalArea;
import muralbench.model.JointAxis;
import muralbench.model.Mounting;
import muralbench.model.MovementJoint;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Opening;
import muralbench.model.Origin;
import muralbench.model.Outline;
import muralbench.model.Panel;
import muralbench.model.RepeatedOutline;
import muralbench.model.Setting;
import muralbench.model.SharedLine;
import muralbench.model.SharedOrigin;
import muralbench.model.Site;
import muralbench.model.Surface;
import muralbench.model.TileClass;
import muralbench.model.TileKind;

/** Makes the mural from a brief that fits the schema, and checks what a schema cannot say. */
public final class BriefMural {
  private static final MuralFactory MAKE = MuralFactory.eINSTANCE;

  private final Mural mural = MAKE.createMural();
  private final Ids ids = new Ids();
  private final PanelLinks links = new PanelLinks();
  private final LengthUnit unit;
  private final Lengths lengths;
  private final Outlines outlines;
  private final Studio studio;
  private final Patterns patterns;

  private BriefMural(LengthUnit unit, BriefFolder folder) {
    this.unit = unit;
    this.lengths = new Lengths(unit);
    this.outlines = new Outlines(lengths, folder);
    this.studio = new Studio(lengths);
    this.patterns = new Patterns(lengths);
  }

  /**
   * The mural of a brief that {@link BriefSchema} found nothing wrong with.
   *
   * @param folder holds the drawings it uses
   */
  public static Mural of(JsonNode brief, BriefFolder folder) throws InputException {
    Field root = new Field(brief, "");
    boolean metric = root.at("units").text("in").equals("mm");
    return new BriefMural(metric ? LengthUnit.MILLIMETRE : LengthUnit.INCH, folder).read(root);
  }

  private Mural read(Field root) throws InputException {
    mural.setTitle(root.at("title").text(null));
    mural.setClient(root.at("client").text(null));
    mural.setRevision(root.at("revision").text(mural.getRevision()));
    mural.setUnits(unit == LengthUnit.INCH ? DisplayUnits.INCHES : DisplayUnits.MILLIMETRES);
    Site site = MAKE.createSite();
    site.setExposure(Exposure.get(root.at("site").at("exposure").text(site.getExposure().getLiteral())));
    site.setTemperatureSwing(Studio.swing(root.at("site").at("temperatureSwing")));
    mural.setSite(site);
    for (Field tile : root.at("tiles").items()) {
      mural.getTileKinds().add(tile(tile));
    }
    if (root.at("colours").isGiven() || root.at("motifs").isGiven()) {
      mural.getBooks().add(patterns.book(root));
    }
    for (Field panel : root.at("panels").items()) {
      mural.getPanels().add(panel(panel));
    }
    making(root);
    links.resolve(mural.getPanels());
    return mural;
  }

  private void making(Field root) throws InputException {
    Field making = root.at("making");
    if (making.isGiven()) {
      mural.setMaking(studio.making(making));
    }
    Field spares = root.at("spares");
    spares.node().fieldNames()
        .forEachRemaining(bond -> mural.getSpares().add(Studio.spare(bond, spares.at(bond))));
  }

  private TileKind tile(Field field) throws InputException {
    TileKind tile = MAKE.createTileKind();
    tile.setId(ids.tile(field.at("id")));
    tile.setWidth(lengths.size(field.at("width")));
    tile.setHeight(lengths.size(field.at("height")));
    Field thickness = field.at("thickness");
    tile.setThickness(thickness.isGiven() ? lengths.size(thickness) : tile.getThickness());
    tile.setFacialVariation(lengths.gap(field.at("facialVariation")));
    tile.setWaterAbsorption(field.at("waterAbsorption").number(tile.getWaterAbsorption()));
    tile.setBody(field.at("body").text(null));
    tile.setTileClass(TileClass.get(field.at("class").text(tile.getTileClass().getLiteral())));
    Field warpage = field.at("warpage");
    tile.setWarpage(warpage.isGiven() ? lengths.gap(warpage) : tile.getWarpage());
    tile.setBox((int) field.at("box").number(tile.getBox()));
    tile.setExpansion(field.at("expansion").number(tile.getExpansion()));
    return tile;
  }

  private Panel panel(Field field) throws InputException {
    Panel panel = MAKE.createPanel();
    panel.setId(ids.panel(field.at("id")));
    panel.setTitle(field.at("title").text(null));
    panel.setSurface(Surface.get(field.at("surface").text(panel.getSurface().getLiteral())));
    panel.setMounting(Mounting.get(field.at("mounting").text(panel.getMounting().getLiteral())));
    if (field.at("repeats").isGiven()) {
      panel.setOutline(repeated(field, panel));
    } else {
      fill(panel, field);
    }
    panel.setBoard(board(field.at("board"), panel.getMounting()));
    return panel;
  }

  private Outline repeated(Field field, Panel panel) throws InputException {
    RepeatedOutline outline = MAKE.createRepeatedOutline();
    links.add(field.at("repeats"), panel, outline::setPanel);
    outline.setX(lengths.position(field.at("at").at(0)));
    outline.setY(lengths.position(field.at("at").at(1)));
    outline.setMirrored(field.at("mirrored").node().asBoolean());
    return outline;
  }

  private void fill(Panel panel, Field field) throws InputException {
    panel.setTileKind(tileOf(field.at("tile")));
    panel.setJoint(joint(field.at("joint"), panel.getTileKind()));
    panel.setEdgeGap(lengths.gap(field.at("edgeGap")));
    panel.setOutline(outlines.outline(field.at("outline")));
    for (Field opening : field.at("openings").items()) {
      panel.getOpenings().add(opening(opening));
    }
    panel.setBond(bond(field.at("bond")));
    panel.setOrigin(origin(field.at("origin"), panel));
    for (Field border : field.at("borders").items()) {
      panel.getWorks().add(patterns.border(border, mural.getTileKinds()));
    }
    for (Field area : field.at("focalAreas").items()) {
      panel.getFocalAreas().add(focalArea(area));
    }
    Field movement = field.at("movementJoints");
    panel.setMovementByRule(movement.node().isTextual());
    for (Field joint : movement.items()) {
      panel.getMovementJoints().add(movementJoint(joint));
    }
  }

  private BackingBoard board(Field field, Mounting mounting) throws InputException {
    if (!field.isGiven()) {
      return null;
    }
    if (mounting != Mounting.REMOVABLE) {
      throw BriefProblem.at(field.pointer(), "board.fixed");
    }
    return studio.board(field);
  }

  private FocalArea focalArea(Field field) throws InputException {
    FocalArea area = MAKE.createFocalArea();
    area.setId(field.at("id").text(null));
    Field rectangle = field.at("rectangle");
    area.setX(lengths.position(rectangle.at(0)));
    area.setY(lengths.position(rectangle.at(1)));
    area.setWidth(lengths.size(rectangle.at(2)));
    area.setHeight(lengths.size(rectangle.at(3)));
    return area;
  }

  private MovementJoint movementJoint(Field field) throws InputException {
    MovementJoint joint = MAKE.createMovementJoint();
    joint.setAxis(JointAxis.get(field.at("axis").text(null)));
    joint.setAt(lengths.position(field.at("at")));
    joint.setWidth(lengths.size(field.at("width")));
    return joint;
  }

  private TileKind tileOf(Field field) throws InputException {
    String id = field.text("");
    for (TileKind tile : mural.getTileKinds()) {
      if (tile.getId().equals(id)) {
        return tile;
      }
    }
    throw BriefProblem.at(field.pointer(), "tile", "id", id,
        "known", String.join(", ", mural.getTileKinds().stream().map(TileKind::getId).toList()));
  }

  private double joint(Field field, TileKind tile) throws InputException {
    double joint = lengths.gap(field);
    if (joint >= Math.min(tile.getWidth(), tile.getHeight())) {
      throw BriefProblem.at(field.pointer(), "joint", "joint", LengthText.fine(joint, unit),
          "width", LengthText.fine(tile.getWidth(), unit), "height", LengthText.fine(tile.getHeight(), unit));
    }
    return joint;
  }

  private Opening opening(Field field) throws InputException {
    Opening opening = MAKE.createOpening();
    opening.setId(ids.opening(field.at("id")));
    opening.setKind(field.at("kind").text(null));
    opening.setOutline(outlines.outline(field.at("outline")));
    return opening;
  }

  private static Bond bond(Field field) throws InputException {
    Bond bond = MAKE.createBond();
    bond.setKind(field.at("kind").text(bond.getKind()));
    bond.setOffset(share(field.at("offset")));
    bond.setRotation(field.at("rotation").number(0));
    field.at("settings").texts().forEach((name, value) -> {
      Setting setting = MAKE.createSetting();
      setting.setName(name);
      setting.setValue(value);
      bond.getSettings().add(setting);
    });
    return bond;
  }

  /** A number, or a fraction: whole numbers of six digits are exact, so their quotient is the nearest double. */
  private static double share(Field field) throws InputException {
    if (!field.node().isTextual()) {
      return field.number(0);
    }
    String[] fraction = field.text("").split("/");
    double share = Double.parseDouble(fraction[0]) / Double.parseDouble(fraction[1]);
    if (Math.abs(share) > 1) {
      throw BriefProblem.at(field.pointer(), "share", "value", field.node());
    }
    return share;
  }

  private Origin origin(Field field, Panel panel) throws InputException {
    if (field.node().isArray()) {
      FixedOrigin origin = MAKE.createFixedOrigin();
      origin.setX(lengths.position(field.at(0)));
      origin.setY(lengths.position(field.at(1)));
      return origin;
    }
    if (field.at("gridOf").isGiven()) {
      return shared(field.at("gridOf"), panel, SharedLine.GRID);
    }
    if (field.at("levelWith").isGiven()) {
      return shared(field.at("levelWith"), panel, SharedLine.LEVEL);
    }
    BalancedOrigin balanced = MAKE.createBalancedOrigin();
    Field focus = field.at("focus");
    if (focus.isGiven()) {
      balanced.setFocalX(lengths.position(focus.at(0)));
      balanced.setFocalY(lengths.position(focus.at(1)));
    }
    return balanced;
  }

  private Origin shared(Field field, Panel panel, SharedLine line) {
    SharedOrigin origin = MAKE.createSharedOrigin();
    origin.setLine(line);
    links.add(field, panel, origin::setPanel);
    return origin;
  }
}
