// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import java.util.Optional;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.editor.PanelPreview;
import muralbench.setout.BondSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.bond.Bond;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.bond.SettingText;
import muralbench.setout.geometry.Box;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;

/** Chooses the bond of a panel with its settings; the panel is set out beside the user interface as they are typed. */
public final class BondDialog extends TrialDialog {
  private static final Messages TEXTS = Messages.of(BondDialog.class);
  private static final int LIST_WIDTH = 260;
  private static final int FIELDS_WIDTH = 370;
  private static final int PICTURE_WIDTH = 380;
  private static final int HEIGHT = 500;

  private final PanelSpec panel;
  private final BondRegistry bonds;
  private final LengthUnit units;
  private BondList list;
  private BondFields fields;
  private BondSpec chosen;

  /** A dialog for a panel. */
  public BondDialog(Shell parent, PanelSpec panel, BondRegistry bonds, LengthUnit units) {
    super(parent, TEXTS.text("bond.apply"));
    this.panel = panel;
    this.bonds = bonds;
    this.units = units;
  }

  /** The bond that was chosen; null as long as what is typed cannot be laid. */
  public BondSpec chosen() {
    return chosen;
  }

  @Override
  public void create() {
    super.create();
    getShell().setText(TEXTS.text("bond.title"));
    setTitle(TEXTS.text("bond.heading", "panel", panel.id()));
    changed();
  }

  @Override
  protected Control createDialogArea(Composite parent) {
    Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
    GridLayoutFactory.fillDefaults().numColumns(3).margins(10, 10).spacing(14, 10).applyTo(area);
    GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
    startTrial(parent, bonds, units);
    list = new BondList(area, bonds, this::select);
    GridDataFactory.fillDefaults().grab(false, true).hint(LIST_WIDTH, HEIGHT).applyTo(list.control());
    Composite middle = new Composite(area, SWT.NONE);
    GridLayoutFactory.fillDefaults().applyTo(middle);
    GridDataFactory.fillDefaults().grab(false, true).hint(FIELDS_WIDTH, SWT.DEFAULT).applyTo(middle);
    fields = new BondFields(middle, units, this::changed);
    GridDataFactory.fillDefaults().grab(true, false).applyTo(fields.control());
    PanelPreview preview = addPreview(area);
    GridDataFactory.fillDefaults().grab(true, true).hint(PICTURE_WIDTH, SWT.DEFAULT).applyTo(preview);
    Bond now = bonds.find(panel.bond().kind()).orElse(bonds.all().get(0));
    list.select(now);
    fields.show(now, now.kind().equals(panel.bond().kind()) ? panel.bond() : fresh(now));
    return area;
  }

  /** Chooses a bond with the offset of its sample and settings to begin with, or as the panel has it. */
  public void select(Bond bond) {
    list.select(bond);
    fields.show(bond, bond.kind().equals(panel.bond().kind()) ? panel.bond() : fresh(bond));
    changed();
  }

  private BondSpec fresh(Bond bond) {
    Box box = panel.outline().box();
    return new BondSpec(bond.kind(), bond.sample().offset(), panel.bond().rotation(),
        SettingText.start(bond, box.width(), box.height(), panel.tile(), panel.joint(), units));
  }

  private void changed() {
    chosen = null;
    allow(false);
    try {
      trial().ask(panel.withBond(fields.spec(panel)));
    } catch (InputException e) {
      trial().drop();
      refuse(e.problem() + ". " + e.remedy());
    }
  }

  @Override
  void accept(PanelSetOut made) {
    chosen = made.spec().bond();
    preview().show(Optional.of(made));
    setErrorMessage(null);
    setMessage(TEXTS.text("bond.message", "pieces", made.pieces().size(), "cuts", made.cut(), "tiles",
        made.tilesToOrder(), "joint", LengthText.fine(panel.joint(), units)));
    allow(true);
  }
}
