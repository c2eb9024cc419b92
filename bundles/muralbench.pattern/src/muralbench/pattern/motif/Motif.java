// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import muralbench.base.InputException;
import muralbench.pattern.symmetry.Isometry;
import muralbench.pattern.symmetry.Patch;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Segment;

/**
 * A drawing on one tile or on a strip of tiles side by side. It lies in the box from (0, 0) to (width, height), in
 * units of its own or in millimetres; where no region is, the ground shows. Immutable; what it looks like is computed
 * once.
 */
public final class Motif {
  private final String name;
  private final double width;
  private final double height;
  private final int tiles;
  private final String ground;
  private final List<Region> regions;
  private final List<DrawnLine> lines;
  /** What it looks like, worked out when first asked for; two threads would find the same. */
  private volatile Look look;
  /** The tiles of a strip, cut when first asked for. */
  private volatile List<Motif> parts;

  Motif(String name, double width, double height, int tiles, String ground, List<Region> regions,
      List<DrawnLine> lines) {
    this.name = name;
    this.width = width;
    this.height = height;
    this.tiles = tiles;
    this.ground = ground;
    this.regions = List.copyOf(regions);
    this.lines = List.copyOf(lines);
  }

  private record Look(List<Boundary> boundaries, Map<Edge, EdgeProfile> profiles, Map<String, Double> shares,
      Picture picture) {
    boolean shows(String colour) {
      return boundaries.stream().anyMatch(each -> each.left().equals(colour) || each.right().equals(colour))
          || profiles.values().stream().flatMap(each -> each.stretches().stream())
              .anyMatch(each -> each.colour().equals(colour));
    }
  }

  private Look look() {
    Look found = look;
    if (found == null) {
      Boundaries all = new Boundaries(width, height, Math.max(width / tiles, height), ground, regions, lines);
      Look seen = new Look(all.within(), all.profiles(), Map.of(), null);
      Map<String, Double> shares = shares(seen.shows(ground));
      found = new Look(seen.boundaries, seen.profiles, shares, Picture.of(width, height, shares, seen.boundaries));
      look = found;
    }
    return found;
  }

  /**
   * A motif, checked.
   *
   * @param name name for people, not empty
   * @param tileWidth width of one tile in units of the drawing, above 0
   * @param tileHeight height of a tile
   * @param tiles how many tiles side by side, at least 1
   * @param ground name of the colour where no region is, not empty
   * @param regions the filled areas; they keep within the strip and do not overlap
   * @param lines wax lines within a colour; they keep within the strip
   * @throws InputException if a region or line leaves the strip, regions overlap, or a contour crosses itself
   */
  public static Motif of(String name, double tileWidth, double tileHeight, int tiles, String ground,
      List<Region> regions, List<DrawnLine> lines) throws InputException {
    MotifChecks checks = new MotifChecks(name, tileWidth * tiles, tileHeight,
        Math.max(tileWidth, tileHeight));
    checks.size(tileWidth, tileHeight, tiles);
    checks.ground(ground);
    List<Region> usual = new ArrayList<>();
    for (Region region : regions) {
      usual.add(checks.region(region));
    }
    for (DrawnLine line : lines) {
      checks.line(line);
    }
    checks.overlaps();
    return new Motif(name, tileWidth * tiles, tileHeight, tiles, ground, usual, lines);
  }

  /** A square tile of one colour. */
  public static Motif plain(String name, String colour) {
    return new Motif(name, 1, 1, 1, colour, List.of(), List.of());
  }

  /** Name for people. */
  public String name() {
    return name;
  }

  /** Width of the whole strip, units of the drawing. */
  public double width() {
    return width;
  }

  /** Height, units of the drawing. */
  public double height() {
    return height;
  }

  /** How many tiles side by side. */
  public int tiles() {
    return tiles;
  }

  /** The colour where no region is. */
  public String ground() {
    return ground;
  }

  /** The filled areas. */
  public List<Region> regions() {
    return regions;
  }

  /** The wax lines within a colour. */
  public List<DrawnLine> lines() {
    return lines;
  }

  /** The whole drawing as patches of a pattern, the ground left out, after a movement. */
  public List<Patch> patches(Isometry movement) {
    return regions.stream().map(region -> region.patch(movement)).toList();
  }

  /** Each colour that shows with its share of the area, from 0 to 1; together 1. */
  public Map<String, Double> shares() {
    return look().shares;
  }

  private Map<String, Double> shares(boolean groundShows) {
    Map<String, Double> shares = new TreeMap<>();
    double painted = regions.stream().mapToDouble(Region::area).sum();
    // Slivers that rounding leaves between regions are no ground.
    double whole = groundShows ? width * height : painted;
    for (Region region : regions) {
      shares.merge(region.colour(), region.area() / whole, Double::sum);
    }
    if (groundShows) {
      shares.merge(ground, 1 - painted / whole, Double::sum);
    }
    return Collections.unmodifiableMap(shares);
  }

  /**
   * Every line that takes wax: each boundary between two colours once, however many regions share it, and the lines
   * drawn within a colour. The sides of the tile take none.
   */
  public List<Segment> waxLines() {
    return look().boundaries.stream().map(Boundary::segment).toList();
  }

  /** Length of all wax lines together, units of the drawing. */
  public double waxLength() {
    return waxLines().stream().mapToDouble(Segment::length).sum();
  }

  /** The orientations that leave the drawing as it is, colours included: a subgroup of the eight. */
  public Set<Orientation> symmetries() {
    Set<Orientation> kept = EnumSet.noneOf(Orientation.class);
    Picture picture = picture();
    Stream.of(Orientation.values()).filter(each -> picture.same(picture.in(each))).forEach(kept::add);
    return kept;
  }

  /** How many of the four quarter turns leave the drawing as it is: 1, 2 or 4. */
  public int rotationalOrder() {
    return (int) symmetries().stream().filter(each -> !each.mirrored()).count();
  }

  /** Whether the motif needs no second hand: some turn makes it its own mirror image. */
  public boolean ownMirror() {
    return symmetries().stream().anyMatch(Orientation::mirrored);
  }

  /** The colours along a side of the drawing when it has an orientation. */
  public EdgeProfile edge(Edge edge, Orientation orientation) {
    Edge.Met met = edge.of(orientation);
    EdgeProfile profile = look().profiles.get(met.edge());
    return met.backwards() ? profile.backwards() : profile;
  }

  /** Whether the drawing goes on across a side into a neighbour. */
  public boolean joins(Orientation orientation, Edge edge, Motif neighbour, Orientation its) {
    return edge(edge, orientation).meets(neighbour.edge(edge.opposite(), its));
  }

  /** The orientations of a second copy that goes on where a side of the drawing, as drawn, ends. */
  public Set<Orientation> joins(Edge edge) {
    Set<Orientation> fitting = EnumSet.noneOf(Orientation.class);
    Stream.of(Orientation.values()).filter(each -> joins(Orientation.AS_DRAWN, edge, this, each))
        .forEach(fitting::add);
    return fitting;
  }

  /** The same drawing in other colours; two colours that become one lose the wax line between them. */
  public Motif in(Colourway colourway) {
    if (colourway.colours().isEmpty()) {
      return this;
    }
    List<Region> coloured = regions.stream().map(each -> each.coloured(colourway.of(each.colour()))).toList();
    return new Motif(name, width, height, tiles, colourway.of(ground), coloured, lines);
  }

  /** The same drawing in another orientation; a strip that comes to stand is taken for one tile. */
  public Motif in(Orientation orientation) {
    if (orientation == Orientation.AS_DRAWN) {
      return this;
    }
    Isometry movement = orientation.in(width, height);
    boolean swaps = orientation.swapsSides();
    return new Motif(name, swaps ? height : width, swaps ? width : height, swaps ? 1 : tiles, ground,
        regions.stream().map(region -> region.moved(movement)).toList(),
        lines.stream().map(line -> line.moved(movement)).toList());
  }

  /** What is on one tile of the strip, from 0 at the left: a motif of one tile, always the same object. */
  public Motif tile(int index) {
    if (tiles == 1) {
      return this;
    }
    if (parts == null) {
      List<Motif> cut = new ArrayList<>();
      for (int i = 0; i < tiles; i++) {
        cut.add(window(width / tiles * i, 0, width / tiles, height));
      }
      parts = List.copyOf(cut);
    }
    return parts.get(index);
  }

  /** The part of the drawing in an upright rectangle, as a motif of one tile. */
  public Motif window(double x, double y, double windowWidth, double windowHeight) {
    Window window = new Window(x, y, windowWidth, windowHeight);
    List<Region> seen = new ArrayList<>();
    for (Region region : regions) {
      List<Contour> contours = window.cut(region.contours());
      if (!contours.isEmpty()) {
        seen.add(new Region(region.name(), region.colour(), contours));
      }
    }
    List<DrawnLine> seenLines = new ArrayList<>();
    for (DrawnLine line : lines) {
      window.cutLine(line.segments()).forEach(stretch -> seenLines.add(new DrawnLine(line.name(), stretch)));
    }
    return new Motif(name, windowWidth, windowHeight, 1, ground, seen, seenLines);
  }

  Picture picture() {
    return look().picture;
  }

  @Override
  public String toString() {
    return name;
  }
}
