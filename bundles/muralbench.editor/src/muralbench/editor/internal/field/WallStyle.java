// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.field;

import java.util.EnumMap;
import java.util.Map;
import org.eclipse.jface.resource.ColorDescriptor;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;

/** The colours and fonts of one editor; given back when its control is disposed. */
public final class WallStyle {
  private final LocalResourceManager resources;
  private final Map<Tint, Color> colours = new EnumMap<>(Tint.class);
  private final Font small;
  private final Font text;
  private final Font title;

  /** The style for an editor that lives as long as {@code owner}. */
  public WallStyle(Control owner) {
    resources = new LocalResourceManager(JFaceResources.getResources(), owner);
    for (Tint tint : Tint.values()) {
      RGB rgb = new RGB(tint.rgb() >> 16 & 0xFF, tint.rgb() >> 8 & 0xFF, tint.rgb() & 0xFF);
      colours.put(tint, resources.create(ColorDescriptor.createFrom(rgb)));
    }
    small = font(8, SWT.NORMAL);
    text = font(9, SWT.NORMAL);
    title = font(10, SWT.BOLD);
  }

  private Font font(int points, int style) {
    FontDescriptor usual = FontDescriptor.createFrom(JFaceResources.getDialogFont());
    return resources.create(usual.setHeight(points).setStyle(style));
  }

  /** A colour. */
  public Color of(Tint tint) {
    return colours.get(tint);
  }

  /** For keys and ruler figures. */
  public Font small() {
    return small;
  }

  /** For ordinary words. */
  public Font text() {
    return text;
  }

  /** For the names of panels. */
  public Font title() {
    return title;
  }
}
