// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthUnit;
import muralbench.setout.BondSpec;
import muralbench.setout.PanelSpec;
import muralbench.setout.bond.Bond;
import muralbench.setout.bond.BondRequest;
import muralbench.setout.bond.BondSetting;
import muralbench.setout.bond.BondSetting.Form;
import muralbench.setout.bond.SettingText;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** The fields of one bond: offset, rotation and its own settings. */
final class BondFields {
  private static final Messages TEXTS = Messages.of(BondFields.class);
  private static final String OFFSET = "offset";
  private static final String ROTATION = "rotation";

  private final Composite area;
  private final LengthUnit units;
  private final Runnable changed;
  private final Map<String, SettingField> fields = new LinkedHashMap<>();
  private final Map<String, Supplier<String>> values = new LinkedHashMap<>();
  private Bond bond;

  BondFields(Composite parent, LengthUnit units, Runnable changed) {
    this.units = units;
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
    Arrays.stream(area.getChildren()).forEach(Control::dispose);
    fields.clear();
    values.clear();
    if (bond.takesOffset()) {
      field(new BondSetting(OFFSET, TEXTS.text("bond.offset"), "0", TEXTS.text("bond.offset.hint")),
          Share.text(spec.offset()));
    }
    field(new BondSetting(ROTATION, TEXTS.text("bond.rotation"), "0", TEXTS.text("bond.rotation.hint")),
        Share.text(spec.rotation()));
    List<BondSetting> columns = bond.settings().stream().filter(SettingField::isColumn).toList();
    for (BondSetting setting : bond.settings()) {
      String value = spec.settings().getOrDefault(setting.name(), "");
      if (setting.form() == Form.ROWS) {
        rows(setting, value.isBlank() ? setting.standard() : value);
      } else if (!columns.contains(setting)) {
        field(setting, value);
      }
    }
    if (!columns.isEmpty()) {
      columns(columns, spec);
    }
    area.getParent().layout(true, true);
  }

  private void field(BondSetting setting, String value) {
    SettingField field = new SettingField(area, setting, value, units, changed);
    fields.put(setting.name(), field);
    values.put(setting.name(), field::value);
  }

  private void rows(BondSetting setting, String value) {
    List<String[]> start = new ArrayList<>();
    for (String row : split(value, ";")) {
      String[] cells = Arrays.copyOf(row.split("[\\s,]+"), setting.words().size());
      start.add(Arrays.stream(cells).map(cell -> cell == null ? "" : cell).toArray(String[]::new));
    }
    RowsField rows = new RowsField(area, setting.label(), setting.hint(), setting.words(), start, changed);
    values.put(setting.name(), () -> {
      String text = rows.rows().stream().map(row -> String.join(" ", row)).collect(Collectors.joining("; "));
      return text.equals(setting.standard()) ? "" : text;
    });
  }

  /** Settings that are lists, such as widths and counts of rings, as the columns of one table. */
  private void columns(List<BondSetting> columns, BondSpec spec) {
    List<List<String>> lists = columns.stream()
        .map(setting -> split(list(setting, spec.settings().getOrDefault(setting.name(), "")), ",")).toList();
    int most = lists.stream().mapToInt(List::size).max().orElse(0);
    List<String[]> start = new ArrayList<>();
    for (int i = 0; i < most; i++) {
      int row = i;
      start.add(lists.stream().map(list -> row < list.size() ? list.get(row) : "").toArray(String[]::new));
    }
    String hint = columns.stream().map(BondSetting::hint).collect(Collectors.joining(" "));
    RowsField rows = new RowsField(area, columns.stream().map(BondSetting::label)
        .collect(Collectors.joining(", ")), hint, columns.stream().map(BondSetting::label).toList(),
        start, changed);
    for (int i = 0; i < columns.size(); i++) {
      int column = i;
      boolean lengths = columns.get(i).form() == Form.LENGTHS;
      values.put(columns.get(i).name(), () -> {
        String list = rows.rows().stream().map(row -> row[column]).filter(cell -> !cell.isBlank())
            .collect(Collectors.joining(", "));
        return lengths ? SettingText.typed(list, units) : list;
      });
    }
  }

  private String list(BondSetting setting, String value) {
    return setting.form() == Form.LENGTHS ? SettingText.shown(value, units) : value;
  }

  private static List<String> split(String text, String separator) {
    return Arrays.stream(text.split(separator)).map(String::strip).filter(part -> !part.isEmpty()).toList();
  }

  /**
   * What is typed for a panel; marks the field that cannot be used.
   *
   * @throws InputException if the bond cannot be laid so
   */
  BondSpec spec(PanelSpec panel) throws InputException {
    fields.values().forEach(field -> field.mark(Optional.empty()));
    try {
      Map<String, String> given = new LinkedHashMap<>();
      values.forEach((name, value) -> {
        if (!value.get().isBlank() && !name.equals(OFFSET) && !name.equals(ROTATION)) {
          given.put(name, value.get());
        }
      });
      double offset = bond.takesOffset() ? Share.of(values.get(OFFSET).get(), "bond.offset") : 0;
      double rotation = Share.of(values.get(ROTATION).get(), "bond.rotation");
      bond.lay(new BondRequest(panel.tile(), panel.joint(), offset, given));
      return new BondSpec(bond.kind(), offset, rotation, given);
    } catch (InputException e) {
      fields.values().stream().filter(field -> e.place().equals("bond." + field.name()))
          .forEach(field -> field.mark(Optional.of(TEXTS.text("bond.problem", "problem", e.problem(), "remedy",
              e.remedy()))));
      throw e;
    }
  }
}
