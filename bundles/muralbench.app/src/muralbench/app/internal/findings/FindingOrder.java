// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.findings;

import java.util.Comparator;
import muralbench.app.internal.findings.FindingLabels.Column;
import muralbench.base.Finding;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerComparator;

/** Sorts the findings table by the column that was clicked; by grade the heaviest comes first. */
final class FindingOrder extends ViewerComparator {
  private Column column = Column.GRADE;
  private boolean turned;

  /** Sorts by a column, the other way round if it is the one already. */
  void by(Column next) {
    turned = next == column && !turned;
    column = next;
  }

  boolean turned() {
    return turned;
  }

  @Override
  public int compare(Viewer viewer, Object one, Object other) {
    Comparator<Finding> order = column == Column.GRADE ? Comparator.comparing(Finding::grade)
        : Comparator.comparing(finding -> FindingLabels.text(finding, column), String.CASE_INSENSITIVE_ORDER);
    int result = order.compare((Finding) one, (Finding) other);
    return turned ? -result : result;
  }
}
