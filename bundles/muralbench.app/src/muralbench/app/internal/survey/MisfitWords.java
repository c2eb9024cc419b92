// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.survey;

import java.util.Locale;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.setout.survey.AdjustedWall;
import muralbench.setout.survey.Misfit;
import muralbench.setout.survey.OutOfTrue;
import muralbench.setout.survey.Survey;

/** What the survey made out, in words. */
final class MisfitWords {
  private static final Messages TEXTS = Messages.of(MisfitWords.class);

  private MisfitWords() {}

  /** How far a measurement is off, such as {@code 3 mm too long}. */
  static String of(Misfit misfit, LengthUnit unit) {
    if (LengthText.rounded(misfit.off(), unit) == 0 && !misfit.suspect()) {
      return TEXTS.text("misfit.none");
    }
    return TEXTS.text(misfit.off() > 0 ? "misfit.long" : "misfit.short", "off", length(misfit.off(), unit));
  }

  /** What has to be said about the wall as a whole; empty if the measurements agree. */
  static String warning(AdjustedWall wall, LengthUnit unit) {
    if (!wall.suspects().isEmpty()) {
      Misfit worst = wall.suspects().get(0);
      return TEXTS.text(wall.suspects().size() == 1 ? "warning.suspect" : "warning.suspects", "count",
          wall.suspects().size(), "worst", TEXTS.text("name." + worst.measurement().name()), "limit",
          LengthText.fine(Survey.SUSPECT * wall.accuracy(), unit));
    }
    return wall.disagrees() ? TEXTS.text("warning.together", "spread", length(wall.spread(), unit), "limit",
        LengthText.fine(Survey.SUSPECT * wall.accuracy(), unit)) : "";
  }

  /** How far a corner or side is out of true, such as {@code 12 mm wider than square}. */
  static String of(OutOfTrue one, LengthUnit unit) {
    String kind = one.kind().name().toLowerCase(Locale.ROOT);
    if (LengthText.rounded(one.off(), unit) == 0) {
      return TEXTS.text("true." + kind);
    }
    return TEXTS.text("true." + kind + (one.off() > 0 ? ".more" : ".less"), "off",
        LengthText.shown(Math.abs(one.off()), unit));
  }

  /** A length shown, finer where it would be shown as nothing. */
  private static String length(double off, LengthUnit unit) {
    double size = Math.abs(off);
    return LengthText.rounded(size, unit) == 0 ? LengthText.fine(size, unit) : LengthText.shown(size, unit);
  }
}
