// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import java.util.ArrayList;
import java.util.List;
import muralbench.setout.geometry.Box;

/** Fewest tiles for rectangles with whole measures, by trying every place on a raster of 1 and every way to share. */
record BruteForce(int width, int height, int kerf) {
  int fewest(List<SawnRect> rects) {
    return fewest(rects, 0, new ArrayList<>());
  }

  /** Puts the rectangles one by one on a tile that is there or on a new one. */
  private int fewest(List<SawnRect> rects, int next, List<List<SawnRect>> tiles) {
    if (next == rects.size()) {
      return tiles.stream().allMatch(this::fit) ? tiles.size() : Integer.MAX_VALUE;
    }
    int best = Integer.MAX_VALUE;
    for (int tile = 0; tile <= tiles.size(); tile++) {
      if (tile == tiles.size()) {
        tiles.add(new ArrayList<>());
      }
      tiles.get(tile).add(rects.get(next));
      best = Math.min(best, fewest(rects, next + 1, tiles));
      tiles.get(tile).remove(tiles.get(tile).size() - 1);
      if (tiles.get(tile).isEmpty()) {
        tiles.remove(tile);
        break;
      }
    }
    return best;
  }

  private boolean fit(List<SawnRect> rects) {
    return place(rects, 0, new ArrayList<>());
  }

  private boolean place(List<SawnRect> rects, int next, List<Box> placed) {
    if (next == rects.size()) {
      return sawnApart(placed);
    }
    SawnRect rect = rects.get(next);
    for (int quarter = 0; quarter < 4; quarter++) {
      for (int x = 0; x + rect.width() <= width; x++) {
        for (int y = 0; y + rect.height() <= height; y++) {
          Box box = new Box(x, y, x + rect.width(), y + rect.height());
          if (onItsEdges(rect, box) && placed.stream().noneMatch(other -> tooNear(box, other))) {
            placed.add(box);
            if (place(rects, next + 1, placed)) {
              return true;
            }
            placed.remove(placed.size() - 1);
          }
        }
      }
      rect = rect.turned();
    }
    return false;
  }

  private boolean onItsEdges(SawnRect rect, Box box) {
    return (!rect.needs(SawnRect.LEFT) || box.minX() == 0) && (!rect.needs(SawnRect.BOTTOM) || box.minY() == 0)
        && (!rect.needs(SawnRect.RIGHT) || box.maxX() == width)
        && (!rect.needs(SawnRect.TOP) || box.maxY() == height);
  }

  private boolean tooNear(Box a, Box b) {
    return a.minX() < b.maxX() + kerf && b.minX() < a.maxX() + kerf && a.minY() < b.maxY() + kerf
        && b.minY() < a.maxY() + kerf;
  }

  /** Whether cuts that go right through part the boxes. */
  private boolean sawnApart(List<Box> boxes) {
    if (boxes.size() < 2) {
      return true;
    }
    for (Box at : boxes) {
      if (parted(boxes, boxes.stream().filter(box -> box.maxX() <= at.maxX()).toList(), at.maxX() + kerf, true)
          || parted(boxes, boxes.stream().filter(box -> box.maxY() <= at.maxY()).toList(), at.maxY() + kerf, false)) {
        return true;
      }
    }
    return false;
  }

  private boolean parted(List<Box> boxes, List<Box> before, double from, boolean upright) {
    List<Box> after = boxes.stream().filter(box -> (upright ? box.minX() : box.minY()) >= from).toList();
    return !after.isEmpty() && before.size() + after.size() == boxes.size() && sawnApart(before) && sawnApart(after);
  }
}
