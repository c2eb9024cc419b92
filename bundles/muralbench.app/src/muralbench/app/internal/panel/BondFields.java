// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import java.util.LinkedHashMap;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.setout.BondSpec;
import muralbench.setout.bond.Bond;
import muralbench.setout.bond.BondSetting;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** The fields of one bond: offset, rotation and its own settings. */
final class BondFields {
  private static final Messages TEXTS = Messages.of(BondFields.class);
  private static final int HINT_WIDTH = 330;

  private final Composite area;
  private final Runnable changed;
  private final Map<String, Text> settings = new LinkedHashMap<>();
  private Bond bond;
  private Text offset;
  private Text rotation;

  BondFields(Composite parent, Runnable changed) {
    this.changed = changed;
    area = new Composite(parent, SWT.NONE);
    GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 6).applyTo(area);
  }

  Composite control() {
    return area;
  }

  /** Shows the fields of a bond with the values of {@code spec}. */
  void show(Bond shown, BondSpec spec) {
    bond = shown;
    for (Control old : area.getChildren()) {
      old.dispose();
    }
    settings.clear();
    offset = field(TEXTS.text("bond.offset"), Share.text(spec.offset()), "0", TEXTS.text("bond.offset.hint"));
    rotation = field(TEXTS.text("bond.rotation"), Share.text(spec.rotation()), "0", TEXTS.text("bond.rotation.hint"));
    for (BondSetting setting : bond.settings()) {
      String value = spec.settings().getOrDefault(setting.name(), "");
      settings.put(setting.name(), field(setting.label(), value, setting.standard(), setting.hint()));
    }
    area.layout(true, true);
  }

  private Text field(String label, String value, String standard, String hint) {
    new Label(area, SWT.NONE).setText(label);
    Text text = new Text(area, SWT.BORDER);
    text.setMessage(standard);
    text.setText(value);
    text.addListener(SWT.Modify, event -> changed.run());
    GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
    new Label(area, SWT.NONE);
    Label words = new Label(area, SWT.WRAP);
    words.setText(hint);
    words.setForeground(area.getDisplay().getSystemColor(SWT.COLOR_WIDGET_DISABLED_FOREGROUND));
    GridDataFactory.fillDefaults().grab(true, false).hint(HINT_WIDTH, SWT.DEFAULT).applyTo(words);
    return text;
  }

  /**
   * What is typed.
   *
   * @throws InputException if offset or rotation is no number
   */
  BondSpec spec() throws InputException {
    Map<String, String> given = new LinkedHashMap<>();
    settings.forEach((name, field) -> {
      if (!field.getText().isBlank()) {
        given.put(name, field.getText().strip());
      }
    });
    return new BondSpec(bond.kind(), Share.of(offset.getText(), "bond.offset"),
        Share.of(rotation.getText(), "bond.rotation"), given);
  }
}
