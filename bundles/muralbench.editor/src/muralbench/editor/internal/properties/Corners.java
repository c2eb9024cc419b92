// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import muralbench.base.length.LengthFormatException;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.editor.internal.geometry.Outlines;
import muralbench.model.PolygonOutline;
import muralbench.setout.geometry.Vec;

/** The corners of a polygon as a line of text: {@code x, y; x, y; x, y}, each length in the units of the mural. */
final class Corners {
  private static final int LEAST = 3;

  private final PolygonOutline polygon;
  private final LengthUnit unit;

  Corners(PolygonOutline polygon, LengthUnit unit) {
    this.polygon = polygon;
    this.unit = unit;
  }

  String text() {
    return text(polygon.getPoints().stream().map(point -> new Vec(point.getX(), point.getY())).toList());
  }

  /** The text that says the same in the way in which it is shown. */
  String normal(String text) {
    return parse(text).map(this::text).orElse(text);
  }

  Optional<String> refuse(String text) {
    return parse(text).isPresent() ? Optional.empty() : Optional.of(ModelProperties.TEXTS.text("refuse.corners"));
  }

  void set(String text) {
    PolygonOutline changed = Outlines.polygon(parse(text).orElseThrow());
    polygon.getPoints().clear();
    polygon.getPoints().addAll(List.copyOf(changed.getPoints()));
  }

  private String text(List<Vec> corners) {
    return corners.stream()
        .map(at -> LengthText.exact(at.x(), unit) + ", " + LengthText.exact(at.y(), unit))
        .collect(Collectors.joining("; "));
  }

  private Optional<List<Vec>> parse(String text) {
    List<Vec> corners = new ArrayList<>();
    try {
      for (String corner : text.strip().split(";")) {
        String[] parts = corner.split(",", -1);
        if (parts.length != 2) {
          return Optional.empty();
        }
        corners.add(new Vec(LengthText.parse(parts[0].strip(), unit), LengthText.parse(parts[1].strip(), unit)));
      }
    } catch (LengthFormatException e) {
      return Optional.empty();
    }
    return corners.size() < LEAST ? Optional.empty() : Optional.of(corners);
  }
}
