// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.create;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import muralbench.app.internal.entry.LengthField;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthUnit;
import muralbench.model.DisplayUnits;
import muralbench.model.Exposure;
import muralbench.setout.MuralReader;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Second page: the work as a whole and its tile. */
final class WorkPage extends WizardPage {
  private static final Messages TEXTS = Messages.of(WorkPage.class);

  private final List<Runnable> listeners = new ArrayList<>();
  private MuralDraft start = MuralDraft.start(DisplayUnits.INCHES);
  private Text title;
  private Text client;
  private Combo units;
  private Combo exposure;
  private LengthField width;
  private LengthField height;
  private LengthField thickness;
  private LengthField joint;

  WorkPage() {
    super("work");
    setTitle(TEXTS.text("work.title"));
    setDescription(TEXTS.text("work.description"));
  }

  /** Tells when the units or anything else on the page changes. */
  void onChange(Runnable listener) {
    listeners.add(listener);
  }

  /** The start the person's units stand for; the panels page takes its first panel from it. */
  MuralDraft start() {
    return start;
  }

  LengthUnit unit() {
    return start.units() == DisplayUnits.INCHES ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
  }

  /** What was filled in, with the given panels, if every field can be read. */
  Optional<MuralDraft> draft(List<PanelDraft> panels) {
    return tile().map(tile -> new MuralDraft(title.getText(), client.getText(), start.units(),
        Exposure.VALUES.get(exposure.getSelectionIndex()), tile, panels));
  }

  @Override
  public void createControl(Composite parent) {
    Composite body = new Composite(parent, SWT.NONE);
    GridLayoutFactory.swtDefaults().numColumns(2).margins(12, 12).spacing(8, 6).applyTo(body);
    title = text(body, "work.name", "work.name.hint");
    client = text(body, "work.client", "work.client.hint");
    units = combo(body, "work.units", DisplayUnits.VALUES.stream().map(DisplayUnits::getLiteral).toList());
    exposure = combo(body, "work.exposure", Exposure.VALUES.stream().map(Exposure::getLiteral).toList());
    Group tile = new Group(body, SWT.NONE);
    tile.setText(TEXTS.text("work.tile"));
    GridDataFactory.fillDefaults().span(2, 1).indent(0, 8).grab(true, false).applyTo(tile);
    GridLayoutFactory.swtDefaults().numColumns(3).margins(10, 8).spacing(8, 6).applyTo(tile);
    width = new LengthField(tile, TEXTS.text("work.width"), false, this::changed);
    height = new LengthField(tile, TEXTS.text("work.height"), false, this::changed);
    thickness = new LengthField(tile, TEXTS.text("work.thickness"), true, this::changed);
    joint = new LengthField(tile, TEXTS.text("work.joint"), true, this::changed);
    Label hint = new Label(body, SWT.WRAP);
    hint.setText(TEXTS.text("work.lengths"));
    GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(420, SWT.DEFAULT).applyTo(hint);
    units.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> unitsChosen()));
    title.addModifyListener(event -> changed());
    setControl(body);
    showTile(start.tile());
    changed();
  }

  @Override
  public void setVisible(boolean visible) {
    super.setVisible(visible);
    if (visible) {
      title.setFocus();
    }
  }

  private Text text(Composite body, String label, String hint) {
    new Label(body, SWT.NONE).setText(TEXTS.text(label));
    Text text = new Text(body, SWT.BORDER);
    text.setMessage(TEXTS.text(hint));
    GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
    return text;
  }

  private Combo combo(Composite body, String label, List<String> literals) {
    new Label(body, SWT.NONE).setText(TEXTS.text(label));
    Combo combo = new Combo(body, SWT.READ_ONLY);
    literals.forEach(literal -> combo.add(TEXTS.text(label + "." + literal)));
    combo.select(0);
    return combo;
  }

  /** An untouched tile becomes the usual one of the other units; what a person typed is kept as it is. */
  private void unitsChosen() {
    DisplayUnits chosen = DisplayUnits.VALUES.get(units.getSelectionIndex());
    boolean untouched = tile().filter(start.tile()::equals).isPresent();
    start = MuralDraft.start(chosen);
    List.of(width, height, thickness, joint).forEach(field -> field.unit(unit()));
    if (untouched) {
      showTile(start.tile());
    }
    changed();
  }

  private void showTile(TileDraft tile) {
    width.show(tile.width());
    height.show(tile.height());
    thickness.show(tile.thickness());
    joint.show(tile.joint());
  }

  private Optional<TileDraft> tile() {
    if (unreadable().isPresent()) {
      return Optional.empty();
    }
    return Optional.of(new TileDraft(width.value().getAsDouble(), height.value().getAsDouble(),
        thickness.value().getAsDouble(), joint.value().getAsDouble()));
  }

  private Optional<String> problem() {
    Optional<String> unreadable = unreadable();
    return unreadable.isPresent() ? unreadable : draft(start.panels()).flatMap(WorkPage::refusal);
  }

  /** What the set-out would refuse about the tile and its joint. */
  private static Optional<String> refusal(MuralDraft draft) {
    try {
      MuralReader.mural(draft.toMural());
      return Optional.empty();
    } catch (InputException e) {
      return Optional.of(TEXTS.text("work.checked", "problem", e.problem(), "remedy", e.remedy()));
    }
  }

  private Optional<String> unreadable() {
    return List.of(width, height, thickness, joint).stream().map(LengthField::problem).flatMap(Optional::stream)
        .filter(Objects::nonNull).findFirst();
  }

  private void changed() {
    setErrorMessage(problem().orElse(null));
    setPageComplete(problem().isEmpty());
    listeners.forEach(Runnable::run);
  }
}
