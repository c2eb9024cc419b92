// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.app.internal.entry.LengthField;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.model.LevelLineOutline;
import muralbench.model.LevelStation;
import muralbench.model.MuralFactory;
import muralbench.model.Outline;
import muralbench.setout.geometry.Vec;
import muralbench.setout.survey.AdjustedWall;
import muralbench.setout.survey.MeasuredWalls;
import muralbench.setout.survey.MeasuredWalls.Station;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** A level line with stations, at each of which was measured down to the lower and up to the upper edge. */
final class LevelLineForm implements SurveyForm {
  private static final Messages TEXTS = Messages.of(LevelLineForm.class);
  private static final int CHECK_COLUMN = 4;
  private static final int[] WIDTHS = {36, 100, 100, 100, 130};

  private final Composite area;
  private final Runnable changed;
  private final List<Station> stations = new ArrayList<>();
  private final Table table;
  private final Button remove;
  private final LengthField along;
  private final LengthField down;
  private final LengthField up;
  private final LengthField x;
  private final LengthField y;
  private LengthUnit unit = LengthUnit.INCH;

  LevelLineForm(Composite parent, Runnable changed) {
    this.changed = changed;
    area = new Composite(parent, SWT.NONE);
    GridLayoutFactory.fillDefaults().numColumns(3).spacing(8, 6).applyTo(area);
    table = table();
    Composite buttons = new Composite(area, SWT.NONE);
    GridLayoutFactory.fillDefaults().numColumns(2).applyTo(buttons);
    GridDataFactory.fillDefaults().span(3, 1).applyTo(buttons);
    button(buttons, "line.add", this::add);
    remove = button(buttons, "line.remove", this::remove);
    along = new LengthField(area, TEXTS.text("line.along"), true, this::edited);
    down = new LengthField(area, TEXTS.text("line.down"), true, this::edited);
    up = new LengthField(area, TEXTS.text("line.up"), true, this::edited);
    x = new LengthField(area, TEXTS.text("line.x"), true, changed);
    y = new LengthField(area, TEXTS.text("line.y"), true, changed);
  }

  private Table table() {
    Table made = new Table(area, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
    made.setHeaderVisible(true);
    GridDataFactory.fillDefaults().span(3, 1).grab(true, true).hint(SWT.DEFAULT, 140).applyTo(made);
    String[] heads = {"number", "along", "down", "up", "check"};
    for (int i = 0; i < heads.length; i++) {
      TableColumn column = new TableColumn(made, SWT.NONE);
      column.setText(TEXTS.text("line.head." + heads[i]));
      column.setWidth(WIDTHS[i]);
    }
    made.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> showSelected()));
    return made;
  }

  private static Button button(Composite parent, String key, Runnable run) {
    Button button = new Button(parent, SWT.PUSH);
    button.setText(TEXTS.text(key));
    button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> run.run()));
    return button;
  }

  @Override
  public Composite control() {
    return area;
  }

  @Override
  public void focus() {
    along.focus();
  }

  @Override
  public void show(Outline outline, LengthUnit units) {
    unit = units;
    LevelLineOutline line = (LevelLineOutline) outline;
    List.of(along, down, up, x, y).forEach(field -> field.unit(units));
    x.show(line.getX());
    y.show(line.getY());
    stations.clear();
    for (LevelStation station : line.getStations()) {
      stations.add(new Station(station.getAlong(), station.getDown(), station.getUp()));
    }
    fill(0);
  }

  private void fill(int selected) {
    table.removeAll();
    stations.forEach(station -> row(new TableItem(table, SWT.NONE), station));
    table.setSelection(selected);
    table.showSelection();
    remove.setEnabled(stations.size() > 2);
    showSelected();
  }

  private void row(TableItem item, Station station) {
    item.setText(new String[] {String.valueOf(table.indexOf(item) + 1), LengthText.shown(station.along(), unit),
        LengthText.shown(station.down(), unit), LengthText.shown(station.up(), unit), ""});
  }

  private void showSelected() {
    int index = table.getSelectionIndex();
    List.of(along, down, up).forEach(field -> field.enabled(index >= 0));
    if (index >= 0) {
      along.show(stations.get(index).along());
      down.show(stations.get(index).down());
      up.show(stations.get(index).up());
    }
  }

  /** A station half-way to the next one; behind the last one, as far on as the one before. */
  private void add() {
    int index = table.getSelectionIndex() < 0 ? stations.size() - 1 : table.getSelectionIndex();
    Station here = stations.get(index);
    Station next = index + 1 < stations.size() ? stations.get(index + 1) : null;
    double at = next != null ? (here.along() + next.along()) / 2
        : here.along() + (index > 0 ? here.along() - stations.get(index - 1).along() : here.down() + here.up());
    stations.add(index + 1, new Station(LengthText.rounded(at, unit), here.down(), here.up()));
    fill(index + 1);
    along.focus();
    changed.run();
  }

  private void remove() {
    int index = Math.max(0, table.getSelectionIndex());
    stations.remove(index);
    fill(Math.min(index, stations.size() - 1));
    changed.run();
  }

  private void edited() {
    int index = table.getSelectionIndex();
    if (index >= 0 && List.of(along, down, up).stream().allMatch(field -> field.value().isPresent())) {
      stations.set(index, new Station(of(along), of(down), of(up)));
      row(table.getItem(index), stations.get(index));
    }
    changed.run();
  }

  @Override
  public Optional<String> missing() {
    return Optional.empty();
  }

  @Override
  public Measured measured() throws InputException {
    for (LengthField field : List.of(along, down, up, x, y)) {
      if (field.problem().isPresent()) {
        throw new InputException(field.name(), field.problem().get(), "");
      }
    }
    checkRows();
    Vec end = new Vec(of(x), of(y));
    return new Measured(outline(), AdjustedWall.unchecked(MeasuredWalls.levelLine(stations, end)));
  }

  /** Says in the row of each station whether it goes on from the one before. */
  private void checkRows() {
    for (int i = 0; i < stations.size(); i++) {
      boolean right = i == 0 || stations.get(i).along() > stations.get(i - 1).along();
      boolean open = stations.get(i).up() + stations.get(i).down() > 0;
      table.getItem(i).setText(CHECK_COLUMN, TEXTS.text(!right ? "line.back" : open ? "line.good" : "line.closed"));
    }
  }

  private static double of(LengthField field) {
    return field.value().orElseThrow();
  }

  private LevelLineOutline outline() {
    LevelLineOutline line = MuralFactory.eINSTANCE.createLevelLineOutline();
    line.setX(of(x));
    line.setY(of(y));
    for (Station station : stations) {
      LevelStation made = MuralFactory.eINSTANCE.createLevelStation();
      made.setAlong(station.along());
      made.setDown(station.down());
      made.setUp(station.up());
      line.getStations().add(made);
    }
    return line;
  }
}
