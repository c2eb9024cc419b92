// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.Map;
import muralbench.base.InputException;
import muralbench.base.Messages;

/**
 * Straight courses of equal tiles, each shifted against the course below by a share of the module: 0 lays a grid, 1/2 a
 * running bond, 1/3 a stepped one. The repeat is one module wide and one course module high.
 */
final class CourseBond implements Bond {
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
    return new CoursePattern(request.tile().width(), request.tile().height(), request.joint(), offset);
  }
}
