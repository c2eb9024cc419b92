// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import java.util.List;
import java.util.Optional;
import muralbench.base.Messages;
import muralbench.base.length.LengthUnit;
import muralbench.setout.bond.BondSetting;
import muralbench.setout.bond.BondSetting.Form;
import muralbench.setout.bond.SettingText;
import org.eclipse.jface.fieldassist.ControlDecoration;
import org.eclipse.jface.fieldassist.FieldDecorationRegistry;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** One setting of a bond: a choice, a length or any text, with its label and hint. Takes two columns of a grid. */
final class SettingField {
  private static final Messages TEXTS = Messages.of(SettingField.class);
  private static final int HINT_WIDTH = 300;

  private final BondSetting setting;
  private final LengthUnit units;
  private final Control control;
  private final ControlDecoration sign;

  SettingField(Composite area, BondSetting setting, String value, LengthUnit units, Runnable changed) {
    this.setting = setting;
    this.units = units;
    new Label(area, SWT.NONE).setText(TEXTS.text("bond.label", "name", setting.label()));
    control = setting.form() == Form.CHOICE ? combo(area, value) : text(area, value);
    control.addListener(SWT.Modify, event -> changed.run());
    GridDataFactory.fillDefaults().grab(true, false).indent(8, 0).applyTo(control);
    sign = new ControlDecoration(control, SWT.LEFT | SWT.TOP);
    sign.setImage(FieldDecorationRegistry.getDefault().getFieldDecoration(FieldDecorationRegistry.DEC_ERROR)
        .getImage());
    sign.hide();
    new Label(area, SWT.NONE);
    Label words = new Label(area, SWT.WRAP);
    words.setText(setting.hint());
    GridDataFactory.fillDefaults().grab(true, false).hint(HINT_WIDTH, SWT.DEFAULT).indent(8, 0).applyTo(words);
  }

  private Control combo(Composite area, String value) {
    Combo combo = new Combo(area, SWT.READ_ONLY);
    setting.words().forEach(combo::add);
    String chosen = value.isBlank() ? setting.standard() : value;
    if (!setting.words().contains(chosen)) {
      // What cannot be chosen is shown all the same, and refused by the bond.
      combo.add(chosen);
    }
    combo.setText(chosen);
    return combo;
  }

  private Control text(Composite area, String value) {
    Text text = new Text(area, SWT.BORDER);
    text.setMessage(setting.standard());
    text.setText(setting.form() == Form.LENGTH ? SettingText.shown(value, units) : value);
    return text;
  }

  String name() {
    return setting.name();
  }

  /** The setting as the file keeps it: lengths with their unit; blank for the standard. */
  String value() {
    if (control instanceof Combo combo) {
      return combo.getText().equals(setting.standard()) ? "" : combo.getText();
    }
    String typed = ((Text) control).getText().strip();
    return setting.form() == Form.LENGTH ? SettingText.typed(typed, units) : typed;
  }

  /** Marks the field with what is wrong with it. */
  void mark(Optional<String> trouble) {
    trouble.ifPresentOrElse(words -> {
      sign.setDescriptionText(words);
      sign.show();
    }, sign::hide);
  }

  /** Whether a setting is a column of a table and not a field of its own. */
  static boolean isColumn(BondSetting setting) {
    return List.of(Form.LENGTHS, Form.COUNTS).contains(setting.form());
  }
}
