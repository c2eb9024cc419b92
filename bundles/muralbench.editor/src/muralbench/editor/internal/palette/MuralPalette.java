// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.palette;

import muralbench.base.Messages;
import org.eclipse.gef.palette.MarqueeToolEntry;
import org.eclipse.gef.palette.PaletteGroup;
import org.eclipse.gef.palette.PaletteRoot;
import org.eclipse.gef.palette.SelectionToolEntry;
import org.eclipse.gef.palette.ToolEntry;

/** Builds the palette. */
public final class MuralPalette {
  private static final Messages TEXTS = Messages.of(MuralPalette.class);

  private MuralPalette() {}

  /** A palette with all tools, the selection tool chosen. */
  public static PaletteRoot create() {
    PaletteRoot root = new PaletteRoot();
    PaletteGroup pointers = new PaletteGroup(TEXTS.text("pointers"));
    ToolEntry select = new SelectionToolEntry();
    pointers.add(select);
    pointers.add(new MarqueeToolEntry());
    root.add(pointers);
    root.setDefaultEntry(select);
    return root;
  }
}
