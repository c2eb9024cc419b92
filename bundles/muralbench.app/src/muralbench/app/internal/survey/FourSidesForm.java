// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.survey;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import muralbench.app.internal.entry.LengthField;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthUnit;
import muralbench.model.MeasuredOutline;
import muralbench.model.MuralFactory;
import muralbench.model.Outline;
import muralbench.setout.geometry.Vec;
import muralbench.setout.survey.AdjustedWall;
import muralbench.setout.survey.MeasuredWalls;
import muralbench.setout.survey.MeasuredWalls.FourSides;
import muralbench.setout.survey.Misfit;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Four sides and two diagonals, with the rise by the level; beside each length how far it is off. */
final class FourSidesForm implements SurveyForm {
  private static final Messages TEXTS = Messages.of(FourSidesForm.class);
  private static final List<String> LENGTHS = List.of("bottom", "right", "top", "left", "rising", "falling");
  private static final int COLUMNS = 4;
  private static final int MISFIT_WIDTH = 245;

  private final Composite area;
  private final Map<String, LengthField> lengths = new LinkedHashMap<>();
  private final Map<String, Label> misfits = new LinkedHashMap<>();
  private final LengthField rise;
  private final LengthField accuracy;
  private final LengthField x;
  private final LengthField y;
  private LengthUnit unit = LengthUnit.INCH;

  FourSidesForm(Composite parent, Runnable changed) {
    area = new Composite(parent, SWT.NONE);
    GridLayoutFactory.fillDefaults().numColumns(COLUMNS).spacing(8, 6).applyTo(area);
    for (String name : LENGTHS) {
      lengths.put(name, new LengthField(area, TEXTS.text("four." + name), false, changed).waiting());
      Label misfit = new Label(area, SWT.NONE);
      GridDataFactory.fillDefaults().hint(MISFIT_WIDTH, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(misfit);
      misfits.put(name, misfit);
    }
    rise = field("four.rise", true, changed);
    accuracy = field("four.accuracy", false, changed);
    x = field("four.x", true, changed);
    y = field("four.y", true, changed);
  }

  private LengthField field(String key, boolean mayBeZero, Runnable changed) {
    LengthField field = new LengthField(area, TEXTS.text(key), mayBeZero, changed);
    new Label(area, SWT.NONE).setText(TEXTS.text(key + ".hint"));
    return field;
  }

  @Override
  public Composite control() {
    return area;
  }

  @Override
  public void focus() {
    lengths.get(LENGTHS.get(0)).focus();
  }

  @Override
  public void show(Outline outline, LengthUnit units) {
    unit = units;
    all().forEach(field -> field.unit(units));
    MeasuredOutline wall = (MeasuredOutline) outline;
    double[] values = {wall.getBottom(), wall.getRight(), wall.getTop(), wall.getLeft(), wall.getRising(),
        wall.getFalling()};
    for (int i = 0; i < values.length; i++) {
      if (values[i] > 0) {
        lengths.get(LENGTHS.get(i)).show(values[i]);
      }
    }
    rise.show(wall.getRise());
    accuracy.show(wall.getAccuracy());
    x.show(wall.getX());
    y.show(wall.getY());
  }

  private List<LengthField> all() {
    List<LengthField> all = new ArrayList<>(lengths.values());
    all.addAll(List.of(rise, accuracy, x, y));
    return all;
  }

  @Override
  public Optional<String> missing() {
    List<String> blank = lengths.values().stream().filter(LengthField::blank).map(LengthField::name).toList();
    return blank.isEmpty() ? Optional.empty() : Optional.of(blank.size() == LENGTHS.size()
        ? TEXTS.text("four.all") : TEXTS.text("four.missing", "list", blank.stream()
            .map(name -> name.substring(0, 1).toLowerCase() + name.substring(1)).collect(Collectors.joining(", "))));
  }

  @Override
  public Measured measured() throws InputException {
    misfits.values().forEach(label -> label.setText(""));
    all().forEach(field -> field.mark(Optional.empty()));
    for (LengthField field : all()) {
      if (field.problem().isPresent()) {
        throw new InputException(field.name(), field.problem().get(), "");
      }
    }
    if (missing().isPresent()) {
      throw new InputException("", missing().get(), "");
    }
    checkRise();
    try {
      AdjustedWall wall = MeasuredWalls.fourSides(sides(), new Vec(of(x), of(y)), of(rise), of(accuracy));
      boolean alone = wall.suspects().size() == 1;
      wall.misfits().forEach(misfit -> tell(misfit, alone));
      return new Measured(outline(), wall);
    } catch (InputException e) {
      Optional.ofNullable(lengths.get(e.place())).ifPresent(field -> field.mark(Optional.of(words(e))));
      throw e;
    }
  }

  private void checkRise() throws InputException {
    if (Math.abs(of(rise)) >= length("bottom")) {
      InputException steep = new InputException("rise", TEXTS.text("four.rise.steep"), TEXTS.text("four.rise.remedy"));
      rise.mark(Optional.of(words(steep)));
      throw steep;
    }
  }

  private static String words(InputException e) {
    return TEXTS.text("problem", "problem", e.problem(), "remedy", e.remedy());
  }

  private FourSides sides() {
    return new FourSides(length("bottom"), length("right"), length("top"), length("left"), length("rising"),
        length("falling"));
  }

  private double length(String name) {
    return of(lengths.get(name));
  }

  private static double of(LengthField field) {
    return field.value().orElseThrow();
  }

  /** Least squares shares an error out: only a measurement that is off alone can be told to be the wrong one. */
  private void tell(Misfit misfit, boolean alone) {
    Label label = misfits.get(misfit.measurement().name());
    String off = MisfitWords.of(misfit, unit);
    label.setText(misfit.suspect() ? TEXTS.text(alone ? "misfit.wrong" : "misfit.suspect", "off", off) : off);
    label.setFont(misfit.suspect() ? JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT)
        : JFaceResources.getDialogFont());
  }

  private MeasuredOutline outline() {
    MeasuredOutline wall = MuralFactory.eINSTANCE.createMeasuredOutline();
    wall.setX(of(x));
    wall.setY(of(y));
    wall.setBottom(length("bottom"));
    wall.setRight(length("right"));
    wall.setTop(length("top"));
    wall.setLeft(length("left"));
    wall.setRising(length("rising"));
    wall.setFalling(length("falling"));
    wall.setRise(of(rise));
    wall.setAccuracy(of(accuracy));
    return wall;
  }
}
