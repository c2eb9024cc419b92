// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.survey;

import java.util.Optional;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.model.Outline;
import org.eclipse.swt.widgets.Composite;

/** The fields of one way to take up a wall. */
interface SurveyForm {
  /** The fields. */
  Composite control();

  /** Puts the cursor where typing begins. */
  void focus();

  /** Shows measurements of its own kind. */
  void show(Outline outline, LengthUnit unit);

  /** What still has to be typed before there is a wall, in words; none if everything is there. */
  Optional<String> missing();

  /**
   * The wall that the measurements make; marks the fields with what is wrong or how far they are off.
   *
   * @throws InputException if a field cannot be read or no wall fits
   */
  Measured measured() throws InputException;
}
