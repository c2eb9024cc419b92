// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.setout.OpeningSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.Piece;
import muralbench.setout.TileSpec;
import muralbench.setout.geometry.Box;
import muralbench.setout.joint.JointRules;
import muralbench.setout.movement.MovementAxis;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.survey.OutOfTrue;

/** What a sheet of a panel says in words. No text repeats a key: every key stands once, on its piece. */
final class PanelNotes {
  private final Messages texts;
  private final LengthUnit units;

  PanelNotes(Messages texts, LengthUnit units) {
    this.texts = texts;
    this.units = units;
  }

  /** The notes of the sheet that shows {@code window}; {@code firstTile} is the number of the sheet to start on. */
  List<String> of(PanelFacts facts, Box window, int firstTile) {
    List<String> notes = new ArrayList<>();
    notes.add(counts(facts.panel()));
    notes.add(keys(facts));
    notes.add(first(facts.first().piece(), firstTile));
    notes.add(datum(facts));
    notes.add(dimensions(facts));
    notes.add(lippage(facts.panel().spec()));
    movement(facts).ifPresent(notes::add);
    survey(facts.panel()).ifPresent(notes::add);
    notes.addAll(new BoardNotes(texts, units).of(facts.panel()));
    notes.addAll(openings(facts, window));
    return notes;
  }

  /** The notes of a sheet after the panel's first, whose number is {@code full}; that one says the rest. */
  List<String> further(PanelFacts facts, Box window, int firstTile, int full) {
    List<String> notes = new ArrayList<>();
    notes.add(texts.text("note.further", "sheet", full));
    notes.add(first(facts.first().piece(), firstTile));
    notes.add(datum(facts));
    notes.addAll(openings(facts, window));
    return notes;
  }

  private List<String> openings(PanelFacts facts, Box window) {
    return facts.panel().spec().openings().stream().filter(opening -> opening.outline().box().meets(window))
        .map(opening -> opening(facts, opening)).toList();
  }

  private String counts(PanelSetOut panel) {
    TileSpec tile = panel.spec().tile();
    long again = panel.pieces().stream().filter(piece -> !piece.uncut()).count();
    String key = !panel.concentric() ? "note.counts" : again == 0 ? "note.counts.rings" : "note.counts.rings.cut";
    return texts.text(key, "again", again, "courses", panel.courses(), "pieces", panel.pieces().size(), "whole",
        panel.whole(), "cut", panel.cut(), "tile", tile.id(), "width", shown(tile.width()), "height",
        shown(tile.height()), "joint", shown(panel.spec().joint()));
  }

  private String keys(PanelFacts facts) {
    String key = facts.panel().concentric() ? "note.keys.rings" : "note.keys";
    return texts.text(facts.floor() ? key + ".floor" : key);
  }

  private String first(Piece first, int sheet) {
    return texts.text(first.uncut() ? "note.first" : "note.first.cut", "course", first.course(),
        "position", first.position(), "sheet", sheet);
  }

  private String datum(PanelFacts facts) {
    Box box = facts.box();
    double x = facts.first().datum().x();
    double y = facts.first().datum().y();
    return texts.text(facts.floor() ? "note.datum.floor" : "note.datum", "height", shown(y),
        "left", shown(x - box.minX()), "up", shown(y - box.minY()),
        "corner", corner(facts));
  }

  private String corner(PanelFacts facts) {
    return texts.text(facts.panel().concentric() ? "corner.middle"
        : facts.straight() ? "corner.straight" : "corner.turned");
  }

  private String dimensions(PanelFacts facts) {
    String unit = texts.text(units == LengthUnit.INCH ? "unit.inch" : "unit.millimetre");
    String key = facts.panel().concentric() ? "note.dimensions.rings"
        : facts.straight() ? "note.dimensions" : "note.dimensions.turned";
    return texts.text(key, "unit", unit, "from",
        texts.text(facts.floor() ? "from.corner" : "from.datum"), "course", facts.first().piece().course());
  }

  private String lippage(PanelSpec panel) {
    JointRules rules = JointRules.of(panel);
    return texts.text(rules.warpageKnown() ? "note.lippage" : "note.lippage.unknown", "least",
        fine(rules.least()), "most",
        fine(rules.lippage(panel.joint())), "flat", fine(JointRules.lippageOfFlatTile(panel.joint())));
  }

  private Optional<String> movement(PanelFacts facts) {
    String list = facts.panel().movement().stream().map(joint -> movement(facts, joint))
        .collect(Collectors.joining("; "));
    return list.isEmpty() ? Optional.empty() : Optional.of(texts.text("note.movement", "list", list));
  }

  private String movement(PanelFacts facts, MovementJoint joint) {
    boolean vertical = joint.axis() == MovementAxis.VERTICAL;
    double from = joint.at() - (vertical ? facts.zero().x() : facts.zero().y());
    String way = vertical ? from < 0 ? "left" : "right" : from < 0 ? "below" : "above";
    String key = "note.movement." + way + (facts.floor() ? ".floor" : "");
    return texts.text(key, "width", shown(joint.width()), "distance", shown(Math.abs(from)));
  }

  private Optional<String> survey(PanelSetOut panel) {
    return panel.spec().survey().map(wall -> OutOfTrue.of(wall, onFloor(panel), units)).filter(all -> !all.isEmpty())
        .map(all -> texts.text("note.survey", "list", OutOfTrue.words(all, units)));
  }

  private String opening(PanelFacts facts, OpeningSpec opening) {
    Box box = opening.outline().box();
    return texts.text(facts.floor() ? "note.opening.floor" : "note.opening", "id", opening.id(), "kind",
        opening.kind(), "width", shown(box.width()), "height", shown(box.height()), "floor", shown(box.minY()),
        "left", shown(box.minX() - facts.zero().x()), "up", shown(box.minY() - facts.zero().y()));
  }

  private static boolean onFloor(PanelSetOut panel) {
    return panel.spec().surface().equals("floor");
  }

  private String fine(double length) {
    return LengthText.fine(length, units);
  }

  private String shown(double length) {
    return LengthText.shown(length, units);
  }
}
