// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import java.util.List;
import java.util.stream.Stream;
import muralbench.pattern.symmetry.Isometry;
import muralbench.setout.geometry.Vec;

/**
 * The eight ways a drawing can lie on a tile: first mirrored left to right or not, then turned counter-clockwise by
 * quarter turns. A tile can be turned on the wall; a mirrored one is another tile to paint.
 */
public enum Orientation {
  /** As it was drawn. */
  AS_DRAWN(false, 0),
  /** Turned a quarter counter-clockwise. */
  QUARTER_TURN(false, 1),
  /** Upside down. */
  HALF_TURN(false, 2),
  /** Turned a quarter clockwise. */
  THREE_QUARTER_TURN(false, 3),
  /** Mirrored left to right. */
  MIRRORED(true, 0),
  /** Mirrored left to right, then turned a quarter counter-clockwise. */
  MIRRORED_QUARTER_TURN(true, 1),
  /** Mirrored left to right, then upside down: mirrored top to bottom. */
  MIRRORED_HALF_TURN(true, 2),
  /** Mirrored left to right, then turned a quarter clockwise. */
  MIRRORED_THREE_QUARTER_TURN(true, 3);

  private static final int[] COS = {1, 0, -1, 0};
  private static final int[] SIN = {0, 1, 0, -1};

  private final boolean mirrored;
  private final int quarterTurns;

  Orientation(boolean mirrored, int quarterTurns) {
    this.mirrored = mirrored;
    this.quarterTurns = quarterTurns;
  }

  /** The orientation with these parts; any number of quarter turns. */
  public static Orientation of(boolean mirrored, int quarterTurns) {
    return values()[(mirrored ? 4 : 0) + Math.floorMod(quarterTurns, 4)];
  }

  /** The orientation whose matrix sends (1, 0) to the first and (0, 1) to the second pair; all of them -1, 0 or 1. */
  static Orientation ofMatrix(int xx, int yx, int xy, int yy) {
    return Stream.of(values()).filter(each -> each.xx() == xx && each.yx() == yx && each.xy() == xy && each.yy() == yy)
        .findFirst().orElseThrow(() -> new IllegalArgumentException("no orientation of a square"));
  }

  /** The orientation that does to directions what a movement of the plane does. */
  public static Orientation of(Isometry movement) {
    return ofMatrix((int) Math.rint(movement.xx()), (int) Math.rint(movement.yx()), (int) Math.rint(movement.xy()),
        (int) Math.rint(movement.yy()));
  }

  /** The four that are turns alone. */
  public static List<Orientation> turns() {
    return List.of(AS_DRAWN, QUARTER_TURN, HALF_TURN, THREE_QUARTER_TURN);
  }

  /** Whether the drawing is a mirror image. */
  public boolean mirrored() {
    return mirrored;
  }

  /** Quarter turns counter-clockwise, 0 to 3. */
  public int quarterTurns() {
    return quarterTurns;
  }

  /** Whether an upright tile comes to lie. */
  public boolean swapsSides() {
    return quarterTurns % 2 == 1;
  }

  /** This orientation followed by {@code next}. */
  public Orientation then(Orientation next) {
    return of(mirrored != next.mirrored, next.quarterTurns + (next.mirrored ? -quarterTurns : quarterTurns));
  }

  /** The orientation that brings the drawing back. */
  public Orientation inverse() {
    return mirrored ? this : of(false, -quarterTurns);
  }

  int xx() {
    return mirrored ? -COS[quarterTurns] : COS[quarterTurns];
  }

  int yx() {
    return mirrored ? -SIN[quarterTurns] : SIN[quarterTurns];
  }

  int xy() {
    return -SIN[quarterTurns];
  }

  int yy() {
    return COS[quarterTurns];
  }

  /** The new first coordinate of a direction. */
  public int alongX(int x, int y) {
    return xx() * x + xy() * y;
  }

  /** The new second coordinate of a direction. */
  public int alongY(int x, int y) {
    return yx() * x + yy() * y;
  }

  /** The movement that brings a drawing from a box at (0, 0) to its place in the box, turned if need be, at (0, 0). */
  public Isometry in(double width, double height) {
    double left = Math.min(0, xx() * width) + Math.min(0, xy() * height);
    double bottom = Math.min(0, yx() * width) + Math.min(0, yy() * height);
    return new Isometry(xx(), xy(), yx(), yy(), new Vec(-left, -bottom));
  }
}
