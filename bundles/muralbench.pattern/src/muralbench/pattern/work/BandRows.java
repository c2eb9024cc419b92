// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.model.BorderBand;
import muralbench.model.BorderRow;
import muralbench.model.BorderStep;
import muralbench.pattern.border.BandRow;
import muralbench.pattern.border.RowMotifs;
import muralbench.pattern.border.Sequence;
import muralbench.pattern.motif.Motif;
import muralbench.pattern.motif.Orientation;
import muralbench.pattern.symmetry.FriezeGroup;
import muralbench.setout.PanelSpec;

/** The rows of a border: sizes and motifs. */
final class BandRows {
  private static final Messages TEXTS = Messages.of(BandRows.class);
  /** A drawing may be this much longer or shorter than its tile, as a share: no more than is lost in a joint. */
  private static final double SHAPE = 0.01;

  private final BorderBand band;
  private final PanelSpec panel;
  private final MotifReader motifs;
  private final LengthUnit units;

  BandRows(BorderBand band, PanelSpec panel, MotifReader motifs, LengthUnit units) {
    this.band = band;
    this.panel = panel;
    this.motifs = motifs;
    this.units = units;
  }

  /** The sizes of the rows, from the outer edge inwards. */
  List<BandRow> sizes() throws InputException {
    List<BandRow> rows = new ArrayList<>();
    for (BorderRow row : band.getRows()) {
      if (row.getTileKind() == null) {
        throw refused("row.tile");
      }
      double length = row.getTileKind().getWidth();
      double width = row.getTileKind().getHeight();
      double corner = row.getCornerSize() > 0 ? row.getCornerSize() : width;
      boolean plain = row.getSteps().isEmpty();
      rows.add(new BandRow(length, width, corner, plain ? 1 : sequence(row).repeat(), plain));
    }
    if (rows.isEmpty()) {
      throw refused("rows.none");
    }
    return rows;
  }

  /** What is painted on the rows; names as {@link Steps} makes them. */
  List<RowMotifs> painted() throws InputException {
    List<RowMotifs> painted = new ArrayList<>();
    String corner = piece(band.getCornerMotif());
    String inner = band.getInnerCornerMotif() == null ? corner : piece(band.getInnerCornerMotif());
    for (BorderRow row : band.getRows()) {
      if (row.getSteps().isEmpty()) {
        String plain = Steps.name(row.getGround(), null, 0);
        painted.add(new RowMotifs(Sequence.free(List.of(plain)), plain, plain, plain));
      } else {
        painted.add(new RowMotifs(sequence(row), corner, inner, piece(band.getCentreMotif())));
      }
    }
    return painted;
  }

  private String piece(String motif) throws InputException {
    if (motif != null && motifs.motif(motif, panel.id()).tiles() > 1) {
      throw refused("piece.strip", "motif", motif);
    }
    return Steps.name(motif, null, 0);
  }

  private Sequence sequence(BorderRow row) throws InputException {
    List<String> names = new ArrayList<>();
    for (BorderStep step : row.getSteps()) {
      Motif motif = motifs.motif(step.getMotif(), panel.id());
      checkShape(motif, row);
      names.addAll(Steps.strip(step.getMotif(), step.getColourway(), motif.tiles()));
    }
    Optional<FriezeGroup> group = group(row);
    if (group.isEmpty()) {
      return Sequence.free(names);
    }
    Motif motif = motifs.motif(row.getSteps().get(0).getMotif(), panel.id());
    if (names.size() > 1) {
      throw refused("symmetry.strip", "motif", motif.name());
    }
    if (Sequence.needsMirroredMotif(group.get()) && !motif.symmetries().contains(Orientation.MIRRORED_HALF_TURN)) {
      throw refused("symmetry.mirror", "motif", motif.name(), "group", group.get().label());
    }
    return Sequence.of(group.get(), names.get(0));
  }

  private Optional<FriezeGroup> group(BorderRow row) throws InputException {
    if (row.getSymmetry() == null || row.getSymmetry().isBlank()) {
      return Optional.empty();
    }
    Optional<FriezeGroup> group = FriezeGroup.ofOrbifold(row.getSymmetry());
    if (group.isEmpty()) {
      throw refused("symmetry.unknown", "symbol", row.getSymmetry());
    }
    return group;
  }

  private void checkShape(Motif motif, BorderRow row) throws InputException {
    double drawn = motif.width() / motif.tiles() / motif.height();
    double tile = row.getTileKind().getWidth() / row.getTileKind().getHeight();
    if (Math.abs(drawn / tile - 1) > SHAPE) {
      throw refused("motif.shape", "motif", motif.name(), "tile", row.getTileKind().getId(), "length",
          LengthText.shown(row.getTileKind().getWidth(), units), "width",
          LengthText.shown(row.getTileKind().getHeight(), units));
    }
  }

  private InputException refused(String key, Object... values) {
    return new InputException(panel.id(), TEXTS.text(key, values), TEXTS.text(key + ".remedy", values));
  }
}
