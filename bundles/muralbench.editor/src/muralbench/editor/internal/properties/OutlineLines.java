// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import muralbench.base.length.LengthUnit;
import muralbench.editor.internal.commands.OutlineKind;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Placement;
import muralbench.editor.internal.properties.Entries.Range;
import muralbench.model.CircleOutline;
import muralbench.model.LevelLineOutline;
import muralbench.model.MeasuredOutline;
import muralbench.model.Outline;
import muralbench.model.PathOutline;
import muralbench.model.PolygonOutline;
import muralbench.setout.geometry.PathData;
import org.eclipse.emf.ecore.EObject;

/** The lines about place, size and shape of a panel or opening. */
final class OutlineLines {
  private static final String GROUP = "place";

  private final EObject thing;
  private final LengthUnit unit;
  private final Consumer<Outline> replace;

  /** Lines of a thing; {@code replace} gives it another outline. */
  OutlineLines(EObject thing, LengthUnit unit, Consumer<Outline> replace) {
    this.thing = thing;
    this.unit = unit;
    this.replace = replace;
  }

  List<Property> lines() {
    List<Property> lines = new ArrayList<>();
    lines.add(Entries.choice("outline", GROUP, OutlineKind.class, () -> OutlineKind.of(outline()), this::become));
    if (Placement.frame(thing).isPresent()) {
      if (outline() instanceof CircleOutline circle) {
        lines.add(frame("centreX", Range.ANY, Frame::middleX, (f, to) -> f.moved(to - f.middleX(), 0)));
        lines.add(frame("centreY", Range.ANY, Frame::middleY, (f, to) -> f.moved(0, to - f.middleY())));
        lines.add(Entries.length("diameter", GROUP, unit, Range.POSITIVE, () -> 2 * circle.getRadius(),
            to -> circle.setRadius(to / 2)));
      } else {
        lines.add(frame("left", Range.ANY, Frame::x, (f, to) -> new Frame(to, f.y(), f.width(), f.height())));
        lines.add(frame("bottom", Range.ANY, Frame::y, (f, to) -> new Frame(f.x(), to, f.width(), f.height())));
      }
      if (OutlineKind.of(outline()).stretches()) {
        lines.add(frame("width", Range.POSITIVE, Frame::width, (f, to) -> new Frame(f.x(), f.y(), to, f.height())));
        lines.add(frame("height", Range.POSITIVE, Frame::height, (f, to) -> new Frame(f.x(), f.y(), f.width(), to)));
      }
    }
    if (outline() instanceof MeasuredOutline wall) {
      lines.addAll(measured(wall));
    }
    if (outline() instanceof LevelLineOutline line) {
      Stations stations = new Stations(line, unit);
      lines.add(Property.text("stations", GROUP, stations::text, stations::normal, stations::refuse, stations::set));
    }
    if (outline() instanceof PolygonOutline polygon) {
      Corners corners = new Corners(polygon, unit);
      lines.add(Property.text("corners", GROUP, corners::text, corners::normal, corners::refuse, corners::set));
    }
    if (outline() instanceof PathOutline path) {
      lines.add(Property.text("path", GROUP, path::getData, OutlineLines::refusePath, path::setData));
    }
    return lines;
  }

  /** What was measured; there even where no wall fits it, so that it can be put right. */
  private List<Property> measured(MeasuredOutline wall) {
    return List.of(side("measured.bottom", wall::getBottom, wall::setBottom),
        side("measured.right", wall::getRight, wall::setRight), side("measured.top", wall::getTop, wall::setTop),
        side("measured.left", wall::getLeft, wall::setLeft), side("measured.rising", wall::getRising, wall::setRising),
        side("measured.falling", wall::getFalling, wall::setFalling),
        Entries.length("measured.rise", GROUP, unit, Range.ANY, wall::getRise, wall::setRise),
        side("measured.accuracy", wall::getAccuracy, wall::setAccuracy));
  }

  private Property side(String id, Supplier<Double> get, Consumer<Double> set) {
    return Entries.length(id, GROUP, unit, Range.POSITIVE, get, set);
  }

  private Outline outline() {
    return Placement.outline(thing);
  }

  private void become(OutlineKind kind) {
    kind.from(outline()).ifPresent(replace);
  }

  private Property frame(String id, Range range, ToDoubleFunction<Frame> part,
      BiFunction<Frame, Double, Frame> changed) {
    Supplier<Double> get = () -> part.applyAsDouble(Placement.frame(thing).orElseThrow());
    return Entries.length(id, GROUP, unit, range, get, to -> {
      Frame now = Placement.frame(thing).orElseThrow();
      Placement.place(thing, now, changed.apply(now, to));
    });
  }

  private static Optional<String> refusePath(String data) {
    try {
      PathData.parse(data);
      return Optional.empty();
    } catch (PathData.PathDataException e) {
      return Optional.of(e.getMessage());
    }
  }
}
