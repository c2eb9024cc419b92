// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.base.Messages;

/**
 * Straight courses of equal tiles, each shifted against the course below by a share of the module: 0 lays a grid, 1/2 a
 * running bond, 1/3 a stepped one. Courses lie level, or stand upright, each shifted up against the one on its left. The
 * repeat is one module wide and one course module high.
 */
final class CourseBond implements Bond {
  /** The setting that says which way the courses run. */
  private static final String COURSES = "courses";
  private static final String LEVEL = "level";
  private static final String VERTICAL = "vertical";

  private final String kind;
  private final boolean shifted;

  /**
   * A bond of courses.
   *
   * @param shifted whether an offset of 0 is refused, because the bond would then not be what its name says
   */
  CourseBond(String kind, boolean shifted) {
    this.kind = kind;
    this.shifted = shifted;
  }

  @Override
  public String kind() {
    return kind;
  }

  @Override
  public String label() {
    return Messages.of(CourseBond.class).text("bond." + kind);
  }

  @Override
  public List<BondSetting> settings() {
    Messages messages = Messages.of(CourseBond.class);
    return List.of(new BondSetting(COURSES, messages.text("setting.courses"), LEVEL,
        messages.text("setting.courses.hint")).of(BondSetting.Form.CHOICE, LEVEL, VERTICAL));
  }

  @Override
  public BondRequest sample() {
    return shifted ? BondRequest.sample(140, 68, 0.5, Map.of()) : Bond.super.sample();
  }

  @Override
  public Pattern lay(BondRequest request) throws InputException {
    double offset = request.offset();
    Messages messages = Messages.of(CourseBond.class);
    if (!(Math.abs(offset) <= 1)) {
      throw new InputException("bond.offset", messages.text("offset.range", "offset", offset),
          messages.text("offset.range.remedy"));
    }
    if (shifted && offset == 0) {
      throw new InputException("bond.offset", messages.text("offset.missing"), messages.text("offset.missing.remedy"));
    }
    double width = request.tile().width();
    double height = request.tile().height();
    if (new BondSettings(request).word(COURSES, LEVEL, LEVEL, VERTICAL).equals(VERTICAL)) {
      return new VerticalCourses(new CoursePattern(height, width, request.joint(), offset));
    }
    return new CoursePattern(width, height, request.joint(), offset);
  }
}
