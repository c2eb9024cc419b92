// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.model.MotifDrawing;
import muralbench.model.MotifLine;
import muralbench.model.MotifRegion;
import muralbench.model.Mural;
import muralbench.model.PatternBook;
import muralbench.pattern.motif.DrawnLine;
import muralbench.pattern.motif.Motif;
import muralbench.pattern.motif.Region;
import muralbench.setout.MuralReader;
import muralbench.setout.geometry.PathData;
import muralbench.setout.geometry.PathData.PathDataException;
import org.eclipse.emf.ecore.EObject;

/** Takes motifs from the model, each once. */
public final class MotifReader {
  private static final Messages TEXTS = Messages.of(MotifReader.class);

  private final Map<String, MotifDrawing> drawings = new LinkedHashMap<>();
  private final Map<String, Motif> motifs = new LinkedHashMap<>();

  /** The motifs of a mural; {@code null} is a mural without any. */
  public MotifReader(Mural mural) {
    if (mural != null) {
      mural.getBooks().stream().filter(PatternBook.class::isInstance).map(PatternBook.class::cast)
          .forEach(book -> book.getMotifs().forEach(motif -> drawings.putIfAbsent(motif.getId(), motif)));
    }
  }

  /** The motifs of the mural something belongs to. */
  static MotifReader around(EObject part) {
    return new MotifReader(MuralReader.owner(part).orElse(null));
  }

  /**
   * A motif.
   *
   * @param owner id of what uses it, for messages
   * @throws InputException if there is none of this id, or it cannot be painted
   */
  public Motif motif(String id, String owner) throws InputException {
    MotifDrawing drawing = drawings.get(id);
    if (drawing == null) {
      throw new InputException(owner, TEXTS.text("motif.unknown", "id", id),
          TEXTS.text("motif.unknown.remedy", "known", String.join(", ", drawings.keySet())));
    }
    Motif motif = motifs.get(id);
    if (motif == null) {
      motif = read(drawing);
      motifs.put(id, motif);
    }
    return motif;
  }

  private static Motif read(MotifDrawing drawing) throws InputException {
    List<Region> regions = new ArrayList<>();
    for (MotifRegion region : drawing.getRegions()) {
      String name = named(region.getId(), "region", regions.size() + 1);
      try {
        regions.add(new Region(name, region.getColour(), PathData.parse(region.getData())));
      } catch (PathDataException e) {
        throw path(drawing, name, e);
      }
    }
    List<DrawnLine> lines = new ArrayList<>();
    for (MotifLine line : drawing.getLines()) {
      String name = named(line.getId(), "line", lines.size() + 1);
      try {
        PathData.parseLines(line.getData()).forEach(segments -> lines.add(new DrawnLine(name, segments)));
      } catch (PathDataException e) {
        throw path(drawing, name, e);
      }
    }
    try {
      return Motif.of(drawing.getId(), drawing.getTileWidth(), drawing.getTileHeight(), drawing.getTiles(),
          drawing.getGround(), regions, lines);
    } catch (InputException e) {
      throw new InputException(drawing.getId(), e.problem(), e.remedy(), e);
    }
  }

  private static String named(String id, String kind, int number) {
    return id == null || id.isBlank() ? TEXTS.text("motif." + kind, "number", number) : id;
  }

  private static InputException path(MotifDrawing drawing, String name, PathDataException e) {
    return new InputException(drawing.getId(), TEXTS.text("motif.path", "name", name, "fault", e.getMessage()),
        TEXTS.text("motif.path.remedy"), e);
  }
}
