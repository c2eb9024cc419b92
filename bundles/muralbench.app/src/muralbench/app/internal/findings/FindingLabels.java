// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.findings;

import java.util.Locale;
import muralbench.app.internal.Pictures;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.base.Messages;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnLayoutData;
import org.eclipse.jface.viewers.ColumnPixelData;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.swt.graphics.Image;

/** The cells of one column of the findings table. */
final class FindingLabels extends ColumnLabelProvider {
  /** The columns from left to right. */
  enum Column {
    GRADE(0, 95), PLACE(0, 105), MESSAGE(40, 160), REMEDY(40, 160), SOURCE(18, 110), RULE(0, 130);

    private final int weight;
    private final int width;

    Column(int weight, int width) {
      this.weight = weight;
      this.width = width;
    }

    /** How the column takes part in the width of the view. */
    ColumnLayoutData layout() {
      return weight == 0 ? new ColumnPixelData(width) : new ColumnWeightData(weight, width);
    }

    String title() {
      return TEXTS.text("column." + name().toLowerCase(Locale.ROOT));
    }
  }

  private static final Messages TEXTS = Messages.of(FindingLabels.class);

  private final Column column;

  FindingLabels(Column column) {
    this.column = column;
  }

  /** The name of a grade. */
  static String grade(Grade grade) {
    return TEXTS.text("grade." + grade.name().toLowerCase(Locale.ROOT));
  }

  @Override
  public Image getImage(Object element) {
    return column == Column.GRADE ? Pictures.grade(((Finding) element).grade()) : null;
  }

  @Override
  public String getText(Object element) {
    return text((Finding) element, column);
  }

  static String text(Finding finding, Column column) {
    return switch (column) {
      case GRADE -> grade(finding.grade());
      case PLACE -> finding.place().isEmpty() ? TEXTS.text("place.mural") : finding.place();
      case MESSAGE -> finding.message();
      case REMEDY -> finding.remedy();
      case SOURCE -> finding.source();
      case RULE -> finding.code();
    };
  }
}
