// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import muralbench.editor.MuralEditor;
import muralbench.editor.MuralEditorInput;
import muralbench.editor.OpenMural;
import muralbench.model.Mural;
import muralbench.model.Opening;
import muralbench.model.Panel;
import muralbench.model.RectangleOutline;
import muralbench.model.file.MuralFile;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.SWTGraphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.editparts.ZoomManager;
import org.eclipse.gef.handles.HandleBounds;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.PartInitException;

/** An open mural editor as a person handles it: looking, pointing, dragging. */
final class Wall {
  private final MuralEditor editor;
  private final GraphicalViewer viewer;
  private final FigureCanvas canvas;

  private Wall(MuralEditor editor) {
    this.editor = editor;
    this.viewer = (GraphicalViewer) editor.getAdapter(GraphicalViewer.class);
    this.canvas = (FigureCanvas) viewer.getControl();
  }

  /** Saves a mural to a file, opens it and waits until it is on the screen. */
  static Wall open(Mural mural, Path file) throws Exception {
    MuralFile.write(mural, file);
    return open(file);
  }

  /** Opens a file and waits until it is on the screen. */
  static Wall open(Path file) throws PartInitException {
    Wall wall = new Wall((MuralEditor) DesktopTest.page().openEditor(MuralEditorInput.of(file), MuralEditor.ID));
    DesktopTest.await("the wall", () -> wall.canvas.getSize().x > 100 && wall.zoom().getZoom() < 0.9
        && !wall.mural().busy());
    return wall;
  }

  MuralEditor editor() {
    return editor;
  }

  OpenMural mural() {
    return editor.openMural();
  }

  GraphicalViewer viewer() {
    return viewer;
  }

  FigureCanvas canvas() {
    return canvas;
  }

  ZoomManager zoom() {
    return (ZoomManager) editor.getAdapter(ZoomManager.class);
  }

  Panel panel(int index) {
    return mural().mural().getPanels().get(index);
  }

  Opening opening(int panel) {
    return panel(panel).getOpenings().get(0);
  }

  static RectangleOutline rectangle(Panel panel) {
    return (RectangleOutline) panel.getOutline();
  }

  EditPart part(Object thing) {
    return (EditPart) viewer.getEditPartRegistry().get(thing);
  }

  /** The place of a thing on the canvas, pixels. */
  Rectangle place(Object thing) {
    GraphicalEditPart part = (GraphicalEditPart) part(thing);
    Rectangle bounds = ((HandleBounds) part.getFigure()).getHandleBounds().getCopy();
    part.getFigure().translateToAbsolute(bounds);
    return bounds;
  }

  Point middle(Object thing) {
    Rectangle place = place(thing);
    return new Point(place.x + place.width / 2, place.y + place.height / 2);
  }

  /** Presses the first button at a point of the canvas and lets go there. */
  void click(Point at) {
    mouse(SWT.MouseMove, at, 0);
    mouse(SWT.MouseDown, at, 0);
    mouse(SWT.MouseUp, at, SWT.BUTTON1);
  }

  /** Drags with the first button in a few steps. */
  void drag(Point from, Point to) {
    press(from, to);
    mouse(SWT.MouseUp, to, SWT.BUTTON1);
  }

  /** Drags and keeps the button down. */
  void press(Point from, Point to) {
    mouse(SWT.MouseMove, from, 0);
    mouse(SWT.MouseDown, from, 0);
    for (int step = 1; step <= 8; step++) {
      mouse(SWT.MouseMove, new Point(from.x + (to.x - from.x) * step / 8, from.y + (to.y - from.y) * step / 8),
          SWT.BUTTON1);
    }
  }

  void mouse(int type, Point at, int mask) {
    Event event = new Event();
    event.type = type;
    event.x = at.x;
    event.y = at.y;
    event.button = type == SWT.MouseMove ? 0 : 1;
    event.count = 1;
    event.stateMask = mask;
    event.time = (int) System.currentTimeMillis();
    canvas.notifyListeners(type, event);
    DesktopTest.settle();
  }

  /** Turns the wheel with the control key held; positive towards the wall. */
  void wheel(Point at, int notches) {
    Event event = new Event();
    event.x = at.x;
    event.y = at.y;
    event.count = 3 * notches;
    event.stateMask = SWT.MOD1;
    event.detail = SWT.SCROLL_LINE;
    event.doit = true;
    canvas.notifyListeners(SWT.MouseVerticalWheel, event);
    DesktopTest.settle();
  }

  void key(int keyCode, char character, int mask) {
    Event event = new Event();
    event.keyCode = keyCode;
    event.character = character;
    event.stateMask = mask;
    canvas.notifyListeners(SWT.KeyDown, event);
    DesktopTest.settle();
  }

  /** The colour of the wall at a point of the canvas, painted as it is now. */
  RGB colour(Point at) {
    AtomicReference<RGB> colour = new AtomicReference<>();
    paint(picture -> colour.set(picture.palette.getRGB(picture.getPixel(at.x, at.y))));
    return colour.get();
  }

  /** Paints the wall once, as it is now, and tells how long that took, milliseconds. */
  double paint() {
    return paint(picture -> { });
  }

  private double paint(Consumer<ImageData> look) {
    Image image = new Image(canvas.getDisplay(), canvas.getSize().x, canvas.getSize().y);
    GC gc = new GC(image);
    SWTGraphics graphics = new SWTGraphics(gc);
    long start = System.nanoTime();
    canvas.getViewport().paint(graphics);
    double took = (System.nanoTime() - start) / 1e6;
    graphics.dispose();
    gc.dispose();
    look.accept(image.getImageData());
    image.dispose();
    return took;
  }
}
