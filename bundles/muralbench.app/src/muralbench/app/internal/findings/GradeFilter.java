// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.findings;

import java.util.Set;
import muralbench.base.Finding;
import muralbench.base.Grade;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerFilter;

/** Lets through the grades a person wants to see. */
final class GradeFilter extends ViewerFilter {
  private final Set<Grade> shown;

  GradeFilter(Set<Grade> shown) {
    this.shown = shown;
  }

  @Override
  public boolean select(Viewer viewer, Object parent, Object element) {
    return shown.contains(((Finding) element).grade());
  }
}
