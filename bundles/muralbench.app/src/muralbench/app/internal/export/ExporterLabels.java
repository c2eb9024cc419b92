// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.export;

import muralbench.base.Messages;
import muralbench.export.Exporter;
import org.eclipse.jface.viewers.ITableLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;

/** The rows of the list of documents: name and purpose. */
final class ExporterLabels extends LabelProvider implements ITableLabelProvider {
  private static final Messages TEXTS = Messages.of(ExporterLabels.class);

  static void addColumns(Table table) {
    table.setHeaderVisible(true);
    addColumn(table, "documents.document", 170);
    addColumn(table, "documents.purpose", 430);
  }

  private static void addColumn(Table table, String title, int width) {
    TableColumn column = new TableColumn(table, SWT.NONE);
    column.setText(TEXTS.text(title));
    column.setWidth(width);
  }

  @Override
  public String getText(Object element) {
    return ((Exporter) element).label();
  }

  @Override
  public Image getColumnImage(Object element, int column) {
    return null;
  }

  @Override
  public String getColumnText(Object element, int column) {
    return column == 0 ? ((Exporter) element).label() : ((Exporter) element).purpose();
  }
}
