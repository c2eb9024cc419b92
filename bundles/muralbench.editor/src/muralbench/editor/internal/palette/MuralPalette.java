// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.palette;

import muralbench.base.Messages;
import muralbench.editor.internal.Icons;
import muralbench.editor.internal.tools.NewThingTool;
import org.eclipse.gef.palette.CombinedTemplateCreationEntry;
import org.eclipse.gef.palette.MarqueeToolEntry;
import org.eclipse.gef.palette.PaletteContainer;
import org.eclipse.gef.palette.PaletteDrawer;
import org.eclipse.gef.palette.PaletteGroup;
import org.eclipse.gef.palette.PaletteRoot;
import org.eclipse.gef.palette.PanningSelectionToolEntry;
import org.eclipse.gef.palette.ToolEntry;
import org.eclipse.gef.requests.CreationFactory;

/** Builds the palette. */
public final class MuralPalette {
  private static final Messages TEXTS = Messages.of(MuralPalette.class);

  private MuralPalette() {}

  /** A palette with all tools, the selection tool chosen. */
  public static PaletteRoot create() {
    PaletteRoot root = new PaletteRoot();
    PaletteGroup pointers = new PaletteGroup(TEXTS.text("pointers"));
    ToolEntry select = new PanningSelectionToolEntry(TEXTS.text("select"), TEXTS.text("select.hint"));
    icons(select, "select");
    pointers.add(select);
    ToolEntry marquee = new MarqueeToolEntry(TEXTS.text("marquee"), TEXTS.text("marquee.hint"));
    icons(marquee, "marquee");
    pointers.add(marquee);
    root.add(pointers);
    PaletteContainer wall = new PaletteDrawer(TEXTS.text("wall"));
    add(wall, NewThing.PANEL, "panel");
    root.add(wall);
    PaletteContainer openings = new PaletteDrawer(TEXTS.text("openings"));
    add(openings, NewThing.OUTLET, "outlet");
    add(openings, NewThing.WINDOW, "window");
    add(openings, NewThing.ROUND, "round");
    root.add(openings);
    root.setDefaultEntry(select);
    return root;
  }

  private static void add(PaletteContainer drawer, NewThing thing, String name) {
    ToolEntry entry = new CombinedTemplateCreationEntry(TEXTS.text(name), TEXTS.text(name + ".hint"), thing,
        new Kind(thing), Icons.small(name), Icons.large(name));
    entry.setToolClass(NewThingTool.class);
    drawer.add(entry);
  }

  private static void icons(ToolEntry entry, String name) {
    entry.setSmallIcon(Icons.small(name));
    entry.setLargeIcon(Icons.large(name));
  }

  /** Tells the policies what is to be made; the commands make it. */
  private record Kind(NewThing thing) implements CreationFactory {
    @Override
    public Object getNewObject() {
      return thing;
    }

    @Override
    public Object getObjectType() {
      return thing;
    }
  }
}
