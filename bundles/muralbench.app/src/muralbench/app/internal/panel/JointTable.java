// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.app.internal.entry.LengthField;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.setout.geometry.Box;
import muralbench.setout.movement.MovementAxis;
import muralbench.setout.movement.MovementJoint;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** Movement joints in a table, with fields for the one that is selected. */
final class JointTable {
  private static final Messages TEXTS = Messages.of(JointTable.class);
  private static final int COLUMN_WIDTH = 120;
  private static final int HEIGHT = 130;

  private final LengthUnit unit;
  private final Box frame;
  private final double usualWidth;
  private final Runnable changed;
  private final List<MovementJoint> joints = new ArrayList<>();
  private final Composite area;
  private final Table table;
  private final Button add;
  private final Button remove;
  private final Combo axis;
  private final LengthField at;
  private final LengthField width;
  private boolean editable;

  /**
   * A table.
   *
   * @param frame the box around the panel, in the middle of which a new joint begins
   * @param usualWidth width of a new joint, mm
   */
  JointTable(Composite parent, LengthUnit unit, Box frame, double usualWidth, Runnable changed) {
    this.unit = unit;
    this.frame = frame;
    this.usualWidth = usualWidth;
    this.changed = changed;
    area = new Composite(parent, SWT.NONE);
    GridLayoutFactory.fillDefaults().numColumns(3).spacing(8, 6).applyTo(area);
    table = table();
    Composite buttons = new Composite(area, SWT.NONE);
    GridLayoutFactory.fillDefaults().numColumns(2).applyTo(buttons);
    GridDataFactory.fillDefaults().span(3, 1).applyTo(buttons);
    add = button(buttons, "movement.add", this::add);
    remove = button(buttons, "movement.remove", this::remove);
    new Label(area, SWT.NONE).setText(TEXTS.text("movement.axis"));
    axis = new Combo(area, SWT.READ_ONLY);
    for (MovementAxis way : MovementAxis.values()) {
      axis.add(TEXTS.text("movement.axis." + way.word()));
    }
    GridDataFactory.fillDefaults().span(2, 1).indent(8, 0).align(SWT.BEGINNING, SWT.CENTER).applyTo(axis);
    axis.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> turned()));
    at = new LengthField(area, TEXTS.text("movement.at"), true, this::edited);
    width = new LengthField(area, TEXTS.text("movement.width"), false, this::edited);
    at.unit(unit);
    width.unit(unit);
  }

  private Table table() {
    Table made = new Table(area, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
    made.setHeaderVisible(true);
    GridDataFactory.fillDefaults().span(3, 1).grab(true, true).hint(SWT.DEFAULT, HEIGHT).applyTo(made);
    for (String head : List.of("axis", "at", "width")) {
      TableColumn column = new TableColumn(made, SWT.NONE);
      column.setText(TEXTS.text("movement.head." + head));
      column.setWidth(head.equals("at") ? COLUMN_WIDTH * 3 / 2 : COLUMN_WIDTH);
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

  Composite control() {
    return area;
  }

  /** Shows joints; a person can change them only if they are {@code editable}. */
  void show(List<MovementJoint> shown, boolean mayChange) {
    editable = mayChange;
    joints.clear();
    joints.addAll(shown);
    fill(Math.min(Math.max(0, table.getSelectionIndex()), joints.size() - 1));
  }

  /** Selects the joint that is nearest to one of the set-out, which may lie a little beside the place typed. */
  void select(MovementJoint laid) {
    for (int i = 0; i < joints.size(); i++) {
      boolean nearer = table.getSelectionIndex() < 0 || distance(i, laid) < distance(table.getSelectionIndex(), laid);
      if (nearer) {
        table.setSelection(i);
      }
    }
    table.showSelection();
    showSelected();
  }

  private double distance(int index, MovementJoint laid) {
    MovementJoint joint = joints.get(index);
    return joint.axis() == laid.axis() ? Math.abs(joint.at() - laid.at()) : Double.MAX_VALUE;
  }

  List<MovementJoint> joints() {
    return List.copyOf(joints);
  }

  /** What is wrong with a field, if anything. */
  Optional<String> problem() {
    return table.getSelectionIndex() < 0 || !editable ? Optional.empty() : at.problem().or(width::problem);
  }

  private void fill(int selected) {
    table.removeAll();
    joints.forEach(joint -> row(new TableItem(table, SWT.NONE), joint));
    if (selected >= 0) {
      table.setSelection(selected);
      table.showSelection();
    }
    showSelected();
  }

  private void row(TableItem item, MovementJoint joint) {
    String place = TEXTS.text("movement.at." + joint.axis().word(), "at", LengthText.shown(joint.at(), unit));
    item.setText(new String[] {TEXTS.text("movement.axis." + joint.axis().word()), place,
        LengthText.fine(joint.width(), unit)});
  }

  private void showSelected() {
    int index = table.getSelectionIndex();
    boolean one = editable && index >= 0;
    add.setEnabled(editable);
    remove.setEnabled(one);
    axis.setEnabled(one);
    at.enabled(one);
    width.enabled(one);
    if (index >= 0) {
      axis.select(joints.get(index).axis().ordinal());
      at.show(joints.get(index).at());
      width.show(joints.get(index).width());
    }
  }

  private void add() {
    joints.add(new MovementJoint(MovementAxis.VERTICAL, middle(MovementAxis.VERTICAL), usualWidth));
    fill(joints.size() - 1);
    at.focus();
    changed.run();
  }

  private double middle(MovementAxis way) {
    return LengthText.rounded(way == MovementAxis.VERTICAL ? frame.centre().x() : frame.centre().y(), unit);
  }

  private void remove() {
    int index = table.getSelectionIndex();
    joints.remove(index);
    fill(Math.min(index, joints.size() - 1));
    changed.run();
  }

  /** A place across says nothing of one up, so that a turned joint starts in the middle. */
  private void turned() {
    at.show(middle(MovementAxis.values()[axis.getSelectionIndex()]));
    edited();
  }

  private void edited() {
    int index = table.getSelectionIndex();
    if (index >= 0 && at.value().isPresent() && width.value().isPresent()) {
      joints.set(index, new MovementJoint(MovementAxis.values()[axis.getSelectionIndex()],
          at.value().getAsDouble(), width.value().getAsDouble()));
      row(table.getItem(index), joints.get(index));
    }
    changed.run();
  }
}
