// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.export.internal.PlainNumber;
import muralbench.setout.PanelSetOut;
import muralbench.setout.board.BoardPlan;
import muralbench.setout.board.PanelMass;
import muralbench.setout.geometry.Vec;

/** What a sheet of a panel that can be taken down says of its board. */
final class BoardNotes {
  private final Messages texts;
  private final LengthUnit units;

  BoardNotes(Messages texts, LengthUnit units) {
    this.texts = texts;
    this.units = units;
  }

  /** The notes; none for a panel that is fixed. */
  List<String> of(PanelSetOut panel) {
    List<String> notes = new ArrayList<>();
    if (panel.spec().mounting().equals("removable")) {
      BoardPlan plan = BoardPlan.of(panel);
      notes.add(board(plan));
      notes.add(hanging(plan));
      notes.add(texts.text("note.edge." + plan.spec().edge()));
    }
    return notes;
  }

  private String board(BoardPlan plan) {
    double reveal = plan.spec().reveal();
    String stands = texts.text(reveal == 0 ? "reveal.flush" : reveal > 0 ? "reveal.out" : "reveal.behind", "reveal",
        LengthText.fine(Math.abs(reveal), units));
    String size = texts.text("note.board", "width", shown(plan.width()), "height", shown(plan.height()), "reveal", stands);
    return size + ' ' + plan.mass().map(this::mass).orElseGet(() -> texts.text("note.board.unknown"));
  }

  private String mass(PanelMass mass) {
    return texts.text("note.board.mass", "mass", tenths(mass.total()), "pounds", tenths(mass.total() / PanelMass.POUND),
        "tile", tenths(mass.tile()), "adhesive", tenths(mass.adhesive()), "board", tenths(mass.board()));
  }

  private String hanging(BoardPlan plan) {
    if (plan.points().isEmpty()) {
      return texts.text("note.hanging.none");
    }
    String places = plan.points().stream().map(Vec::x).map(this::shown).collect(Collectors.joining(", "));
    String load = plan.load().map(each -> texts.text("note.hanging.load", "load", tenths(each), "pounds",
        tenths(each / PanelMass.POUND))).orElse("");
    return texts.text("note.hanging", "count", plan.points().size(), "height", shown(plan.points().get(0).y()), "places",
        places, "load", load);
  }

  private static String tenths(double value) {
    return PlainNumber.rounded(value, 1);
  }

  private String shown(double length) {
    return LengthText.shown(length, units);
  }
}
