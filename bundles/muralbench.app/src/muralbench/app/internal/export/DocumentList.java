// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.export;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import muralbench.export.Exporter;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** The documents to choose from, each with a word on what it is for. */
final class DocumentList {
  private static final int INDENT = 24;

  private final Map<Exporter, Button> boxes = new LinkedHashMap<>();
  private final ScrolledComposite frame;

  DocumentList(Composite parent, List<Exporter> exporters, Set<String> unchecked, Runnable changed) {
    frame = new ScrolledComposite(parent, SWT.BORDER | SWT.V_SCROLL);
    Composite body = new Composite(frame, SWT.NONE);
    body.setBackground(parent.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
    body.setBackgroundMode(SWT.INHERIT_DEFAULT);
    GridLayoutFactory.swtDefaults().margins(8, 6).spacing(0, 2).applyTo(body);
    for (Exporter exporter : exporters) {
      boxes.put(exporter, row(body, exporter, !unchecked.contains(exporter.id()), changed));
    }
    frame.setContent(body);
    frame.setExpandHorizontal(true);
    frame.setExpandVertical(true);
    frame.addListener(SWT.Resize, event -> frame.setMinSize(0, body.computeSize(frame.getClientArea().width,
        SWT.DEFAULT).y));
  }

  private static Button row(Composite body, Exporter exporter, boolean checked, Runnable changed) {
    Button box = new Button(body, SWT.CHECK);
    box.setText(exporter.label().replace("&", "&&"));
    box.setSelection(checked);
    box.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> changed.run()));
    Label purpose = new Label(body, SWT.WRAP);
    purpose.setText(exporter.purpose().replace("&", "&&"));
    GridDataFactory.fillDefaults().grab(true, false).indent(INDENT, 0).hint(300, SWT.DEFAULT).applyTo(purpose);
    return box;
  }

  Control control() {
    return frame;
  }

  /** The documents that are ticked, in the order of the list. */
  List<Exporter> chosen() {
    return boxes.entrySet().stream().filter(entry -> entry.getValue().getSelection()).map(Map.Entry::getKey).toList();
  }
}
