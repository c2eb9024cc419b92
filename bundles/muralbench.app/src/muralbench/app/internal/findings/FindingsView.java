// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.findings;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import muralbench.app.internal.findings.FindingLabels.Column;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.base.Messages;
import muralbench.editor.MuralEditor;
import muralbench.editor.OpenMural;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.DoubleClickEvent;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.ui.part.ViewPart;

/** Shows what the checks found in the mural of the active editor, and follows every change. */
public final class FindingsView extends ViewPart {
  /** Id of the view. */
  public static final String ID = "muralbench.app.findings";

  private static final Messages TEXTS = Messages.of(FindingsView.class);

  private final FindingOrder order = new FindingOrder();
  private final Set<Grade> shown = EnumSet.allOf(Grade.class);
  private Label summary;
  private Label whole;
  private TableViewer table;
  private ActiveMural active;

  @Override
  public void createPartControl(Composite parent) {
    GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
    summary = new Label(parent, SWT.NONE);
    GridDataFactory.fillDefaults().grab(true, false).indent(6, 4).applyTo(summary);
    Composite frame = new Composite(parent, SWT.NONE);
    GridDataFactory.fillDefaults().grab(true, true).indent(0, 4).applyTo(frame);
    TableColumnLayout columns = new TableColumnLayout();
    frame.setLayout(columns);
    table = new TableViewer(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.H_SCROLL | SWT.V_SCROLL);
    table.getTable().setHeaderVisible(true);
    for (Column column : Column.values()) {
      columns.setColumnData(addColumn(column), column.layout());
    }
    whole = new Label(parent, SWT.WRAP);
    GridDataFactory.fillDefaults().grab(true, false).indent(6, 4).hint(200, SWT.DEFAULT).exclude(true).applyTo(whole);
    table.setContentProvider(ArrayContentProvider.getInstance());
    table.setComparator(order);
    table.addFilter(new GradeFilter(shown));
    table.addDoubleClickListener(this::reveal);
    table.addSelectionChangedListener(event -> showWhole());
    fillToolBar(getViewSite().getActionBars().getToolBarManager());
    active = new ActiveMural(getSite().getPage(), this::refresh);
    refresh();
  }

  private TableColumn addColumn(Column column) {
    TableViewerColumn made = new TableViewerColumn(table, SWT.NONE);
    made.setLabelProvider(new FindingLabels(column));
    TableColumn widget = made.getColumn();
    widget.setText(column.title());
    widget.setMoveable(true);
    widget.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
      order.by(column);
      table.getTable().setSortColumn(widget);
      table.getTable().setSortDirection(order.turned() ? SWT.DOWN : SWT.UP);
      table.refresh();
    }));
    return widget;
  }

  private void fillToolBar(IToolBarManager bar) {
    for (Grade grade : Grade.values()) {
      bar.add(new GradeToggle(grade, shown, this::refresh));
    }
  }

  private void reveal(DoubleClickEvent event) {
    Finding finding = (Finding) table.getStructuredSelection().getFirstElement();
    MuralEditor editor = active.editor().orElse(null);
    if (finding != null && editor != null) {
      getSite().getPage().activate(editor);
      editor.reveal(finding.place(), finding.values().get("keys") instanceof List<?> keys ? keys : List.of());
    }
  }

  /** The cells of the table cut long sentences off; the chosen finding is given whole below them. */
  private void showWhole() {
    Finding finding = (Finding) table.getStructuredSelection().getFirstElement();
    whole.setText(finding == null ? "" : TEXTS.text("whole", "message", finding.message(), "remedy", finding.remedy(),
        "source", finding.source()).replace("&", "&&"));
    ((GridData) whole.getLayoutData()).exclude = finding == null;
    whole.setVisible(finding != null);
    whole.getParent().layout();
    table.getTable().showSelection();
  }

  private void refresh() {
    if (table.getControl().isDisposed()) {
      return;
    }
    List<Finding> findings = active.mural().map(OpenMural::findings).orElse(List.of());
    if (!findings.equals(table.getInput())) {
      table.setInput(findings);
      showWhole();
    } else {
      table.refresh();
    }
    LentActions.lend(active.editor(), getViewSite().getActionBars());
    summary.setText(active.mural().isPresent() ? summary(findings) : TEXTS.text("summary.noMural"));
  }

  private String summary(List<Finding> findings) {
    if (findings.isEmpty()) {
      return TEXTS.text("summary.none");
    }
    String counts = TEXTS.text("summary.counts", "errors", count(findings, Grade.ERROR), "warnings",
        count(findings, Grade.WARNING), "advice", count(findings, Grade.ADVICE));
    long hidden = findings.stream().filter(finding -> !shown.contains(finding.grade())).count();
    return hidden == 0 ? counts : TEXTS.text("summary.hidden", "counts", counts, "hidden", hidden);
  }

  private static long count(List<Finding> findings, Grade grade) {
    return findings.stream().filter(finding -> finding.grade() == grade).count();
  }

  @Override
  public void setFocus() {
    table.getControl().setFocus();
  }

  @Override
  public void dispose() {
    if (active != null) {
      active.dispose();
    }
    super.dispose();
  }
}
