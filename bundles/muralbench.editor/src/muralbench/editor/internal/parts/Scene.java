// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.parts;

import java.util.function.Consumer;
import muralbench.editor.OpenMural;
import muralbench.editor.internal.field.WallStyle;
import muralbench.editor.internal.geometry.WallPlane;

/**
 * What all parts of one editor share.
 *
 * @param mural the document
 * @param style colours and fonts
 * @param zoom the zoom of the wall
 * @param status takes a line for the status bar; empty to clear it
 */
public record Scene(OpenMural mural, WallStyle style, WallZoom zoom, Consumer<String> status) {
  /** Pixels for each millimetre at the present zoom. */
  public double pixelsPerMillimetre() {
    return zoom.getZoom() * WallPlane.UNITS;
  }

  /** Drawing units that take so many pixels at the present zoom. */
  public int unitsOfPixels(int pixels) {
    return (int) Math.ceil(pixels / zoom.getZoom());
  }
}
