// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.pattern.symmetry.Cell;
import muralbench.pattern.symmetry.FriezeGroup;
import muralbench.pattern.symmetry.Isometry;
import muralbench.pattern.symmetry.Lattice;
import muralbench.pattern.symmetry.WallpaperGroup;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Segment;

/**
 * Draws one repeat of a band or of a pattern from a part of it: the part is copied by the operations of a group, and
 * what falls into the repeat is kept. A region that lies on a mirror or a point of turning and is its own copy counts
 * once.
 */
public final class RepeatDrawing {
  private RepeatDrawing() {}

  /**
   * One repeat of a band.
   *
   * @param group the group
   * @param part the drawing of a part, on the strip that one repeat takes; its middle line is that of the band
   * @return the repeat, on as many tiles
   * @throws InputException if copies of the part overlap, naming the regions
   */
  public static Motif band(FriezeGroup group, Motif part) throws InputException {
    List<Isometry> placements = new ArrayList<>();
    for (Isometry placed : group.placements(part.width(), part.height() / 2, 3)) {
      placements.add(placed.then(Isometry.shift(-part.width(), 0)));
    }
    return repeat(part, placements, group.standardSymbol());
  }

  /**
   * One repeat of a pattern.
   *
   * @param group a group of an upright lattice; hexagonal ones have no upright repeat of their own
   * @param part the drawing of a part, on the conventional cell
   * @return the cell, on as many tiles
   * @throws InputException if the cell is none of the group's, or copies of the part overlap
   */
  public static Motif cell(WallpaperGroup group, Motif part) throws InputException {
    Cell cell = Cell.upright(part.width(), part.height());
    if (group.lattice() == Lattice.HEXAGONAL || !group.lattice().admits(cell)) {
      throw error(part.name(), "repeat.cell", group.standardSymbol());
    }
    List<Isometry> placements = new ArrayList<>();
    for (Isometry placed : group.placements(cell, 3, 3)) {
      placements.add(placed.then(Isometry.shift(-part.width(), -part.height())));
    }
    return repeat(part, placements, group.standardSymbol());
  }

  private static Motif repeat(Motif part, List<Isometry> placements, String symbol) throws InputException {
    Window window = new Window(0, 0, part.width(), part.height());
    List<Region> regions = new ArrayList<>();
    List<DrawnLine> lines = new ArrayList<>();
    for (Region region : part.regions()) {
      List<Picture> seen = new ArrayList<>();
      for (Isometry placed : placements) {
        Region copy = copy(region, placed, window);
        if (copy != null && isNew(part, List.of(copy), List.of(), seen)) {
          regions.add(copy);
        }
      }
    }
    for (DrawnLine line : part.lines()) {
      List<Picture> seen = new ArrayList<>();
      for (Isometry placed : placements) {
        for (List<Segment> stretch : window.cutLine(line.moved(placed).segments())) {
          DrawnLine copy = new DrawnLine(line.name(), stretch);
          if (isNew(part, List.of(), List.of(copy), seen)) {
            lines.add(copy);
          }
        }
      }
    }
    return checked(part, regions, lines, symbol);
  }

  private static Region copy(Region region, Isometry placed, Window window) {
    List<Contour> contours = window.cut(region.moved(placed).contours());
    return contours.isEmpty() ? null : new Region(region.name(), region.colour(), contours);
  }

  /** Whether a copy looks like none before; if so it is added to those seen. */
  private static boolean isNew(Motif part, List<Region> region, List<DrawnLine> line, List<Picture> seen) {
    Picture picture = new Motif("", part.width(), part.height(), 1, " ", region, line).picture();
    if (seen.stream().anyMatch(picture::same)) {
      return false;
    }
    seen.add(picture);
    return true;
  }

  private static Motif checked(Motif part, List<Region> regions, List<DrawnLine> lines, String symbol)
      throws InputException {
    try {
      return Motif.of(part.name(), part.width() / part.tiles(), part.height(), part.tiles(), part.ground(), regions,
          lines);
    } catch (InputException e) {
      Messages messages = Messages.of(Motif.class);
      throw new InputException(part.name(), e.problem(), messages.text("repeat.overlap.remedy", "group", symbol), e);
    }
  }

  private static InputException error(String place, String key, String symbol) {
    Messages messages = Messages.of(Motif.class);
    return new InputException(place, messages.text(key, "group", symbol),
        messages.text(key + ".remedy", "group", symbol));
  }
}
