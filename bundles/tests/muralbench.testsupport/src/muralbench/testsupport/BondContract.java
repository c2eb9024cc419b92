// SPDX-License-Identifier: EPL-2.0
package muralbench.testsupport;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import muralbench.base.InputException;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.Bond;
import muralbench.setout.bond.BondRequest;
import muralbench.setout.bond.Cell;
import muralbench.setout.bond.Pattern;
import muralbench.setout.bond.Pattern.Axis;
import muralbench.setout.bond.Pattern.Run;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * What every bond promises; see {@link Bond} and {@link Pattern}. A test class of a bond extends this one and names the
 * bond; each promise is then tried with every request. Faces are taken as polygons, which holds for all tiles cut from
 * rectangles.
 */
public abstract class BondContract {
  private static final double TINY = 1e-6;
  private static final double CHORD_ERROR = 0.01;
  /** Not a multiple of any module, and away from (0, 0) on no side: negative cells are met too. */
  private static final Box WINDOW = new Box(-737.3, -911.7, 1013.9, 823.1);

  /** The bonds to be tried. */
  protected abstract Stream<Bond> bonds();

  /** What the bonds are asked to lay; other tests may need others. */
  protected Stream<BondRequest> requests() {
    TileSpec square = new TileSpec("T6", 152.4, 152.4, 9.5, 0.8, 0.3);
    TileSpec brick = new TileSpec("B", 200, 100, 8, 0, -1);
    TileSpec weave = new TileSpec("W", 302, 100, 8, 0, -1);
    return Stream.of(new BondRequest(square, 3.175, 0, Map.of()), new BondRequest(square, 3.175, 1.0 / 3, Map.of()),
        new BondRequest(brick, 2, 0.5, Map.of()), new BondRequest(brick, 0, 0.25, Map.of()),
        new BondRequest(weave, 1, 0.5, Map.of()),
        new BondRequest(brick, 2, 1.0 / 3, Map.of("courses", "vertical")),
        new BondRequest(square, 3.175, 0, Map.of("radius", "762", "rings", "146, 146, 146")),
        new BondRequest(square, 3.175, 0, Map.of("cells", "0 0 1 1; 1 0 2 1", "repeat", "3 0; 1 1")));
  }

  @FunctionalInterface
  private interface Promise {
    void holds(BondRequest request, Pattern pattern);
  }

  private Stream<DynamicTest> each(Promise promise) {
    return bonds().flatMap(bond -> requests().filter(request -> lays(bond, request))
        .map(request -> dynamicTest(bond.kind() + ' ' + name(request),
            () -> promise.holds(request, bond.lay(request)))));
  }

  /** As {@link #each}, for patterns that fill the plane in level courses. */
  private Stream<DynamicTest> eachLevel(Promise promise) {
    return each((request, pattern) -> {
      if (!pattern.concentric()) {
        promise.holds(request, pattern);
      }
    });
  }

  private static boolean lays(Bond bond, BondRequest request) {
    try {
      return bond.lay(request) != null;
    } catch (InputException refused) {
      return false;
    }
  }

  @TestFactory
  Stream<DynamicTest> laysSomeRequestsAndRefusesOthersNamingTheSetting() {
    return bonds().map(bond -> dynamicTest(bond.kind(), () -> {
      assertTrue(requests().anyMatch(request -> lays(bond, request)), "lays none");
      for (BondRequest request : requests().filter(request -> !lays(bond, request)).toList()) {
        InputException refused = assertThrows(InputException.class, () -> bond.lay(request));
        assertTrue(refused.place().startsWith("bond."), refused.getMessage());
      }
    }));
  }

  private static String name(BondRequest request) {
    return request.tile().id() + " joint " + request.joint() + " offset " + request.offset();
  }

  @TestFactory
  Stream<DynamicTest> hasAKindForFilesAndALabelForPeople() {
    return bonds().map(bond -> dynamicTest(bond.kind(), () -> {
      assertTrue(bond.kind().matches("[a-z][a-z0-9]*(-[a-z0-9]+)*"), bond.kind());
      assertFalse(bond.label().isBlank());
    }));
  }

  /** Upright faces start at the origin with their corner, faces with slanting sides with a corner or their box. */
  @TestFactory
  Stream<DynamicTest> hasAFaceThatStartsAtTheOrigin() {
    return eachLevel((request, pattern) -> assertTrue(cells(pattern, WINDOW).stream()
        .anyMatch(cell -> cell.face().points(CHORD_ERROR).stream().anyMatch(corner -> corner.length() < TINY)
            || Math.abs(cell.face().box().minY()) < TINY && Math.abs(cell.face().box().minX()) < TINY)));
  }

  @TestFactory
  Stream<DynamicTest> namesEveryCellOfAWindowOnceAndNoOther() {
    return each((request, pattern) -> {
      Set<List<Integer>> named = new HashSet<>();
      for (Cell cell : cells(pattern, WINDOW)) {
        assertTrue(named.add(List.of(cell.course(), cell.position())), "twice: " + cell);
        assertTrue(cell.face().box().grown(TINY).meets(WINDOW), "outside: " + cell);
      }
    });
  }

  @TestFactory
  Stream<DynamicTest> namesInTwoHalvesWhatItNamesInTheWhole() {
    return each((request, pattern) -> {
      double middle = WINDOW.centre().x() + 0.37;
      Set<Cell> halves = new HashSet<>(cells(pattern, new Box(WINDOW.minX(), WINDOW.minY(), middle, WINDOW.maxY())));
      halves.addAll(cells(pattern, new Box(middle, WINDOW.minY(), WINDOW.maxX(), WINDOW.maxY())));
      assertEquals(new HashSet<>(cells(pattern, WINDOW)), halves);
    });
  }

  @TestFactory
  Stream<DynamicTest> facesRunCounterClockwiseAndComeFromOneTile() {
    return each((request, pattern) -> {
      double tile = request.tile().width() * request.tile().height();
      for (Cell cell : cells(pattern, WINDOW)) {
        double area = cell.face().signedArea();
        assertTrue(area > 0 && (area <= tile * (1 + TINY) || !cell.part().isEmpty()), cell.toString());
      }
    });
  }

  /** Points at random, always the same ones: each lies in one face at most, or in a joint beside one. */
  @TestFactory
  Stream<DynamicTest> facesCoverThePlaneButForTheJointsAndNeverOverlap() {
    return eachLevel((request, pattern) -> {
      List<List<Vec>> faces = cells(pattern, WINDOW.grown(400)).stream()
          .map(cell -> cell.face().points(CHORD_ERROR)).toList();
      Random random = new Random(20);
      for (int i = 0; i < 2000; i++) {
        Vec point = new Vec(WINDOW.minX() + random.nextDouble() * WINDOW.width(),
            WINDOW.minY() + random.nextDouble() * WINDOW.height());
        long over = faces.stream().filter(face -> inside(face, point)).count();
        assertTrue(over <= 1, () -> over + " faces over " + point);
        // Where four faces meet, the middle of the joint is half a diagonal away.
        double gap = over == 1 ? 0 : faces.stream().mapToDouble(face -> distance(face, point)).min().orElse(1e9);
        assertTrue(gap <= request.joint() * Math.sqrt(0.5) + TINY, () -> "nothing near " + point);
      }
    });
  }

  @TestFactory
  Stream<DynamicTest> facesAndTheirJointsFillTheArea() {
    return eachLevel((request, pattern) -> {
      Box wide = new Box(-4000, -4000, 4000, 4000);
      List<Cell> begun = cells(pattern, wide).stream().filter(cell -> starts(cell, wide)).toList();
      double perArea = begun.size() / (wide.width() * wide.height());
      double edge = (request.tile().width() + request.tile().height()) * 2 / wide.width();
      assertEquals(1, perArea / pattern.density(), edge);
    });
  }

  private static boolean starts(Cell cell, Box area) {
    Box box = cell.face().box();
    return box.minX() >= area.minX() && box.minX() < area.maxX() && box.minY() >= area.minY()
        && box.minY() < area.maxY();
  }

  /** The repeat that a pattern states: its faces and their joints make up its area, and it has as many faces as cells. */
  @TestFactory
  Stream<DynamicTest> theStatedRepeatHoldsItsFacesAndTheirJoints() {
    return each((request, pattern) -> pattern.repeat().ifPresent(repeat -> {
      double faces = repeat.faces().stream().mapToDouble(Contour::signedArea).sum();
      double edges = repeat.faces().stream().mapToDouble(Contour::length).sum();
      double joints = repeat.area() - faces;
      // Half of every joint belongs to each neighbour; crossings add at most a square of the joint for each corner.
      double corners = repeat.faces().stream().mapToInt(face -> face.segments().size()).sum();
      double crossings = corners * request.joint() * request.joint();
      assertEquals(edges * request.joint() / 2, joints, crossings + TINY);
      assertEquals(pattern.density(), repeat.faces().size() / repeat.area(), 1e-12);
    }));
  }

  @TestFactory
  Stream<DynamicTest> positionsGrowToTheRightInEveryCourse() {
    return eachLevel((request, pattern) -> courses(pattern).values().forEach(course -> {
      for (int i = 1; i < course.size(); i++) {
        assertTrue(course.get(i).face().box().centre().x() > course.get(i - 1).face().box().centre().x());
      }
    }));
  }

  @TestFactory
  Stream<DynamicTest> coursesGrowUpwards() {
    return eachLevel((request, pattern) -> {
      TreeMap<Integer, List<Cell>> courses = courses(pattern);
      courses.values().stream().reduce((lower, upper) -> {
        assertTrue(height(upper) > height(lower), () -> "course " + upper.get(0).course());
        return upper;
      });
    });
  }

  private static double height(List<Cell> course) {
    return course.stream().mapToDouble(cell -> cell.face().box().centre().y()).average().orElseThrow();
  }

  @TestFactory
  Stream<DynamicTest> everyFaceStandsInOneOfTheRowsItsPatternDeclares() {
    return each((request, pattern) -> {
      List<Run> along = pattern.runs(Axis.ALONG, WINDOW);
      List<Run> across = pattern.runs(Axis.ACROSS, WINDOW);
      for (Cell cell : cells(pattern, WINDOW)) {
        Box box = cell.face().box();
        assertAll(cell.toString(), () -> assertTrue(in(along, box.minX(), box.width())),
            () -> assertTrue(in(across, box.minY(), box.height())));
      }
    });
  }

  private static boolean in(List<Run> runs, double start, double face) {
    return runs.isEmpty() || runs.stream().anyMatch(run -> {
      double modules = (start - run.start()) / run.module();
      return Math.abs(modules - Math.rint(modules)) < TINY && Math.abs(face - run.face()) < TINY;
    });
  }

  @TestFactory
  Stream<DynamicTest> laysTheSameTwice() {
    return bonds().flatMap(bond -> requests().filter(request -> lays(bond, request))
        .map(request -> dynamicTest(bond.kind() + ' ' + name(request),
            () -> assertEquals(cells(bond.lay(request), WINDOW), cells(bond.lay(request), WINDOW)))));
  }

  private static List<Cell> cells(Pattern pattern, Box area) {
    List<Cell> cells = new ArrayList<>();
    pattern.cells(area, cells::add);
    assertFalse(cells.isEmpty(), "no cells");
    return cells;
  }

  /** The cells of the window by course, each course by position. */
  private static TreeMap<Integer, List<Cell>> courses(Pattern pattern) {
    TreeMap<Integer, TreeMap<Integer, Cell>> sorted = new TreeMap<>();
    for (Cell cell : cells(pattern, WINDOW)) {
      sorted.computeIfAbsent(cell.course(), course -> new TreeMap<>()).put(cell.position(), cell);
    }
    TreeMap<Integer, List<Cell>> courses = new TreeMap<>();
    sorted.forEach((course, cells) -> courses.put(course, List.copyOf(cells.values())));
    return courses;
  }

  private static boolean inside(List<Vec> corners, Vec point) {
    boolean inside = false;
    for (int i = 0; i < corners.size(); i++) {
      Vec a = corners.get(i);
      Vec b = corners.get((i + 1) % corners.size());
      if (a.y() > point.y() != b.y() > point.y()
          && point.x() < a.x() + (b.x() - a.x()) * (point.y() - a.y()) / (b.y() - a.y())) {
        inside = !inside;
      }
    }
    return inside;
  }

  private static double distance(List<Vec> corners, Vec point) {
    double nearest = Double.MAX_VALUE;
    for (int i = 0; i < corners.size(); i++) {
      Vec a = corners.get(i);
      Vec side = corners.get((i + 1) % corners.size()).minus(a);
      double t = Math.max(0, Math.min(1, point.minus(a).dot(side) / side.dot(side)));
      nearest = Math.min(nearest, point.distance(a.plus(side.times(t))));
    }
    return nearest;
  }
}
