// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthFormatException;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.model.LevelLineOutline;
import muralbench.model.LevelStation;
import muralbench.model.MuralFactory;
import muralbench.setout.geometry.Vec;
import muralbench.setout.survey.MeasuredWalls;
import muralbench.setout.survey.MeasuredWalls.Station;

/** The stations of a level line as a line of text: {@code along, down, up; along, down, up}. */
final class Stations {
  private static final Messages TEXTS = ModelProperties.TEXTS;
  private static final int PARTS = 3;

  private final LevelLineOutline line;
  private final LengthUnit unit;

  Stations(LevelLineOutline line, LengthUnit unit) {
    this.line = line;
    this.unit = unit;
  }

  String text() {
    return text(line.getStations().stream().map(one -> new Station(one.getAlong(), one.getDown(), one.getUp()))
        .toList());
  }

  /** The text that says the same in the way in which it is shown. */
  String normal(String text) {
    return parse(text).map(this::text).orElse(text);
  }

  Optional<String> refuse(String text) {
    Optional<List<Station>> stations = parse(text);
    if (stations.isEmpty()) {
      return Optional.of(TEXTS.text("refuse.stations"));
    }
    try {
      MeasuredWalls.levelLine(stations.get(), Vec.ZERO);
      return Optional.empty();
    } catch (InputException e) {
      return Optional.of(TEXTS.text("refuse", "problem", e.problem(), "remedy", e.remedy()));
    }
  }

  void set(String text) {
    line.getStations().clear();
    for (Station station : parse(text).orElseThrow()) {
      LevelStation made = MuralFactory.eINSTANCE.createLevelStation();
      made.setAlong(station.along());
      made.setDown(station.down());
      made.setUp(station.up());
      line.getStations().add(made);
    }
  }

  private String text(List<Station> stations) {
    return stations.stream().map(one -> LengthText.exact(one.along(), unit) + ", "
        + LengthText.exact(one.down(), unit) + ", " + LengthText.exact(one.up(), unit))
        .collect(Collectors.joining("; "));
  }

  private Optional<List<Station>> parse(String text) {
    List<Station> stations = new ArrayList<>();
    try {
      for (String one : text.strip().split(";")) {
        String[] parts = one.split(",", -1);
        if (parts.length != PARTS) {
          return Optional.empty();
        }
        stations.add(new Station(LengthText.parse(parts[0].strip(), unit), LengthText.parse(parts[1].strip(), unit),
            LengthText.parse(parts[2].strip(), unit)));
      }
      return Optional.of(stations);
    } catch (LengthFormatException e) {
      return Optional.empty();
    }
  }
}
