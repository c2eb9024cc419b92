// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.survey;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import muralbench.base.Messages;
import muralbench.base.length.LengthUnit;
import muralbench.setout.survey.AdjustedWall;
import muralbench.setout.survey.OutOfTrue;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Tells of each corner how far it is out of square, and of each side how far it is out of level or plumb. */
final class TruePane {
  private static final Messages TEXTS = Messages.of(TruePane.class);
  private static final List<String> PLACES = List.of("lower-left", "bottom", "lower-right", "right", "upper-right",
      "top", "upper-left", "left");
  private static final int WORDS_WIDTH = 250;
  private static final String UNKNOWN = "–";

  private final Composite area;
  private final Map<String, Label> words = new HashMap<>();

  TruePane(Composite parent) {
    area = new Composite(parent, SWT.NONE);
    GridLayoutFactory.fillDefaults().numColumns(4).spacing(8, 4).applyTo(area);
    for (String place : PLACES) {
      new Label(area, SWT.NONE).setText(TEXTS.text("place." + place));
      Label told = new Label(area, SWT.NONE);
      told.setText(UNKNOWN);
      GridDataFactory.fillDefaults().grab(true, false).hint(WORDS_WIDTH, SWT.DEFAULT).applyTo(told);
      words.put(place, told);
    }
  }

  Composite control() {
    return area;
  }

  /** Tells of a wall; of a floor only the corners, as nothing of it is to be level or plumb. */
  void show(Optional<AdjustedWall> wall, boolean floor, LengthUnit unit) {
    words.values().forEach(label -> label.setText(UNKNOWN));
    wall.stream().flatMap(found -> OutOfTrue.of(found).stream())
        .filter(one -> !floor || one.kind() == OutOfTrue.Kind.SQUARE)
        .forEach(one -> words.get(one.place()).setText(words(wall.get(), one, unit)));
  }

  private static String words(AdjustedWall wall, OutOfTrue one, LengthUnit unit) {
    String plain = MisfitWords.of(one, unit);
    return one.kind() == OutOfTrue.Kind.LEVEL ? Bow.of(wall, one.place().equals("bottom")).words(plain, unit) : plain;
  }
}
