// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.tools;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.length.LengthUnit;
import muralbench.editor.internal.commands.PlaceCommand;
import muralbench.editor.internal.geometry.Placement;
import muralbench.editor.internal.parts.MuralPart;
import muralbench.editor.internal.parts.Scene;
import muralbench.editor.internal.parts.ScenePart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.tools.ToolUtilities;
import org.eclipse.gef.ui.parts.GraphicalViewerKeyHandler;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

/** Arrow keys move what is selected: 1/4 in or 5 mm, with the shift key 1/16 in or 1 mm. */
public final class WallKeys extends GraphicalViewerKeyHandler {
  private static final double INCH_STEP = 25.4 / 4;
  private static final double INCH_FINE = 25.4 / 16;
  private static final double MILLIMETRE_STEP = 5;
  private static final double MILLIMETRE_FINE = 1;

  private final Scene scene;

  /** Keys of a viewer. */
  public WallKeys(GraphicalViewer viewer, Scene scene) {
    super(viewer);
    this.scene = scene;
  }

  @Override
  public boolean keyPressed(KeyEvent event) {
    boolean plain = (event.stateMask & (SWT.CTRL | SWT.ALT | SWT.COMMAND)) == 0;
    int dx = event.keyCode == SWT.ARROW_RIGHT ? 1 : event.keyCode == SWT.ARROW_LEFT ? -1 : 0;
    int dy = event.keyCode == SWT.ARROW_UP ? 1 : event.keyCode == SWT.ARROW_DOWN ? -1 : 0;
    if (plain && (dx != 0 || dy != 0)) {
      double step = step((event.stateMask & SWT.SHIFT) != 0);
      return nudge(dx * step, dy * step) || super.keyPressed(event);
    }
    return super.keyPressed(event);
  }

  private double step(boolean fine) {
    if (scene.mural().units() == LengthUnit.INCH) {
      return fine ? INCH_FINE : INCH_STEP;
    }
    return fine ? MILLIMETRE_FINE : MILLIMETRE_STEP;
  }

  private boolean nudge(double dx, double dy) {
    List<PlaceCommand.Place> places = new ArrayList<>();
    for (Object selected : ToolUtilities.getSelectionWithoutDependants(getViewer())) {
      if (selected instanceof ScenePart part && !(part instanceof MuralPart)) {
        Placement.frame(part.thing())
            .ifPresent(frame -> places.add(new PlaceCommand.Place(part.thing(), frame, frame.moved(dx, dy))));
      }
    }
    if (!places.isEmpty()) {
      scene.mural().execute(new PlaceCommand(scene.mural().mural(), places));
    }
    return !places.isEmpty();
  }
}
