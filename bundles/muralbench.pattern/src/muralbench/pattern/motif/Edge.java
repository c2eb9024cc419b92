// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

/** A side of a tile as it stands on the wall. */
public enum Edge {
  /** The left side, from bottom to top. */
  LEFT(0, 0, 0, 1),
  /** The right side, from bottom to top. */
  RIGHT(1, 0, 1, 1),
  /** The lower side, from left to right. */
  BOTTOM(0, 0, 1, 0),
  /** The upper side, from left to right. */
  TOP(0, 1, 1, 1);

  private final int startX;
  private final int startY;
  private final int endX;
  private final int endY;

  Edge(int startX, int startY, int endX, int endY) {
    this.startX = startX;
    this.startY = startY;
    this.endX = endX;
    this.endY = endY;
  }

  /** Whether the side stands upright. */
  public boolean upright() {
    return startX == endX;
  }

  /** The side of a neighbour that lies against this one. */
  public Edge opposite() {
    return switch (this) {
      case LEFT -> RIGHT;
      case RIGHT -> LEFT;
      case BOTTOM -> TOP;
      case TOP -> BOTTOM;
    };
  }

  /** A side of a drawing and whether it is met from its far end. */
  record Met(Edge edge, boolean backwards) {}

  /** The side of the drawing that lies here when the drawing has an orientation. */
  Met of(Orientation orientation) {
    for (Edge edge : values()) {
      int fromX = x(orientation, edge.startX, edge.startY);
      int fromY = y(orientation, edge.startX, edge.startY);
      int toX = x(orientation, edge.endX, edge.endY);
      int toY = y(orientation, edge.endX, edge.endY);
      if (fromX == startX && fromY == startY && toX == endX && toY == endY) {
        return new Met(edge, false);
      }
      if (fromX == endX && fromY == endY && toX == startX && toY == startY) {
        return new Met(edge, true);
      }
    }
    throw new IllegalStateException("no side of the drawing lies " + this);
  }

  private static int x(Orientation orientation, int x, int y) {
    return orientation.xx() * x + orientation.xy() * y - Math.min(0, orientation.xx() + orientation.xy());
  }

  private static int y(Orientation orientation, int x, int y) {
    return orientation.yx() * x + orientation.yy() * y - Math.min(0, orientation.yx() + orientation.yy());
  }
}
