// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.editor.PanelPreview;
import muralbench.setout.BondSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import muralbench.setout.bond.Bond;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.bond.BondRequest;
import muralbench.setout.bond.Pattern.Repeat;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** The bonds there are, each with a small picture. */
final class BondList {
  private static final int WIDTH = 66;
  private static final int HEIGHT = 40;

  private final Table table;
  private final List<Bond> bonds;

  BondList(Composite parent, BondRegistry registry, Consumer<Bond> selected) {
    table = new Table(parent, SWT.BORDER | SWT.SINGLE | SWT.V_SCROLL);
    bonds = registry.all();
    PanelPreview painter = new PanelPreview(parent);
    List<Image> images = new ArrayList<>();
    for (Bond bond : bonds) {
      TableItem item = new TableItem(table, SWT.NONE);
      item.setText(bond.label());
      picture(bond, registry).ifPresent(setOut -> {
        images.add(painter.image(setOut, repeat(bond, setOut), WIDTH, HEIGHT));
        item.setImage(images.get(images.size() - 1));
      });
    }
    painter.dispose();
    table.addListener(SWT.Selection, event -> selected.accept(bonds.get(table.getSelectionIndex())));
    table.addListener(SWT.Dispose, event -> images.forEach(Image::dispose));
  }

  Table control() {
    return table;
  }

  void select(Bond bond) {
    table.setSelection(bonds.indexOf(bond));
    table.showSelection();
  }

  /** The faces of one repeat, where the sample begins; none of a bond that does not repeat. */
  private static List<Contour> repeat(Bond bond, PanelSetOut setOut) {
    try {
      Repeat repeat = bond.lay(bond.sample()).repeat().orElse(null);
      if (repeat == null) {
        return List.of();
      }
      Vec middle = repeat.faces().stream().map(Contour::box).reduce(Box::and).orElseThrow().centre();
      Vec wanted = setOut.spec().outline().box().centre();
      return repeat.faces().stream()
          .map(face -> face.moved(Motion.shift(nearest(setOut.origin(), repeat, wanted.minus(middle))))).toList();
    } catch (InputException e) {
      return List.of();
    }
  }

  /** The shift by whole repeats from the start of the set-out that comes nearest to a wanted one. */
  private static Vec nearest(Vec start, Repeat repeat, Vec wanted) {
    Vec way = wanted.minus(start);
    double area = repeat.along().cross(repeat.across());
    double a = Math.rint(way.cross(repeat.across()) / area);
    double b = Math.rint(repeat.along().cross(way) / area);
    return start.plus(repeat.along().times(a)).plus(repeat.across().times(b));
  }

  /**
   * The sample of a bond, from a given start, so that the dialog opens at once; none if a contributed bond does not lay
   * its own sample.
   */
  private static Optional<PanelSetOut> picture(Bond bond, BondRegistry registry) {
    try {
      BondRequest sample = bond.sample();
      Contour outline = bond.lay(sample).concentric() ? Contour.circle(new Vec(0, 0), 250)
          : Contour.rectangle(0, 0, 620, 400);
      return Optional.of(SetOut.panel(new PanelSpec("sample", "", "wall", "fixed", sample.tile(), sample.joint(), 0,
          outline, List.of(), new BondSpec(bond.kind(), sample.offset(), 0, sample.settings()),
          new OriginSpec.At(new Vec(0, 0))), registry, Progress.NONE));
    } catch (InputException e) {
      return Optional.empty();
    }
  }
}
