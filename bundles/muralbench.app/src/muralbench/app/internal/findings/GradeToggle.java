// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.findings;

import java.util.Locale;
import java.util.Set;
import muralbench.app.internal.Pictures;
import muralbench.base.Grade;
import muralbench.base.Messages;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;

/** Shows or hides the findings of one grade. */
final class GradeToggle extends Action {
  private final Grade grade;
  private final Set<Grade> shown;
  private final Runnable changed;

  GradeToggle(Grade grade, Set<Grade> shown, Runnable changed) {
    super(FindingLabels.grade(grade), IAction.AS_CHECK_BOX);
    this.grade = grade;
    this.shown = shown;
    this.changed = changed;
    String name = grade.name().toLowerCase(Locale.ROOT);
    setToolTipText(Messages.of(GradeToggle.class).text("toggle." + name));
    setImageDescriptor(Pictures.descriptor("grade-" + name));
    setChecked(shown.contains(grade));
  }

  @Override
  public void run() {
    if (isChecked()) {
      shown.add(grade);
    } else {
      shown.remove(grade);
    }
    changed.run();
  }
}
