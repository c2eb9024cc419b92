// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import java.math.BigDecimal;
import muralbench.base.InputException;
import muralbench.brief.internal.dxf.DxfOutline;
import muralbench.brief.internal.svg.SvgOutline;
import muralbench.model.CircleOutline;
import muralbench.model.LevelLineOutline;
import muralbench.model.LevelStation;
import muralbench.model.MeasuredOutline;
import muralbench.model.MuralFactory;
import muralbench.model.Outline;
import muralbench.model.PathOutline;
import muralbench.model.Point;
import muralbench.model.PolygonOutline;
import muralbench.model.RectangleOutline;

/**
 * Makes outlines in millimetres. Whether a line crosses itself or lies where it should is not looked at here.
 *
 * @param lengths reads the coordinates
 * @param folder holds the drawings
 */
record Outlines(Lengths lengths, BriefFolder folder) {
  private static final MuralFactory MAKE = MuralFactory.eINSTANCE;

  /** The outline in whichever of its forms it is given. */
  Outline outline(Field field) throws InputException {
    String first = field.node().fieldNames().next();
    return switch (field.at("dxf").isGiven() ? "dxf" : field.at("svg").isGiven() ? "svg" : first) {
      case "rectangle" -> rectangle(field.at("rectangle"));
      case "polygon" -> polygon(field.at("polygon"));
      case "circle" -> circle(field.at("circle"));
      case "measured" -> measured(field.at("measured"));
      case "levelLine" -> levelLine(field.at("levelLine"));
      case "svg" -> svg(field.at("svg"), field.at("id").text(null));
      case "dxf" -> dxf(field.at("dxf"), field.at("layer").text(null));
      default -> path(field.at("path"));
    };
  }

  private Outline rectangle(Field field) throws InputException {
    RectangleOutline rectangle = MAKE.createRectangleOutline();
    rectangle.setX(lengths.position(field.at(0)));
    rectangle.setY(lengths.position(field.at(1)));
    rectangle.setWidth(lengths.size(field.at(2)));
    rectangle.setHeight(lengths.size(field.at(3)));
    return rectangle;
  }

  private Outline polygon(Field field) throws InputException {
    PolygonOutline polygon = MAKE.createPolygonOutline();
    for (Field corner : field.items()) {
      Point point = MAKE.createPoint();
      point.setX(lengths.position(corner.at(0)));
      point.setY(lengths.position(corner.at(1)));
      polygon.getPoints().add(point);
    }
    return polygon;
  }

  private Outline circle(Field field) throws InputException {
    CircleOutline circle = MAKE.createCircleOutline();
    circle.setCentreX(lengths.position(field.at(0)));
    circle.setCentreY(lengths.position(field.at(1)));
    circle.setRadius(lengths.size(field.at(2)));
    return circle;
  }

  private Outline measured(Field field) throws InputException {
    MeasuredOutline measured = MAKE.createMeasuredOutline();
    measured.setX(lengths.position(field.at("at").at(0)));
    measured.setY(lengths.position(field.at("at").at(1)));
    measured.setBottom(lengths.size(field.at("bottom")));
    measured.setRight(lengths.size(field.at("right")));
    measured.setTop(lengths.size(field.at("top")));
    measured.setLeft(lengths.size(field.at("left")));
    measured.setRising(lengths.size(field.at("rising")));
    measured.setFalling(lengths.size(field.at("falling")));
    Field rise = field.at("rise");
    measured.setRise(rise.isGiven() ? lengths.position(rise) : 0);
    Field accuracy = field.at("accuracy");
    measured.setAccuracy(accuracy.isGiven() ? lengths.size(accuracy) : measured.getAccuracy());
    if (Math.abs(measured.getRise()) >= measured.getBottom()) {
      throw BriefProblem.at(rise.pointer(), "rise", "value", rise.node());
    }
    return measured;
  }

  private Outline levelLine(Field field) throws InputException {
    LevelLineOutline line = MAKE.createLevelLineOutline();
    line.setX(lengths.position(field.at("at").at(0)));
    line.setY(lengths.position(field.at("at").at(1)));
    double before = Double.NEGATIVE_INFINITY;
    for (Field item : field.at("stations").items()) {
      LevelStation station = station(item);
      if (station.getAlong() <= before) {
        throw BriefProblem.at(item.at(0).pointer(), "station.along", "value", item.at(0).node());
      }
      before = station.getAlong();
      line.getStations().add(station);
    }
    return line;
  }

  private LevelStation station(Field field) throws InputException {
    LevelStation station = MAKE.createLevelStation();
    station.setAlong(lengths.position(field.at(0)));
    station.setDown(lengths.position(field.at(1)));
    station.setUp(lengths.position(field.at(2)));
    if (station.getDown() + station.getUp() <= 0) {
      throw BriefProblem.at(field.pointer(), "station.edges", "value", field.node());
    }
    return station;
  }

  private Outline dxf(Field field, String layer) throws InputException {
    PathOutline path = MAKE.createPathOutline();
    path.setData(DxfOutline.path(folder.read(field), layer, lengths.unit(), field.pointer(), field.text("")));
    return path;
  }

  private Outline svg(Field field, String id) throws InputException {
    PathOutline path = MAKE.createPathOutline();
    SvgOutline drawn = SvgOutline.of(folder.read(field), id, field.pointer(), field.text(""));
    path.setData(PathScale.turnedUp(drawn, field.pointer()));
    return path;
  }

  private Outline path(Field field) throws InputException {
    PathOutline path = MAKE.createPathOutline();
    BigDecimal factor = BigDecimal.valueOf(lengths.unit().millimetres());
    path.setData(PathScale.scale(field.text(""), factor, field.pointer()));
    return path;
  }
}
