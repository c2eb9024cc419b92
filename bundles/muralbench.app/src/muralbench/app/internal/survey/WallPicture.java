// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.survey;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;
import muralbench.setout.survey.AdjustedWall;
import muralbench.setout.survey.Misfit;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

/**
 * The wall that measurements make, with a true rectangle dashed behind it. How far the wall is from the rectangle is
 * drawn larger than it is, as otherwise nothing would be seen of it.
 */
final class WallPicture extends Canvas {
  private static final Messages TEXTS = Messages.of(WallPicture.class);
  private static final int GAP = 6;
  private static final int[] TIMES = {100, 50, 20, 10, 5, 2};
  /** What is out of true takes at most about this share of the smaller side of the picture. */
  private static final double SHARE = 0.07;
  /** What is out of true by less is true, mm. */
  private static final double NOTHING = 0.05;
  private static final int[][] SIDES = {{0, 1}, {1, 2}, {2, 3}, {3, 0}, {0, 2}, {3, 1}};
  private static final List<String> NAMES = List.of("bottom", "right", "top", "left", "rising", "falling");

  private Optional<AdjustedWall> wall = Optional.empty();
  private LengthUnit unit = LengthUnit.INCH;
  private double line = Double.NaN;

  WallPicture(Composite parent) {
    super(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
    setBackground(getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
    setForeground(getDisplay().getSystemColor(SWT.COLOR_LIST_FOREGROUND));
    addPaintListener(event -> paint(event.gc));
    getAccessible().addAccessibleListener(new AccessibleAdapter() {
      @Override
      public void getName(AccessibleEvent event) {
        event.result = TEXTS.text("page.picture.name");
      }
    });
  }

  /**
   * Shows a wall, or that there is none yet.
   *
   * @param levelLine height of the level line it was measured from, mm; not a number if there is none
   */
  void show(Optional<AdjustedWall> shown, double levelLine, LengthUnit units) {
    wall = shown;
    line = levelLine;
    unit = units;
    redraw();
  }

  private void paint(GC gc) {
    gc.setAntialias(SWT.ON);
    wall.ifPresentOrElse(found -> new Drawing(gc, found).paint(), () -> middle(gc, TEXTS.text("picture.empty"),
        getClientArea().width / 2, getClientArea().height / 2));
  }

  private static void middle(GC gc, String words, int x, int y) {
    Point size = gc.textExtent(words);
    gc.drawText(words, x - size.x / 2, y - size.y / 2, true);
  }

  /** The rectangle that a wall is held against: each of its points where it would be if the wall were true. */
  static List<Vec> rectangle(List<Vec> corners) {
    int edge = corners.size() / 2;
    double low = corners.subList(0, edge).stream().mapToDouble(Vec::y).average().orElse(0);
    double high = corners.subList(edge, 2 * edge).stream().mapToDouble(Vec::y).average().orElse(0);
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i < 2 * edge; i++) {
      double x = (corners.get(i).x() + corners.get(2 * edge - 1 - i).x()) / 2;
      points.add(new Vec(x, i < edge ? low : high));
    }
    return points;
  }

  private static Box box(List<Vec> points) {
    return points.stream().map(at -> new Box(at.x(), at.y(), at.x(), at.y())).reduce(Box::and).orElseThrow();
  }

  /** One act of painting. */
  private final class Drawing {
    private final GC gc;
    private final AdjustedWall found;
    private final List<Vec> straight;
    private final List<Vec> bent;
    private final int times;
    private final Box all;
    private final double scale;
    private final double left;
    private final double top;

    Drawing(GC gc, AdjustedWall found) {
      this.gc = gc;
      this.found = found;
      straight = rectangle(found.corners());
      Box box = box(straight);
      times = times(Math.min(box.width(), box.height()));
      bent = new ArrayList<>();
      for (int i = 0; i < straight.size(); i++) {
        bent.add(straight.get(i).plus(found.corners().get(i).minus(straight.get(i)).times(times)));
      }
      all = box.and(box(bent));
      double beside = 2 * GAP + gc.textExtent(TEXTS.text("picture.suspect", "side",
          LengthText.shown(found.fourCorners().get(1).distance(found.fourCorners().get(2)), unit))).x;
      double above = 2.0 * GAP + gc.getFontMetrics().getHeight();
      scale = Math.max(1e-6, Math.min((getClientArea().width - 2 * beside) / Math.max(1, all.width()),
          (getClientArea().height - 2 * above) / Math.max(1, all.height())));
      left = getClientArea().width / 2.0 - all.centre().x() * scale;
      top = getClientArea().height / 2.0 + all.centre().y() * scale;
    }

    private int times(double size) {
      double most = 0;
      for (int i = 0; i < straight.size(); i++) {
        most = Math.max(most, straight.get(i).distance(found.corners().get(i)));
      }
      for (int factor : TIMES) {
        if (most > NOTHING && most * factor <= SHARE * size) {
          return factor;
        }
      }
      return 1;
    }

    void paint() {
      gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_DARK_GRAY));
      gc.setLineStyle(SWT.LINE_DASH);
      polygon(straight);
      if (!Double.isNaN(line)) {
        levelLine();
      }
      gc.setForeground(getForeground());
      if (bent.size() == 4 && Double.isNaN(line)) {
        gc.setLineStyle(SWT.LINE_DOT);
        draw(bent.get(0), bent.get(2));
        draw(bent.get(3), bent.get(1));
      }
      gc.setLineStyle(SWT.LINE_SOLID);
      gc.setLineWidth(2);
      polygon(bent);
      gc.setLineWidth(1);
      names();
      String words = times == 1 ? TEXTS.text("picture.plain") : TEXTS.text("picture.times", "times", times);
      Point size = gc.textExtent(words);
      gc.drawText(words, getClientArea().width - size.x - 6, getClientArea().height - size.y - 4, true);
    }

    private void levelLine() {
      Box box = box(straight);
      draw(new Vec(box.minX(), line), new Vec(box.maxX(), line));
      for (int i = 0; i < bent.size(); i++) {
        draw(new Vec(bent.get(i).x(), line), bent.get(i));
      }
    }

    /** Each side with its length; a question mark where the measurement cannot be right. */
    private void names() {
      Set<String> suspects = found.suspects().stream().map(Misfit::measurement).map(one -> one.name())
          .collect(Collectors.toSet());
      Map<String, Double> measured = new HashMap<>();
      found.misfits().forEach(one -> measured.put(one.measurement().name(), one.measurement().value()));
      int edge = bent.size() / 2;
      int[] four = {0, edge - 1, edge, 2 * edge - 1};
      for (int i = 0; i < (measured.isEmpty() ? 4 : SIDES.length); i++) {
        Vec from = bent.get(four[SIDES[i][0]]);
        Vec to = bent.get(four[SIDES[i][1]]);
        double length = measured.getOrDefault(NAMES.get(i), found.corners().get(four[SIDES[i][0]])
            .distance(found.corners().get(four[SIDES[i][1]])));
        String words = LengthText.shown(length, unit);
        label(i, suspects.contains(NAMES.get(i)) ? TEXTS.text("picture.suspect", "side", words) : words, from, to);
      }
    }

    private void label(int side, String words, Vec from, Vec to) {
      // Diagonals are named off their crossing, so that the names do not meet.
      double share = side < 4 ? 0.5 : side == 4 ? 0.7 : 0.25;
      Vec at = from.plus(to.minus(from).times(share));
      int x = x(at);
      int y = y(at);
      Point size = gc.textExtent(words);
      switch (side) {
        case 0 -> y = y(new Vec(0, all.minY())) + GAP + size.y / 2;
        case 1 -> x = x(new Vec(all.maxX(), 0)) + GAP + size.x / 2;
        case 2 -> y = y(new Vec(0, all.maxY())) - GAP - size.y / 2;
        case 3 -> x = x(new Vec(all.minX(), 0)) - GAP - size.x / 2;
        default -> {
          gc.setBackground(getBackground());
          gc.fillRectangle(x - size.x / 2, y - size.y / 2, size.x, size.y);
        }
      }
      middle(gc, words, x, y);
    }

    private void polygon(List<Vec> points) {
      int[] pixels = new int[2 * points.size()];
      for (int i = 0; i < points.size(); i++) {
        pixels[2 * i] = x(points.get(i));
        pixels[2 * i + 1] = y(points.get(i));
      }
      gc.drawPolygon(pixels);
    }

    private void draw(Vec from, Vec to) {
      gc.drawLine(x(from), y(from), x(to), y(to));
    }

    private int x(Vec at) {
      return (int) Math.round(left + at.x() * scale);
    }

    private int y(Vec at) {
      return (int) Math.round(top - at.y() * scale);
    }
  }
}
