// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.field;

import java.util.List;
import java.util.Optional;
import muralbench.base.Messages;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSpec;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.MovementAxis;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;

/**
 * Paints a panel with its visible pieces. Small tiles are left out when they are too small on the screen to be told
 * apart, and keys are written only where they fit.
 */
public final class FieldPainter {
  /** Below this many pixels a tile is not painted on its own. */
  static final double SMALLEST_TILE = 4;

  /** Height of the strip above a panel that carries its title, pixels. */
  public static final int TITLE_HEIGHT = 22;

  private static final Messages TEXTS = Messages.of(FieldPainter.class);
  private static final int PADDING = 3;
  private static final int BAR = 4;
  private static final int WIDE_BAR = 8;
  private static final int FOCUS = 6;
  private static final int FOCUS_ARM = 4;

  private final WallStyle style;

  /** A painter in a style. */
  public FieldPainter(WallStyle style) {
    this.style = style;
  }

  /** Paints a panel. */
  public void paint(Paper paper, PanelPicture picture) {
    Graphics graphics = paper.graphics();
    graphics.setAntialias(SWT.ON);
    ground(paper, picture);
    picture.field().ifPresent(field -> pieces(paper, field));
    picture.field().ifPresent(field -> movementJoints(paper, field));
    graphics.setForegroundColor(style.of(Tint.EDGE));
    graphics.setLineWidth(picture.field().isPresent() ? 2 : 1);
    picture.outline().ifPresent(paper::draw);
    picture.field().ifPresent(field -> repeatedOpenings(paper, field));
    picture.focus().ifPresent(at -> focus(paper, at));
    title(paper, picture);
  }

  /** Openings that a panel has from another one; they are no things of the wall that could be picked. */
  private void repeatedOpenings(Paper paper, PieceField field) {
    PanelSpec spec = field.setOut().spec();
    if (spec.origin() instanceof OriginSpec.Repeated) {
      spec.openings().forEach(opening -> new OpeningPainter(style).paint(paper, opening.outline(),
          List.of(opening.id() + ' ' + opening.kind(), opening.id())));
    }
  }

  private void ground(Paper paper, PanelPicture picture) {
    Graphics graphics = paper.graphics();
    if (picture.field().isPresent()) {
      PieceField field = picture.field().get();
      graphics.setBackgroundColor(style.of(tilePixels(paper, field) < SMALLEST_TILE ? Tint.WAITING : Tint.GROUT));
      paper.fill(field.setOut().tiled());
      return;
    }
    graphics.setBackgroundColor(picture.problem().isPresent() ? style.of(Tint.FAULTY) : style.of(Tint.WAITING));
    Box box = picture.frame().box();
    paper.fill(List.of(picture.outline().orElseGet(
        () -> Contour.rectangle(box.minX(), box.minY(), box.width(), box.height()))));
    String words = picture.problem().orElse(TEXTS.text("waiting"));
    graphics.setFont(style.text());
    graphics.setForegroundColor(style.of(Tint.FAINT_INK));
    Dimension size = FigureUtilities.getTextExtents(words, style.text());
    if (size.width < paper.x(box.width()) - 2 * PADDING) {
      graphics.drawText(words, paper.x(picture.frame().middleX()) - size.width / 2,
          paper.y(picture.frame().middleY()) - size.height / 2);
    }
  }

  private static double tilePixels(Paper paper, PieceField field) {
    PanelSpec spec = field.setOut().spec();
    return Math.min(spec.tile().width(), spec.tile().height()) * paper.scale();
  }

  private void pieces(Paper paper, PieceField field) {
    if (tilePixels(paper, field) < SMALLEST_TILE) {
      return;
    }
    Graphics graphics = paper.graphics();
    PanelSpec spec = field.setOut().spec();
    int gap = Math.max(1, (int) Math.round(spec.joint() * paper.scale()));
    Box part = paper.clip();
    graphics.setLineWidth(1);
    graphics.setForegroundColor(style.of(Tint.CUT_EDGE));
    field.visible(part, shape -> piece(paper, shape, spec.joint(), gap));
    keys(paper, field, part);
  }

  /**
   * Light bars between two dark lines, as on the key sheets: however small the wall is shown and without colours they
   * are told from other joints, from cuts and from edges.
   */
  private void movementJoints(Paper paper, PieceField field) {
    for (PieceField.Sealed sealed : field.sealed()) {
      Box strip = sealed.strip();
      boolean upright = sealed.joint().axis() == MovementAxis.VERTICAL;
      int thick = Math.max(BAR, paper.x(upright ? strip.width() : strip.height()));
      int line = thick < WIDE_BAR ? 1 : 2;
      int length = paper.x(upright ? strip.height() : strip.width());
      int left = paper.x(upright ? strip.centre().x() : strip.minX()) - (upright ? thick / 2 : 0);
      int top = paper.y(upright ? strip.maxY() : strip.centre().y()) - (upright ? 0 : thick / 2);
      Rectangle bar = upright ? new Rectangle(left, top, thick, length) : new Rectangle(left, top, length, thick);
      paper.graphics().setBackgroundColor(style.of(Tint.EDGE));
      paper.graphics().fillRectangle(bar);
      paper.graphics().setBackgroundColor(style.of(Tint.WHOLE));
      paper.graphics().fillRectangle(bar.shrink(upright ? line : 0, upright ? 0 : line));
    }
  }

  /** A ring with a cross through it, of one size at any zoom, light around dark. */
  private void focus(Paper paper, Vec at) {
    Graphics graphics = paper.graphics();
    int x = paper.x(at.x());
    int y = paper.y(at.y());
    for (int pass = 0; pass < 2; pass++) {
      graphics.setForegroundColor(style.of(pass == 0 ? Tint.WHOLE : Tint.GUIDE));
      graphics.setLineWidth(pass == 0 ? 5 : 2);
      graphics.drawOval(x - FOCUS, y - FOCUS, 2 * FOCUS, 2 * FOCUS);
      graphics.drawLine(x - FOCUS - FOCUS_ARM, y, x + FOCUS + FOCUS_ARM, y);
      graphics.drawLine(x, y - FOCUS - FOCUS_ARM, x, y + FOCUS + FOCUS_ARM);
    }
  }

  private void piece(Paper paper, PieceShape shape, double joint, int gap) {
    Graphics graphics = paper.graphics();
    graphics.setBackgroundColor(style.of(shape.piece().uncut() ? Tint.WHOLE : Tint.of(shape.piece().kind())));
    if (!shape.upright()) {
      paper.fillAndDraw(shape);
      return;
    }
    // The far edge is where the next piece starts, less one constant gap: so all joints look equally wide.
    Box box = shape.box();
    int left = paper.x(box.minX());
    int right = paper.x(box.maxX() + joint) - gap;
    int bottom = paper.y(box.minY());
    int top = paper.y(box.maxY() + joint) + gap;
    graphics.fillRectangle(left, top, Math.max(1, right - left), Math.max(1, bottom - top));
    if (!shape.piece().uncut() && right - left > 8 && bottom - top > 8) {
      graphics.drawRectangle(left, top, right - left - 1, bottom - top - 1);
    }
  }

  private void keys(Paper paper, PieceField field, Box part) {
    Graphics graphics = paper.graphics();
    graphics.setFont(style.small());
    graphics.setForegroundColor(style.of(Tint.FAINT_INK));
    int prefix = field.setOut().spec().id().length() + 1;
    field.visible(part, shape -> keyThatFits(paper, shape, prefix).ifPresent(key -> write(paper, shape, key)));
  }

  /** The whole key, or the key without the panel's id, whichever fits the piece. */
  private Optional<String> keyThatFits(Paper paper, PieceShape shape, int prefix) {
    double width = shape.box().width() * paper.scale() - 2 * PADDING;
    double height = shape.box().height() * paper.scale();
    String key = shape.piece().key();
    for (String words : List.of(key, key.substring(Math.min(prefix, key.length())))) {
      Dimension size = FigureUtilities.getTextExtents(words, style.small());
      if (size.width <= width && size.height <= height) {
        return Optional.of(words);
      }
    }
    return Optional.empty();
  }

  private void write(Paper paper, PieceShape shape, String words) {
    Box box = shape.box();
    if (shape.holds(box.centre().x(), box.centre().y())) {
      Dimension size = FigureUtilities.getTextExtents(words, style.small());
      paper.graphics().drawString(words, paper.x(box.centre().x()) - size.width / 2,
          paper.y(box.centre().y()) - size.height / 2);
    }
  }

  private void title(Paper paper, PanelPicture picture) {
    Graphics graphics = paper.graphics();
    int x = paper.x(picture.frame().x());
    int y = paper.y(picture.frame().top()) - TITLE_HEIGHT + 2;
    int room = paper.x(picture.frame().width());
    graphics.setFont(style.title());
    graphics.setForegroundColor(style.of(Tint.INK));
    graphics.drawString(picture.id(), x, y);
    int used = FigureUtilities.getTextExtents(picture.id(), style.title()).width + 8;
    graphics.setFont(style.text());
    int titleWidth = FigureUtilities.getTextExtents(picture.title(), style.text()).width;
    if (used + titleWidth <= room) {
      graphics.drawString(picture.title(), x + used, y + 1);
      used += titleWidth + 16;
    }
    int sizeWidth = FigureUtilities.getTextExtents(picture.size(), style.text()).width;
    if (used + sizeWidth <= room) {
      graphics.setForegroundColor(style.of(Tint.FAINT_INK));
      graphics.drawString(picture.size(), x + room - sizeWidth, y + 1);
    }
  }
}
