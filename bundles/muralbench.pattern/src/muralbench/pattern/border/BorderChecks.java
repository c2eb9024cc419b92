// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;

/** What a band has to be before it is worth solving. */
final class BorderChecks {
  private static final Messages TEXTS = Messages.of(BorderChecks.class);

  private final Border border;
  private final LengthUnit units;

  private BorderChecks(Border border, LengthUnit units) {
    this.border = border;
    this.units = units;
  }

  static void check(Border border, LengthUnit units) throws InputException {
    BorderChecks checks = numbers(border, units);
    checks.path();
    for (int row = 0; row < border.rows().size(); row++) {
      for (RunClass run : RunClass.of(border, row)) {
        checks.run(run);
      }
    }
    checks.depth();
  }

  /** Checks all but the lengths of the sides. */
  static BorderChecks numbers(Border border, LengthUnit units) throws InputException {
    BorderChecks checks = new BorderChecks(border, units);
    checks.joint();
    checks.rows();
    checks.permits();
    return checks;
  }

  private void joint() throws InputException {
    JointRange joint = border.joint();
    positive("/joint/min", joint.min(), true);
    positive("/joint/max", joint.max(), true);
    if (joint.min() > joint.max()) {
      throw refused("/joint", "joint.empty", "min", fine(joint.min()), "max", fine(joint.max()));
    }
    if (!(joint.preferred() >= joint.min() && joint.preferred() <= joint.max())) {
      throw refused("/joint/preferred", "joint.preferred", "joint", fine(joint.preferred()), "min", fine(joint.min()),
          "max", fine(joint.max()));
    }
  }

  private void rows() throws InputException {
    List<BandRow> rows = border.rows();
    if (rows.isEmpty()) {
      throw refused("/rows", "rows.none");
    }
    for (int i = 0; i < rows.size(); i++) {
      BandRow row = rows.get(i);
      String place = "/rows/" + i;
      positive(place + "/length", row.length(), false);
      positive(place + "/width", row.width(), false);
      positive(place + "/cornerSize", row.cornerSize(), false);
      if (row.repeat() < 1) {
        throw refused(place + "/repeat", "rows.repeat", "repeat", row.repeat());
      }
      if (border.joint().max() >= row.length()) {
        throw refused("/joint/max", "joint.wide", "joint", fine(border.joint().max()), "tile", fine(row.length()));
      }
      corner(place, row, i == rows.size() - 1);
    }
  }

  private void corner(String place, BandRow row, boolean innermost) throws InputException {
    if (!border.path().closed()) {
      return;
    }
    if (border.corner().ownTile()) {
      if (row.cornerSize() < row.width()) {
        throw refused(place + "/cornerSize", "corner.small", "corner", fine(row.cornerSize()), "width", fine(row.width()));
      }
      if (row.cornerSize() > row.width() && (!innermost || border.corner() != Corner.TILE)) {
        throw refused(place + "/cornerSize", "corner.large", "corner", fine(row.cornerSize()), "width", fine(row.width()));
      }
    }
    if (border.corner() == Corner.MITRED && row.length() < row.width()) {
      throw refused(place + "/length", "corner.mitre", "length", fine(row.length()), "width", fine(row.width()));
    }
  }

  private void permits() throws InputException {
    Permits permits = border.permits();
    positive("/permits/moveIn", permits.moveIn(), true);
    positive("/permits/moveOut", permits.moveOut(), true);
    positive("/permits/centreMin", permits.centreMin(), true);
    positive("/permits/centreMax", permits.centreMax(), true);
    if (!(permits.scale() >= 0 && permits.scale() < 1)) {
      throw refused("/permits/scale", "permits.scale");
    }
    if (!(permits.endShare() >= 0 && permits.endShare() <= 1)) {
      throw refused("/permits/endShare", "permits.ends");
    }
    if (permits.centreMin() > permits.centreMax() || permits.centreMax() > 0 && permits.centreMin() == 0) {
      throw refused("/permits/centreMin", "permits.centre", "min", fine(permits.centreMin()), "max",
          fine(permits.centreMax()));
    }
  }

  private void path() throws InputException {
    List<BandSide> sides = border.path().sides();
    for (int i = 0; i < sides.size(); i++) {
      double length = sides.get(i).length();
      if (!(length > 0 && Double.isFinite(length))) {
        throw refused(place(i), "side.length", "side", border.path().sideName(i));
      }
      if (!sides.get(i).straight()) {
        throw refused(place(i), "path.aslant", "side", i + 1);
      }
    }
  }

  /** The run has to take its corners and one repeat when everything permitted is done to make it fit. */
  private void run(RunClass run) throws InputException {
    Permits permits = border.permits();
    int side = run.sides().get(0);
    double room = Math.max(run.room(permits.moveIn()), run.room(-permits.moveOut()));
    double joint = border.joint().min();
    BandRow row = border.rows().get(run.row());
    int tiles = row.plain() ? 0 : row.repeat();
    double tile = row.length() * (1 - permits.scale());
    if (room - Math.max(run.joints(), 0) * joint <= 0) {
      throw refused(place(side), "side.corners", "side", border.path().sideName(side), "length", fine(run.length()),
          "needed", fine(run.length() - room + Math.max(run.joints(), 0) * joint));
    }
    if (tiles > 0 && tiles * tile + run.jointsOf(tiles) * joint > room + LeastHarm.NEAR) {
      throw refused(place(side), "side.repeat", "side", border.path().sideName(side), "room", fine(room), "repeat",
          fine(tiles * tile + run.jointsOf(tiles) * joint));
    }
  }

  private void depth() throws InputException {
    // The least depth of the band, so that what is refused here cannot be laid with any permitted joint or move.
    double depth = border.before(border.rows().size()) + border.rows().size() * border.joint().min()
        - border.permits().moveOut();
    if (!border.path().holds(depth)) {
      throw refused("/rows", "rows.deep", "depth", fine(depth));
    }
  }

  private static String place(int side) {
    return "/sides/" + side;
  }

  private void positive(String place, double value, boolean zero) throws InputException {
    if (!Double.isFinite(value)) {
      throw refused(place, "number");
    }
    if (value < 0 || !zero && value == 0) {
      throw refused(place, zero ? "number.negative" : "number.positive", "value", fine(value));
    }
  }

  private String fine(double length) {
    return LengthText.fine(length, units);
  }

  private static InputException refused(String place, String key, Object... values) {
    return new InputException(place, TEXTS.text(key, values), TEXTS.text(key + ".remedy", values));
  }
}
