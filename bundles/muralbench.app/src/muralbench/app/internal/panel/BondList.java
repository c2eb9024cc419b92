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
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** The bonds there are, each with a small picture. */
final class BondList {
  private static final int WIDTH = 96;
  private static final int HEIGHT = 64;

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
        images.add(painter.image(setOut, WIDTH, HEIGHT));
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

  /** The sample of a bond; none if a contributed bond does not lay its own sample. */
  private static Optional<PanelSetOut> picture(Bond bond, BondRegistry registry) {
    try {
      BondRequest sample = bond.sample();
      Contour outline = bond.lay(sample).concentric() ? Contour.circle(new Vec(0, 0), 250)
          : Contour.rectangle(0, 0, 620, 400);
      return Optional.of(SetOut.panel(new PanelSpec("sample", "", "wall", "fixed", sample.tile(), sample.joint(), 0,
          outline, List.of(), new BondSpec(bond.kind(), sample.offset(), 0, sample.settings()),
          new OriginSpec.Balanced()), registry, Progress.NONE));
    } catch (InputException e) {
      return Optional.empty();
    }
  }
}
