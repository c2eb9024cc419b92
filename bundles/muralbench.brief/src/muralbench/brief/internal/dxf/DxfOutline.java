// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.dxf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;

/**
 * The one closed line of a DXF drawing or of one of its layers. Lines, arcs, circles and polylines are joined where
 * their ends meet; texts, dimensions and other notes are passed over, and everything else is refused.
 */
public final class DxfOutline {
  /** What never is part of an outline. */
  private static final Set<String> NOTES = Set.of("TEXT", "MTEXT", "ATTDEF", "POINT", "DIMENSION", "ARC_DIMENSION",
      "LARGE_RADIAL_DIMENSION", "LEADER", "MULTILEADER", "MLEADER", "TOLERANCE", "HATCH", "VIEWPORT", "IMAGE",
      "WIPEOUT", "XLINE", "RAY");

  private final Drawing drawing;
  private final LengthUnit units;
  private final DxfProblem problem;

  private DxfOutline(Drawing drawing, LengthUnit units, DxfProblem problem) {
    this.drawing = drawing;
    this.units = units;
    this.problem = problem;
  }

  /**
   * The outline as path data in millimetres, y up.
   *
   * @param file content of an ASCII DXF file
   * @param layer the layer it is drawn on, in any case of letters; null for all layers
   * @param units of the brief: what a drawing without units is in, and of places in errors
   * @param place JSON pointer of the field that names the drawing, for errors
   * @param name of the file, for errors
   */
  public static String path(byte[] file, String layer, LengthUnit units, String place, String name)
      throws InputException {
    DxfProblem problem = new DxfProblem(place, name);
    return new DxfOutline(Drawing.read(file, problem), units, problem).path(layer);
  }

  private String path(String layer) throws InputException {
    List<Entity> entities = onLayer(layer);
    refuseForeign(entities);
    Shapes shapes = new Shapes(Units.millimetres(drawing.units(), units.millimetres(), problem), problem);
    List<Strand> strands = new ArrayList<>();
    for (Entity entity : entities) {
      shapes.strand(entity).ifPresent(strands::add);
    }
    List<Strand> closed = Chains.closed(strands, units, problem);
    if (closed.isEmpty()) {
      throw problem.of("nothing");
    }
    if (closed.size() > 1) {
      throw problem.of(layer == null ? "several" : "several.layer", "count", closed.size(), "layers",
          layers(entities));
    }
    return EdgePath.of(closed.get(0));
  }

  private List<Entity> onLayer(String layer) throws InputException {
    List<Entity> drawn =
        drawing.entities().stream().filter(entity -> !NOTES.contains(entity.type())).toList();
    if (layer == null) {
      return drawn;
    }
    List<Entity> found = drawn.stream().filter(entity -> folded(entity.layer()).equals(folded(layer))).toList();
    if (found.isEmpty() && !drawn.isEmpty()) {
      throw problem.of("layer", "layer", layer, "layers", layers(drawn));
    }
    return found;
  }

  private void refuseForeign(List<Entity> entities) throws InputException {
    Map<String, Long> foreign = entities.stream().map(Entity::type).filter(type -> !Shapes.KNOWN.contains(type))
        .collect(Collectors.groupingBy(type -> type, TreeMap::new, Collectors.counting()));
    if (!foreign.isEmpty()) {
      throw problem.of("foreign", "list", foreign.entrySet().stream()
          .map(type -> type.getValue() + " " + type.getKey()).collect(Collectors.joining(", ")));
    }
  }

  /** Layers are the same whatever the case of their letters. */
  private static String folded(String layer) {
    return layer.strip().toUpperCase(Locale.ROOT);
  }

  /** Up to twenty names. */
  private static String layers(List<Entity> entities) {
    Set<String> names = entities.stream().map(Entity::layer).collect(Collectors.toCollection(TreeSet::new));
    return names.stream().limit(20).collect(Collectors.joining(", ")) + (names.size() > 20 ? ", …" : "");
  }
}
