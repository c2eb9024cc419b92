// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import muralbench.editor.OpenMural;
import muralbench.editor.internal.field.Tint;
import muralbench.editor.internal.field.WallStyle;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Placement;
import muralbench.editor.internal.parts.MuralPart;
import muralbench.editor.internal.parts.PanelPart;
import muralbench.editor.internal.parts.PartFactory;
import muralbench.editor.internal.parts.Scene;
import muralbench.editor.internal.parts.WallRoot;
import muralbench.editor.internal.parts.WallZoom;
import muralbench.editor.internal.tools.PieceReadout;
import muralbench.editor.internal.tools.WallGestures;
import muralbench.editor.internal.tools.WallKeys;
import muralbench.model.Opening;
import muralbench.model.Panel;
import muralbench.model.RepeatedOutline;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/** Sets up the viewer of the wall and finds things in it. */
public final class WallView {
  private final GraphicalViewer viewer;
  private final FigureCanvas canvas;
  private final Scene scene;
  private PanelPart marked;

  /** Sets up a viewer whose control exists; {@code status} takes lines for the status bar. */
  public WallView(GraphicalViewer viewer, OpenMural mural, Consumer<String> status) {
    this.viewer = viewer;
    this.canvas = (FigureCanvas) viewer.getControl();
    WallRoot root = new WallRoot(() -> MuralPart.extent(mural));
    viewer.setRootEditPart(root);
    scene = new Scene(mural, new WallStyle(canvas), root.zoom(), status);
    canvas.setBackground(scene.style().of(Tint.DESK));
    viewer.setEditPartFactory(new PartFactory(scene));
    viewer.setKeyHandler(new WallKeys(viewer, scene));
    WallGestures.on(canvas, scene.zoom());
    PieceReadout.on(viewer, canvas, scene);
    viewer.addSelectionChangedListener(this::selected);
    canvas.addListener(SWT.MouseDown, event -> unmark());
  }

  /** What the parts of the wall share. */
  public Scene scene() {
    return scene;
  }

  /** Shows the mural, as large as fits once the control has its size. */
  public void show() {
    viewer.setContents(scene.mural().mural());
    canvas.addListener(SWT.Resize, new Listener() {
      @Override
      public void handleEvent(Event event) {
        if (Math.min(canvas.getClientArea().width, canvas.getClientArea().height) > 2 * WallZoom.MARGIN) {
          canvas.removeListener(SWT.Resize, this);
          canvas.getDisplay().asyncExec(() -> fitIfThere());
        }
      }
    });
  }

  private void fitIfThere() {
    if (!canvas.isDisposed()) {
      scene.zoom().fit();
    }
  }

  /**
   * Selects a panel or opening by its id, or the panel of a piece by its key, and brings it into view. Pieces of the
   * panel that are given by their keys are marked, with the whole panel in view, until the next selection.
   */
  public boolean reveal(String place, Collection<?> keys) {
    Optional<EObject> thing = find(place);
    EditPart part = thing.map(found -> (EditPart) parts().get(found)).orElse(null);
    if (part != null) {
      viewer.select(part);
      unmark();
      List<Contour> pieces = thing.get() instanceof Panel panel ? pieces(panel, keys) : List.of();
      if (part instanceof PanelPart panel && !pieces.isEmpty()) {
        marked = panel;
        panel.mark(pieces);
        Placement.frame(panel.thing()).ifPresent(scene.zoom()::fit);
      } else {
        target(place, thing.get()).ifPresent(this::bringIntoView);
      }
    }
    return part != null;
  }

  private List<Contour> pieces(Panel panel, Collection<?> keys) {
    return scene.mural().setOut(panel).stream().flatMap(setOut -> setOut.pieces().stream())
        .filter(piece -> keys.contains(piece.key())).map(Piece::outline).toList();
  }

  private void selected(SelectionChangedEvent event) {
    if (!event.getStructuredSelection().toList().contains(marked)) {
      unmark();
    }
  }

  private void unmark() {
    if (marked != null) {
      marked.mark(List.of());
      marked = null;
    }
  }

  private Map<?, ?> parts() {
    return viewer.getEditPartRegistry();
  }

  private Optional<EObject> find(String place) {
    for (Panel panel : scene.mural().mural().getPanels()) {
      if (place.equals(panel.getId()) || piece(panel, place).isPresent() || opening(panel, place).isPresent()) {
        return Optional.of(panel);
      }
      for (Opening opening : panel.getOpenings()) {
        if (place.equals(opening.getId())) {
          return Optional.of(opening);
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Piece> piece(Panel panel, String key) {
    return scene.mural().setOut(panel)
        .flatMap(setOut -> setOut.pieces().stream().filter(piece -> piece.key().equals(key)).findAny());
  }

  /** An opening that a panel has from the one it repeats. */
  private Optional<Box> opening(Panel panel, String id) {
    return panel.getOutline() instanceof RepeatedOutline
        ? scene.mural().setOut(panel).flatMap(setOut -> setOut.spec().openings().stream()
            .filter(opening -> opening.id().equals(id)).map(opening -> opening.outline().box()).findAny())
        : Optional.empty();
  }

  private Optional<Frame> target(String place, EObject thing) {
    Optional<Frame> piece = thing instanceof Panel panel
        ? piece(panel, place).map(Piece::box).or(() -> opening(panel, place)).map(Frame::of) : Optional.empty();
    return piece.isPresent() ? piece : Placement.frame(thing);
  }

  private void bringIntoView(Frame frame) {
    scene.zoom().show(frame);
  }
}
