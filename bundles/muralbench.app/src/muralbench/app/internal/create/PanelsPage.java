// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.create;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.app.internal.survey.MeasuredWallWizard;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.window.Window;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** Third page: the panels, with a live word on how they set out. */
final class PanelsPage extends WizardPage {
  private static final Messages TEXTS = Messages.of(PanelsPage.class);

  private final WorkPage work;
  private final List<PanelDraft> panels = new ArrayList<>();
  private Table table;
  private Button remove;
  private PanelFields fields;
  private Label hint;
  private SetOutHint setOut;
  private MuralDraft start;
  private boolean shown;

  PanelsPage(WorkPage work) {
    super("panels");
    this.work = work;
    setTitle(TEXTS.text("panels.title"));
    setDescription(TEXTS.text("panels.description"));
    setPageComplete(false);
    start = work.start();
    panels.addAll(start.panels());
  }

  /** What was filled in on this page and the one before, if every field can be read. */
  Optional<MuralDraft> draft() {
    return fields.problem().isPresent() ? Optional.empty() : work.draft(panels);
  }

  /** Whether the person has seen this page, which comes filled in. */
  boolean wasShown() {
    return shown;
  }

  @Override
  public void setVisible(boolean visible) {
    super.setVisible(visible);
    shown |= visible;
    getContainer().updateButtons();
  }

  @Override
  public void createControl(Composite parent) {
    Composite body = new Composite(parent, SWT.NONE);
    GridLayoutFactory.swtDefaults().numColumns(2).margins(12, 12).spacing(8, 6).applyTo(body);
    createTable(body);
    createButtons(body);
    fields = new PanelFields(body, this::edited);
    hint = new Label(body, SWT.WRAP);
    GridDataFactory.fillDefaults().span(2, 1).grab(true, false).indent(0, 6).hint(420, 36).applyTo(hint);
    setOut = new SetOutHint(body.getDisplay(), this::setOutKnown);
    body.addDisposeListener(event -> setOut.cancel());
    setControl(body);
    work.onChange(this::workChanged);
    select(0);
  }

  private void createTable(Composite body) {
    table = new Table(body, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
    table.setHeaderVisible(true);
    GridDataFactory.fillDefaults().grab(true, true).hint(420, 110).applyTo(table);
    for (String column : List.of("id", "name", "x", "y", "width", "height")) {
      TableColumn made = new TableColumn(table, SWT.NONE);
      made.setText(TEXTS.text("panels." + column));
      made.setWidth(column.equals("id") ? 60 : column.equals("name") ? 130 : 95);
    }
    table.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> select(table.getSelectionIndex())));
  }

  private void createButtons(Composite body) {
    Composite buttons = new Composite(body, SWT.NONE);
    GridLayoutFactory.fillDefaults().applyTo(buttons);
    GridDataFactory.fillDefaults().align(SWT.FILL, SWT.BEGINNING).applyTo(buttons);
    Button add = button(buttons, "panels.add");
    add.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> add()));
    remove = button(buttons, "panels.remove");
    remove.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> remove()));
    Button measure = button(buttons, "panels.measure");
    measure.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> measure()));
  }

  private Button button(Composite parent, String key) {
    Button button = new Button(parent, SWT.PUSH);
    button.setText(TEXTS.text(key));
    setButtonLayoutData(button);
    return button;
  }

  private void add() {
    PanelDraft last = panels.get(panels.size() - 1);
    panels.add(last.next(PanelNames.free(panels), start.tile().width(), work.unit()));
    select(panels.size() - 1);
  }

  private void remove() {
    int index = table.getSelectionIndex();
    panels.remove(index);
    select(Math.min(index, panels.size() - 1));
  }

  /** The selected panel becomes a wall that was measured on site. */
  private void measure() {
    int index = table.getSelectionIndex();
    PanelDraft panel = panels.get(index);
    MeasuredWallWizard wizard = MeasuredWallWizard.forOutline(panel.id(), false, panel.outline(), work.unit());
    if (new WizardDialog(getShell(), wizard).open() == Window.OK) {
      panels.set(index, panel.on(wizard.outline(), wizard.box(), work.unit()));
      select(index);
    }
  }

  private void select(int index) {
    fillTable();
    table.setSelection(index);
    fields.show(panels.get(index), work.unit());
    refresh();
  }

  private void edited() {
    int index = table.getSelectionIndex();
    fields.panel().ifPresent(panel -> {
      panels.set(index, panel);
      fillRow(table.getItem(index), panel);
    });
    refresh();
  }

  private void workChanged() {
    if (start != work.start()) {
      if (panels.equals(start.panels())) {
        panels.clear();
        panels.addAll(work.start().panels());
      }
      start = work.start();
      select(Math.max(0, Math.min(table.getSelectionIndex(), panels.size() - 1)));
    } else {
      refresh();
    }
  }

  private void fillTable() {
    table.removeAll();
    panels.forEach(panel -> fillRow(new TableItem(table, SWT.NONE), panel));
    remove.setEnabled(panels.size() > 1);
  }

  private void fillRow(TableItem row, PanelDraft panel) {
    LengthUnit unit = work.unit();
    row.setText(new String[] {panel.id(), panel.title(), LengthText.shown(panel.x(), unit),
        LengthText.shown(panel.y(), unit), LengthText.shown(panel.width(), unit),
        LengthText.shown(panel.height(), unit)});
  }

  private void refresh() {
    Optional<String> problem = fields.problem();
    Optional<MuralDraft> draft = draft();
    setErrorMessage(problem.orElse(null));
    setMessage(null);
    setPageComplete(false);
    hint.setText(draft.isPresent() ? TEXTS.text("panels.settingOut") : "");
    draft.ifPresentOrElse(setOut::look, setOut::cancel);
  }

  private void setOutKnown(SetOutHint.Answer answer) {
    if (hint.isDisposed() || draft().isEmpty()) {
      return;
    }
    hint.setText(answer.words());
    setErrorMessage(answer.problem());
    setMessage(answer.warning(), IMessageProvider.WARNING);
    setPageComplete(answer.problem() == null);
  }
}
