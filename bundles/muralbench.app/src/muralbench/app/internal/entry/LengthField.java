// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.entry;

import java.util.Optional;
import java.util.OptionalDouble;
import muralbench.base.Messages;
import muralbench.base.length.LengthFormatException;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import org.eclipse.jface.action.LegacyActionTools;
import org.eclipse.jface.fieldassist.ControlDecoration;
import org.eclipse.jface.fieldassist.FieldDecorationRegistry;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/**
 * A field for one length: its label, the text as a person types it, and beside it what was understood in the other
 * unit. Takes three columns of a grid.
 */
public final class LengthField {
  private static final Messages TEXTS = Messages.of(LengthField.class);
  private static final int WIDTH = 110;
  private static final double TENTHS = 10;
  private static final double ROUNDING_ERROR = 1e-9;

  private final String name;
  private final boolean mayBeZero;
  private final Text text;
  private final Label understood;
  private final ControlDecoration sign;
  private LengthUnit unit = LengthUnit.INCH;
  private boolean quiet;
  private boolean waits;

  /**
   * A field in the next three columns of a grid.
   *
   * @param label its name, with a mnemonic
   * @param mayBeZero whether any length will do, also 0 and below; else it has to be more than 0
   * @param changed runs when a person changed the text
   */
  public LengthField(Composite parent, String label, boolean mayBeZero, Runnable changed) {
    this.name = LegacyActionTools.removeMnemonics(label);
    this.mayBeZero = mayBeZero;
    new Label(parent, SWT.NONE).setText(TEXTS.text("field.label", "name", label));
    text = new Text(parent, SWT.BORDER | SWT.SINGLE);
    GridDataFactory.fillDefaults().hint(WIDTH, SWT.DEFAULT).indent(8, 0).align(SWT.FILL, SWT.CENTER).applyTo(text);
    understood = new Label(parent, SWT.NONE);
    GridDataFactory.fillDefaults().grab(true, false).hint(120, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER)
        .applyTo(understood);
    sign = new ControlDecoration(text, SWT.LEFT | SWT.TOP);
    sign.setImage(FieldDecorationRegistry.getDefault().getFieldDecoration(FieldDecorationRegistry.DEC_ERROR)
        .getImage());
    sign.hide();
    text.addModifyListener(event -> {
      refresh();
      if (!quiet) {
        changed.run();
      }
    });
  }

  /** Leaves the field blank at first and says nothing about it before something was typed. */
  public LengthField waiting() {
    waits = true;
    refresh();
    return this;
  }

  /** Its name without a mnemonic. */
  public String name() {
    return name;
  }

  /** Whether nothing is typed in a field that may wait for it. */
  public boolean blank() {
    return waits && text.getText().isBlank();
  }

  /** Puts the cursor into the field. */
  public void focus() {
    text.setFocus();
  }

  /** Marks the field with a problem that only shows together with others, or takes the mark back. */
  public void mark(Optional<String> trouble) {
    sign(trouble.or(this::problem));
  }

  /** Shows a length, exactly, without telling anyone. */
  public void show(double millimetres) {
    quiet = true;
    text.setText(LengthText.exact(millimetres, unit));
    quiet = false;
  }

  /** Changes the unit; what the person typed stays the same length. */
  public void unit(LengthUnit next) {
    OptionalDouble length = value();
    unit = next;
    length.ifPresent(this::show);
    refresh();
  }

  /** The length in millimetres, if there is one that will do. */
  public OptionalDouble value() {
    try {
      double length = LengthText.parse(text.getText(), unit);
      return fits(length) ? OptionalDouble.of(length) : OptionalDouble.empty();
    } catch (LengthFormatException e) {
      return OptionalDouble.empty();
    }
  }

  /** What is wrong with the text, if anything. */
  public Optional<String> problem() {
    if (blank()) {
      return Optional.empty();
    }
    try {
      return fits(LengthText.parse(text.getText(), unit)) ? Optional.empty()
          : Optional.of(TEXTS.text("field.mustBePositive", "name", name));
    } catch (LengthFormatException e) {
      return Optional.of(TEXTS.text("field.problem", "name", name, "problem", e.getMessage()));
    }
  }

  private void sign(Optional<String> trouble) {
    trouble.filter(words -> text.isEnabled()).ifPresentOrElse(words -> {
      sign.setDescriptionText(words);
      sign.show();
    }, sign::hide);
  }

  private boolean fits(double length) {
    return mayBeZero || length > 0;
  }

  /** Whether a person can type. */
  public void enabled(boolean enabled) {
    text.setEnabled(enabled);
    refresh();
  }

  private void refresh() {
    sign(problem());
    LengthUnit other = unit == LengthUnit.INCH ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    OptionalDouble length = value();
    understood.setText(length.isEmpty() ? "" : understood(length.getAsDouble(), other));
  }

  /** A length in the other unit: with an equals sign only where nothing was rounded. */
  private static String understood(double millimetres, LengthUnit other) {
    double rounded = other == LengthUnit.INCH ? LengthText.rounded(millimetres, other)
        : Math.rint(millimetres * TENTHS) / TENTHS;
    boolean same = Math.abs(rounded - millimetres) < ROUNDING_ERROR;
    return TEXTS.text(same ? "field.understood" : "field.about", "length", LengthText.exact(rounded, other));
  }
}
