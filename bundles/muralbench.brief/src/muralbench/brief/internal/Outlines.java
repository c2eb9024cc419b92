// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import java.math.BigDecimal;
import muralbench.base.InputException;
import muralbench.model.CircleOutline;
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
 */
record Outlines(Lengths lengths) {
  private static final MuralFactory MAKE = MuralFactory.eINSTANCE;

  /** The outline in whichever of its four forms it is given. */
  Outline outline(Field field) throws InputException {
    return switch (field.node().fieldNames().next()) {
      case "rectangle" -> rectangle(field.at("rectangle"));
      case "polygon" -> polygon(field.at("polygon"));
      case "circle" -> circle(field.at("circle"));
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

  private Outline path(Field field) throws InputException {
    PathOutline path = MAKE.createPathOutline();
    BigDecimal factor = BigDecimal.valueOf(lengths.unit().millimetres());
    path.setData(PathScale.scale(field.text(""), factor, field.pointer()));
    return path;
  }
}
