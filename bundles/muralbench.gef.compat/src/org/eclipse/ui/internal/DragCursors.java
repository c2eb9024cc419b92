// SPDX-License-Identifier: EPL-2.0
package org.eclipse.ui.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Cursor;
import org.eclipse.swt.widgets.Display;

/** The cursors the palette of the graphical framework asks for while it is dragged; system cursors serve. */
public final class DragCursors {
  public static final int INVALID = 0;
  public static final int LEFT = 1;
  public static final int RIGHT = 2;
  public static final int TOP = 3;
  public static final int BOTTOM = 4;
  public static final int CENTER = 5;
  public static final int OFFSCREEN = 6;
  public static final int FASTVIEW = 7;

  private DragCursors() {}

  /** The cursor for one of the constants of this class. */
  public static Cursor getCursor(int code) {
    int style = switch (code) {
      case LEFT -> SWT.CURSOR_SIZEW;
      case RIGHT -> SWT.CURSOR_SIZEE;
      case TOP -> SWT.CURSOR_SIZEN;
      case BOTTOM -> SWT.CURSOR_SIZES;
      case CENTER, OFFSCREEN, FASTVIEW -> SWT.CURSOR_SIZEALL;
      default -> SWT.CURSOR_NO;
    };
    return Display.getCurrent().getSystemCursor(style);
  }
}
