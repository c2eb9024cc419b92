// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.palette;

import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.draw2d.PositionConstants;
import org.eclipse.gef.ui.palette.FlyoutPaletteComposite;
import org.eclipse.gef.ui.palette.FlyoutPaletteComposite.FlyoutPreferences;

/** Remembers where the palette is docked, how wide it is and whether it is open; open at the left to begin with. */
public final class FlyoutSettings implements FlyoutPreferences {
  private static final int WIDTH = 150;

  private final IEclipsePreferences settings = InstanceScope.INSTANCE.getNode("muralbench.editor");

  @Override
  public int getDockLocation() {
    return settings.getInt("palette.dock", PositionConstants.WEST);
  }

  @Override
  public int getPaletteState() {
    return settings.getInt("palette.state", FlyoutPaletteComposite.STATE_PINNED_OPEN);
  }

  @Override
  public int getPaletteWidth() {
    return settings.getInt("palette.width", WIDTH);
  }

  @Override
  public void setDockLocation(int location) {
    settings.putInt("palette.dock", location);
  }

  @Override
  public void setPaletteState(int state) {
    settings.putInt("palette.state", state);
  }

  @Override
  public void setPaletteWidth(int width) {
    settings.putInt("palette.width", width);
  }
}
