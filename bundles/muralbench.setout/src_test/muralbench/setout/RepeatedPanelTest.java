// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.cut.CutList;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Transfer;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.MovementAxis;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementSpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RepeatedPanelTest {
  private static final double IN = Walls.IN;
  private static final double FAR = 1000;

  /** An arched panel with a notch at one side, an outlet and a round opening; nothing in it is symmetrical. */
  private static Walls wall() throws Exception {
    return Walls.path("M 0 900 L 1000 900 L 1000 1200 L 900 1200 L 900 1500 A 350 350 0 0 1 200 1500 L 0 1400 Z")
        .opening(Contour.rectangle(230, 1010, 70, 115)).opening(Contour.circle(new Vec(610, 1370), 45));
  }

  private static PanelSpec repeat(PanelSpec panel, boolean mirrored) {
    Transfer to = Transfer.of(panel.outline().box(), new Vec(3000, 900), mirrored);
    List<OpeningSpec> openings = panel.openings().stream()
        .map(opening -> new OpeningSpec("B-" + opening.id(), opening.kind(), to.of(opening.outline()))).toList();
    return new PanelSpec("B", "", "wall", "fixed", panel.tile(), panel.joint(), panel.edgeGap(), to.of(panel.outline()),
        openings, panel.bond(), new OriginSpec.Repeated(panel, to), Optional.empty(), panel.movement());
  }

  private static List<PanelSetOut> both(PanelSpec panel, boolean mirrored) throws InputException {
    MuralSpec mural = new MuralSpec("", "", "", LengthUnit.MILLIMETRE, "interior-dry",
        List.of(panel, repeat(panel, mirrored)));
    return SetOut.mural(mural, BondRegistry.standard(), Progress.NONE).panels();
  }

  /**
   * The same place on the wall for a point of the original; the box of the panel is 0 to 1000 and then 3000 to 4000.
   */
  private static double x(double x, boolean mirrored) {
    return mirrored ? 4 * FAR - x : x + 3 * FAR;
  }

  @ParameterizedTest
  @CsvSource({"grid, 0, 0, 6, 4, ''", "grid, 0.25, 0, 6, 4, ''", "running, 0.333, 90, 6, 4, ''", "grid, 0, 180, 6, 4, ''",
      "diagonal, 0, 0, 6, 6, angle=30", "herringbone, 0, 0, 8, 4, ''", "herringbone, 0, 20, 8, 4, angle=45",
      "basket, 0, 0, 8.125, 4, ''", "hexagon, 0, 0, 6, 6, ''", "octagon, 0, 0, 6, 6, ''", "two-size, 0, 0, 4, 4, ''",
      "three-size, 0, 0, 4, 4, ''", "rings, 0, 0, 6, 6, 'radius=30 in;rings=5 in, 5 in, 5 in'"})
  void everyPieceIsThereAgainMirrored(String kind, double offset, double turn, double width, double height,
      String setting) throws Exception {
    PanelSpec panel = wall().tiles(width, height, 0.125).bond(kind, offset, turn).setting(setting).spec();
    for (boolean mirrored : new boolean[] {false, true}) {
      List<PanelSetOut> both = both(panel, mirrored);
      Map<String, Piece> there = new HashMap<>();
      both.get(1).pieces().forEach(piece -> there.put(place(piece.outline(), 0, false), piece));
      for (Piece piece : both.get(0).pieces()) {
        Piece image = there.remove(place(piece.outline(), 3 * FAR, mirrored));
        assertTrue(image != null, piece.key());
        assertEquals(piece.kind(), image.kind());
        assertEquals(piece.area(), image.outline().area() - holes(image), 1e-6);
        assertTrue(turn == 90 || piece.course() == image.course(), piece.key());
        assertAlike(piece.face(), image.face(), mirrored);
      }
      assertTrue(there.isEmpty());
      assertEquals(both.get(0).tilesToOrder(), both.get(1).tilesToOrder());
    }
  }

  private static double holes(Piece piece) {
    return piece.holes().stream().mapToDouble(Contour::area).sum();
  }

  /** A piece is known by its box, to 0.001 mm. */
  private static String place(Contour outline, double shift, boolean mirrored) {
    Box box = outline.box();
    double left = mirrored ? x(box.maxX(), true) : box.minX() + shift;
    return Math.round(left * 1000 + 0.123) + " " + Math.round(box.minY() * 1000 + 0.123) + " "
        + Math.round(box.width() * 1000 + 0.123) + " " + Math.round(box.height() * 1000 + 0.123);
  }

  /** The corners of the image are those of the face; a full circle has none. */
  private static void assertAlike(Contour face, Contour image, boolean mirrored) {
    for (Segment side : face.segments().size() == 1 ? List.<Segment>of() : face.segments()) {
      Vec there = new Vec(x(side.start().x(), mirrored), side.start().y());
      double nearest = image.segments().stream().map(Segment::start).mapToDouble(there::distance).min().orElseThrow();
      assertTrue(nearest < 1e-6, () -> "off by " + nearest);
    }
    assertEquals(face.signedArea(), image.signedArea(), 1e-6);
  }

  /** By the polygons of the JDK: what a tile has left is what the mirrored panel holds of its face. */
  @Test
  void mirroredPiecesAreWhatTheMirroredPanelHoldsOfTheirFaces() throws Exception {
    PanelSetOut mirrored = both(wall().tiles(8, 4, 0.125).bond("herringbone", 0, 0).spec(), true).get(1);
    Area region = area(mirrored.spec().outline());
    mirrored.spec().openings().forEach(opening -> region.subtract(area(opening.outline())));
    Map<Contour, Double> faces = new HashMap<>();
    mirrored.pieces().forEach(piece -> faces.merge(piece.face(), piece.area(), Double::sum));
    faces.forEach((face, left) -> {
      Area cut = area(face);
      cut.intersect(region);
      assertEquals(area(cut), left, 0.5);
    });
  }

  private static Area area(Contour contour) {
    Path2D path = new Path2D.Double();
    List<Vec> points = contour.points(0.001);
    path.moveTo(points.get(0).x(), points.get(0).y());
    points.stream().skip(1).forEach(point -> path.lineTo(point.x(), point.y()));
    path.closePath();
    return new Area(path);
  }

  private static double area(Area area) {
    double sum = 0;
    double[] at = new double[6];
    Vec first = Vec.ZERO;
    Vec last = Vec.ZERO;
    for (var each = area.getPathIterator(null); !each.isDone(); each.next()) {
      int type = each.currentSegment(at);
      Vec next = type == PathIterator.SEG_CLOSE ? first : new Vec(at[0], at[1]);
      if (type == PathIterator.SEG_MOVETO) {
        first = next;
      } else {
        sum += last.cross(next) / 2;
      }
      last = next;
    }
    return Math.abs(sum);
  }

  /** A running bond that steps to the right is, mirrored, one that steps to the left: laid by itself it is the same. */
  @Test
  void aMirroredRunningBondIsOneThatStepsTheOtherWay() throws Exception {
    PanelSpec panel = Walls.rectangle(0, 36, 40, 30).bond("running", 0.25, 0).from(1.5, 37).opening(7, 40, 4, 5).spec();
    Transfer to = Transfer.of(panel.outline().box(), new Vec(0, 36 * IN), true);
    PanelSpec repeat = new PanelSpec("A", "", "wall", "fixed", panel.tile(), panel.joint(), 0, panel.outline(),
        List.of(new OpeningSpec("O1", "outlet", to.of(panel.openings().get(0).outline()))), panel.bond(),
        new OriginSpec.Repeated(panel, to));
    PanelSetOut mirrored = SetOut.panel(repeat, BondRegistry.standard(), Progress.NONE);
    PanelSetOut other = Walls.rectangle(0, 36, 40, 30).bond("running", -0.25, 0).from(40 - 1.5 - 6, 37)
        .opening(40 - 7 - 4, 40, 4, 5).setOut();
    assertEquals(texts(other), texts(mirrored));
    assertEquals(other.origin().x(), mirrored.origin().x(), 1e-6);
    assertEquals(other.origin().y(), mirrored.origin().y(), 1e-6);
  }

  private static List<String> texts(PanelSetOut panel) {
    return panel.pieces().stream().map(piece -> piece.key() + " " + piece.kind() + " "
        + place(piece.outline(), 0, false)).toList();
  }

  @Test
  void keysCountFromTheLeftAsThePanelHangs() throws Exception {
    for (Piece piece : both(wall().spec(), true).get(1).pieces()) {
      assertTrue(piece.key().startsWith("B-"), piece.key());
    }
    List<Piece> course = both(wall().spec(), true).get(1).pieces().stream().filter(piece -> piece.course() == 1).toList();
    List<Piece> fromLeft = new ArrayList<>(course);
    fromLeft.sort(Comparator.comparingDouble(piece -> piece.box().minX()));
    assertEquals(fromLeft, course);
  }

  /** Wedges are counted clockwise from the top one, mirrored or not. */
  @Test
  void wedgesOfAMirroredRingStillCountClockwise() throws Exception {
    PanelSpec round = Walls.circle(20, 50, 15.25).tiles(6, 6, 0.125).bond("rings", 0, 0)
        .setting("radius=15.25 in;rings=5 in, 5 in").opening(22, 52, 2, 2).spec();
    PanelSetOut mirrored = both(round, true).get(1);
    List<Piece> rim = mirrored.pieces().stream().filter(piece -> piece.course() == 3).toList();
    double top = rim.get(0).face().box().centre().x();
    assertEquals(mirrored.spec().outline().box().centre().x(), top, 1e-6);
    assertTrue(rim.get(1).face().box().centre().x() > top);
    assertTrue(rim.get(rim.size() - 1).face().box().centre().x() < top);
  }

  /**
   * A square corner notch is its own mirror image after a quarter turn; an oblong one is not, since a glazed face
   * stays up.
   */
  @Test
  void mirroredCutsAreShapesOfTheirOwn() throws Exception {
    PanelSpec panel = Walls.rectangle(0, 0, 12.125, 6).from(0, 0).opening(0, 0, 2, 3).spec();
    MuralSpec mural = new MuralSpec("", "", "", LengthUnit.INCH, "interior-dry", List.of(panel, repeat(panel, true)));
    List<CutGroup> groups = CutList.of(SetOut.mural(mural, BondRegistry.standard(), Progress.NONE));
    assertEquals(List.of(List.of("A-01-01"), List.of("B-01-02")), groups.stream().map(CutGroup::keys).toList());
    PanelSpec square = Walls.rectangle(0, 0, 12.125, 6).from(0, 0).opening(0, 0, 3, 3).spec();
    mural = new MuralSpec("", "", "", LengthUnit.INCH, "interior-dry", List.of(square, repeat(square, true)));
    groups = CutList.of(SetOut.mural(mural, BondRegistry.standard(), Progress.NONE));
    assertEquals(List.of(List.of("A-01-01", "B-01-02")), groups.stream().map(CutGroup::keys).toList());
  }

  @Test
  void movementJointsComeAlong() throws Exception {
    MovementSpec joints = new MovementSpec.Given(List.of(new MovementJoint(MovementAxis.VERTICAL, 300, 10),
        new MovementJoint(MovementAxis.HORIZONTAL, 1100, 12)));
    List<PanelSetOut> both = both(wall().spec().withMovement(joints), true);
    MovementJoint vertical = both.get(0).movement().get(0);
    assertEquals(4 * FAR - vertical.at(), both.get(1).movement().get(0).at(), 1e-9);
    assertEquals(both.get(0).movement().get(1), both.get(1).movement().get(1));
    assertEquals(10, both.get(1).movement().get(0).width());
  }

  @Test
  void aRepeatOfARepeatMirroredTwiceHangsAsTheOriginal() throws Exception {
    PanelSpec panel = wall().bond("running", 0.5, 0).spec();
    PanelSpec once = repeat(panel, true);
    Transfer back = Transfer.of(once.outline().box(), new Vec(0, 900), true);
    PanelSpec twice = new PanelSpec("A", "", "wall", "fixed", panel.tile(), panel.joint(), 0, panel.outline(),
        panel.openings(), panel.bond(), new OriginSpec.Repeated(once, back));
    assertEquals(texts(SetOut.panel(panel, BondRegistry.standard(), Progress.NONE)),
        texts(SetOut.panel(twice, BondRegistry.standard(), Progress.NONE)));
  }
}
