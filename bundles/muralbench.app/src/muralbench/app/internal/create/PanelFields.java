// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.create;

import java.util.List;
import java.util.Optional;
import muralbench.app.internal.entry.LengthField;
import muralbench.base.Messages;
import muralbench.base.length.LengthUnit;
import muralbench.model.Outline;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** The fields of one panel. */
final class PanelFields {
  private static final Messages TEXTS = Messages.of(PanelFields.class);

  private final Text id;
  private final Text title;
  private final LengthField x;
  private final LengthField y;
  private final LengthField width;
  private final LengthField height;
  private Optional<Outline> measured = Optional.empty();
  private boolean quiet;

  PanelFields(Composite parent, Runnable changed) {
    Group group = new Group(parent, SWT.NONE);
    group.setText(TEXTS.text("panels.selected"));
    GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(group);
    GridLayoutFactory.swtDefaults().numColumns(6).margins(10, 8).spacing(8, 6).applyTo(group);
    Runnable told = () -> {
      if (!quiet) {
        changed.run();
      }
    };
    id = text(group, "panels.id", told);
    title = text(group, "panels.name", told);
    x = new LengthField(group, TEXTS.text("panels.x"), true, told);
    y = new LengthField(group, TEXTS.text("panels.y"), true, told);
    width = new LengthField(group, TEXTS.text("panels.width"), false, told);
    height = new LengthField(group, TEXTS.text("panels.height"), false, told);
  }

  private static Text text(Composite parent, String key, Runnable changed) {
    new Label(parent, SWT.NONE).setText(TEXTS.text("field.label", "name", TEXTS.text(key)));
    Text text = new Text(parent, SWT.BORDER);
    GridDataFactory.fillDefaults().span(2, 1).indent(8, 0).grab(true, false).applyTo(text);
    text.addModifyListener(event -> changed.run());
    return text;
  }

  void show(PanelDraft panel, LengthUnit unit) {
    quiet = true;
    measured = panel.measured();
    id.setText(panel.id());
    title.setText(panel.title());
    lengths().forEach(field -> field.unit(unit));
    x.show(panel.x());
    y.show(panel.y());
    width.show(panel.width());
    height.show(panel.height());
    lengths().forEach(field -> field.enabled(measured.isEmpty()));
    quiet = false;
  }

  Optional<String> problem() {
    return lengths().stream().map(LengthField::problem).flatMap(Optional::stream).findFirst();
  }

  Optional<PanelDraft> panel() {
    return problem().isPresent() ? Optional.empty()
        : Optional.of(new PanelDraft(id.getText(), title.getText(), x.value().getAsDouble(), y.value().getAsDouble(),
            width.value().getAsDouble(), height.value().getAsDouble(), measured));
  }

  private List<LengthField> lengths() {
    return List.of(x, y, width, height);
  }
}
