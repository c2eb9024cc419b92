// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import muralbench.base.Messages;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** Rows of texts in a table, with a field for each column of the row that is selected. Takes two columns of a grid. */
final class RowsField {
  private static final Messages TEXTS = Messages.of(RowsField.class);
  private static final int NUMBER_WIDTH = 34;
  private static final int WIDTH = 260;
  private static final int HEIGHT = 88;
  private static final int FIELD_WIDTH = 50;
  private static final int FIELDS_IN_A_ROW = 2;
  private static final int HINT_WIDTH = 330;

  private final List<String[]> rows;
  private final Runnable changed;
  private final Table table;
  private final Button remove;
  private final List<Text> fields = new ArrayList<>();
  private boolean quiet;

  /**
   * A table.
   *
   * @param heads names of the columns
   * @param rows the rows to begin with, one text for each column
   */
  RowsField(Composite area, String title, String hint, List<String> heads, List<String[]> rows, Runnable changed) {
    this.rows = new ArrayList<>(rows);
    this.changed = changed;
    Group group = new Group(area, SWT.NONE);
    group.setText(title);
    GridLayoutFactory.swtDefaults().numColumns(2 * FIELDS_IN_A_ROW).margins(6, 4).spacing(6, 4).applyTo(group);
    GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(group);
    Label words = new Label(group, SWT.WRAP);
    words.setText(hint);
    GridDataFactory.fillDefaults().span(2 * FIELDS_IN_A_ROW, 1).hint(HINT_WIDTH, SWT.DEFAULT).applyTo(words);
    Composite row = new Composite(group, SWT.NONE);
    GridLayoutFactory.fillDefaults().numColumns(2).spacing(6, 0).applyTo(row);
    GridDataFactory.fillDefaults().span(2 * FIELDS_IN_A_ROW, 1).grab(true, false).applyTo(row);
    table = table(row, heads);
    Composite buttons = new Composite(row, SWT.NONE);
    GridLayoutFactory.fillDefaults().applyTo(buttons);
    button(buttons, "bond.rows.add", this::add);
    remove = button(buttons, "bond.rows.remove", this::remove);
    for (String head : heads) {
      new Label(group, SWT.NONE).setText(TEXTS.text("bond.label", "name", head));
      Text text = new Text(group, SWT.BORDER);
      text.addListener(SWT.Modify, event -> edited());
      GridDataFactory.fillDefaults().grab(true, false).hint(FIELD_WIDTH, SWT.DEFAULT).applyTo(text);
      fields.add(text);
    }
    fill(0);
  }

  private Table table(Composite group, List<String> heads) {
    Table made = new Table(group, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
    made.setHeaderVisible(true);
    GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, HEIGHT).applyTo(made);
    column(made, TEXTS.text("bond.rows.number"), NUMBER_WIDTH);
    heads.forEach(head -> column(made, head, (WIDTH - NUMBER_WIDTH) / heads.size()));
    made.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> showSelected()));
    return made;
  }

  private static void column(Table table, String head, int width) {
    TableColumn column = new TableColumn(table, SWT.NONE);
    column.setText(head);
    column.setWidth(width);
  }

  private static Button button(Composite parent, String key, Runnable run) {
    Button button = new Button(parent, SWT.PUSH);
    button.setText(TEXTS.text(key));
    button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> run.run()));
    return button;
  }

  /** The rows as they are now. */
  List<String[]> rows() {
    return List.copyOf(rows);
  }

  private void fill(int selected) {
    table.removeAll();
    for (int i = 0; i < rows.size(); i++) {
      row(new TableItem(table, SWT.NONE), i);
    }
    table.setSelection(Math.min(selected, rows.size() - 1));
    table.showSelection();
    showSelected();
  }

  private void row(TableItem item, int index) {
    item.setText(0, String.valueOf(index + 1));
    for (int i = 0; i < rows.get(index).length; i++) {
      item.setText(i + 1, rows.get(index)[i]);
    }
  }

  private void showSelected() {
    int index = table.getSelectionIndex();
    quiet = true;
    for (int i = 0; i < fields.size(); i++) {
      fields.get(i).setEnabled(index >= 0);
      fields.get(i).setText(index < 0 ? "" : rows.get(index)[i]);
    }
    quiet = false;
    remove.setEnabled(index >= 0);
  }

  /** A row like the one that is selected, behind it. */
  private void add() {
    int index = table.getSelectionIndex();
    String[] fresh = index >= 0 ? rows.get(index).clone() : new String[fields.size()];
    if (index < 0) {
      Arrays.fill(fresh, "");
    }
    rows.add(index + 1, fresh);
    fill(index + 1);
    fields.get(0).setFocus();
    changed.run();
  }

  private void remove() {
    int index = table.getSelectionIndex();
    rows.remove(index);
    fill(Math.max(0, index - 1));
    changed.run();
  }

  private void edited() {
    int index = table.getSelectionIndex();
    if (!quiet && index >= 0) {
      rows.set(index, fields.stream().map(field -> field.getText().strip()).toArray(String[]::new));
      row(table.getItem(index), index);
      changed.run();
    }
  }
}
