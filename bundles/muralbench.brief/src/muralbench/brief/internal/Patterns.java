// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import muralbench.base.InputException;
import muralbench.model.BandCorner;
import muralbench.model.BandSide;
import muralbench.model.BandThrough;
import muralbench.model.BorderBand;
import muralbench.model.BorderRow;
import muralbench.model.BorderStep;
import muralbench.model.ColourChange;
import muralbench.model.MotifColourway;
import muralbench.model.MotifDrawing;
import muralbench.model.MotifLine;
import muralbench.model.MotifRegion;
import muralbench.model.MuralFactory;
import muralbench.model.PaintColour;
import muralbench.model.PatternBook;
import muralbench.model.TileKind;

/** Reads colours, motifs and borders. Whether a motif can be painted and a border closes is for others to say. */
final class Patterns {
  private static final MuralFactory MAKE = MuralFactory.eINSTANCE;

  private final PatternBook book = MAKE.createPatternBook();
  private final Lengths lengths;

  Patterns(Lengths lengths) {
    this.lengths = lengths;
  }

  /** The colours and motifs of a brief; its borders may then name them. */
  PatternBook book(Field root) throws InputException {
    for (Field colour : root.at("colours").items()) {
      book.getColours().add(colour(colour));
    }
    for (Field motif : root.at("motifs").items()) {
      book.getMotifs().add(motif(motif));
    }
    return book;
  }

  private PaintColour colour(Field field) throws InputException {
    PaintColour colour = MAKE.createPaintColour();
    colour.setId(fresh(field.at("id"), book.getColours(), PaintColour::getId));
    colour.setTitle(field.at("title").text(null));
    colour.setRgb(field.at("rgb").text(null));
    return colour;
  }

  private MotifDrawing motif(Field field) throws InputException {
    MotifDrawing motif = MAKE.createMotifDrawing();
    motif.setId(fresh(field.at("id"), book.getMotifs(), MotifDrawing::getId));
    motif.setTitle(field.at("title").text(null));
    Field tile = field.at("tile");
    motif.setTileWidth(tile.at(0).number(motif.getTileWidth()));
    motif.setTileHeight(tile.at(1).number(motif.getTileHeight()));
    motif.setTiles((int) field.at("tiles").number(motif.getTiles()));
    motif.setGround(colourOf(field.at("ground")));
    for (Field each : field.at("regions").items()) {
      MotifRegion region = MAKE.createMotifRegion();
      region.setId(each.at("id").text(null));
      region.setColour(colourOf(each.at("colour")));
      region.setData(path(each.at("path")));
      motif.getRegions().add(region);
    }
    for (Field each : field.at("lines").items()) {
      MotifLine line = MAKE.createMotifLine();
      line.setId(each.at("id").text(null));
      line.setData(path(each.at("path")));
      motif.getLines().add(line);
    }
    for (Field each : field.at("colourways").named()) {
      motif.getColourways().add(colourway(each));
    }
    return motif;
  }

  private static String path(Field field) throws InputException {
    return PathScale.scale(field.text(""), BigDecimal.ONE, field.pointer());
  }

  private MotifColourway colourway(Field field) throws InputException {
    MotifColourway colourway = MAKE.createMotifColourway();
    colourway.setId(field.name());
    for (Field each : field.named()) {
      ColourChange change = MAKE.createColourChange();
      change.setFrom(known(each, each.name(), "colour", book.getColours(), PaintColour::getId));
      change.setTo(colourOf(each));
      colourway.getChanges().add(change);
    }
    return colourway;
  }

  /** A border of a panel with a joint, mm. */
  BorderBand border(Field field, List<TileKind> tiles) throws InputException {
    BorderBand band = MAKE.createBorderBand();
    band.setId(field.at("id").text("border"));
    field.at("sides").items().forEach(side -> band.getSides().add(BandSide.get(side.text(null))));
    for (Field row : field.at("rows").items()) {
      band.getRows().add(row(row, tiles));
    }
    Field corner = field.at("corner");
    band.setCorner(BandCorner.get(corner.at("kind").text(band.getCorner().getLiteral())));
    band.setCornerMotif(motifOf(corner.at("motif")));
    band.setInnerCornerMotif(motifOf(corner.at("innerMotif")));
    band.setThrough(BandThrough.get(corner.at("through").text(band.getThrough().getLiteral())));
    Field joint = field.at("joint");
    if (joint.isGiven()) {
      band.setJointLeast(lengths.gap(joint.at(0)));
      band.setJointMost(lengths.gap(joint.at(1)));
    }
    allow(band, field.at("allow"));
    band.setChoice((int) field.at("choice").number(band.getChoice()));
    return band;
  }

  private void allow(BorderBand band, Field field) throws InputException {
    band.setMoveIn(lengths.gap(field.at("moveIn")));
    band.setMoveOut(lengths.gap(field.at("moveOut")));
    band.setScale(field.at("scale").number(0));
    Field centre = field.at("centre");
    if (centre.isGiven()) {
      band.setCentreLeast(lengths.size(centre.at(0)));
      band.setCentreMost(lengths.size(centre.at(1)));
    }
    band.setCentreMotif(motifOf(field.at("centreMotif")));
    band.setEndShare(field.at("ends").number(0));
  }

  private BorderRow row(Field field, List<TileKind> tiles) throws InputException {
    BorderRow row = MAKE.createBorderRow();
    String tile = known(field.at("tile"), field.at("tile").text(""), "tile", tiles, TileKind::getId);
    row.setTileKind(tiles.stream().filter(each -> each.getId().equals(tile)).findFirst().orElseThrow());
    boolean plain = field.at("plain").isGiven();
    List<Field> motifs = field.at("motifs").items();
    if (plain == !motifs.isEmpty()) {
      throw BriefProblem.at(field.pointer(), "borderRow");
    }
    for (Field each : motifs) {
      row.getSteps().add(step(each));
    }
    Field symmetry = field.at("symmetry");
    if (symmetry.isGiven() && motifs.size() != 1) {
      throw BriefProblem.at(symmetry.pointer(), "symmetry");
    }
    row.setSymmetry(symmetry.text(null));
    row.setGround(plain ? colourOf(field.at("plain")) : null);
    Field corner = field.at("cornerSize");
    row.setCornerSize(corner.isGiven() ? lengths.size(corner) : 0);
    return row;
  }

  private BorderStep step(Field field) throws InputException {
    String[] words = field.text("").split("/", 2);
    BorderStep step = MAKE.createBorderStep();
    step.setMotif(known(field, words[0], "motif", book.getMotifs(), MotifDrawing::getId));
    if (words.length > 1) {
      MotifDrawing motif =
          book.getMotifs().stream().filter(each -> each.getId().equals(words[0])).findFirst().orElseThrow();
      step.setColourway(known(field, words[1], "colourway", motif.getColourways(), MotifColourway::getId));
    }
    return step;
  }

  private String colourOf(Field field) throws InputException {
    return known(field, field.text(""), "colour", book.getColours(), PaintColour::getId);
  }

  private String motifOf(Field field) throws InputException {
    return field.isGiven() ? known(field, field.text(""), "motif", book.getMotifs(), MotifDrawing::getId) : null;
  }

  /** An id that one of {@code all} has. */
  private static <T> String known(Field field, String id, String kind, List<T> all, Function<T, String> name)
      throws InputException {
    if (all.stream().map(name).noneMatch(id::equals)) {
      String known = String.join(", ", all.stream().map(name).toList());
      throw BriefProblem.at(field.pointer(), known.isEmpty() ? kind + ".none" : kind, "id", id, "known", known);
    }
    return id;
  }

  /** An id that none of {@code all} has. */
  private static <T> String fresh(Field field, List<T> all, Function<T, String> name) throws InputException {
    String id = field.text("");
    if (all.stream().map(name).anyMatch(id::equals)) {
      throw BriefProblem.at(field.pointer(), "patternTwice", "id", id);
    }
    return id;
  }
}
