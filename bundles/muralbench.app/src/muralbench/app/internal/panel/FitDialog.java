// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.editor.PanelPreview;
import muralbench.setout.fit.Alternative;
import muralbench.setout.fit.Alternative.Kind;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Shows the panel as it is and the choices beside it, the best first; one of them is taken. */
public final class FitDialog extends TitleAreaDialog {
  private static final Messages TEXTS = Messages.of(FitDialog.class);
  private static final int MOST_CHOICES = 6;
  private static final int SEEN = 4;
  private static final int CARD_WIDTH = 226;
  private static final int PICTURE_HEIGHT = 180;

  private final LengthUnit units;
  private final Alternative present;
  private final List<Alternative> cards = new ArrayList<>();
  private final List<Button> buttons = new ArrayList<>();
  private Alternative chosen;

  /** A dialog on ranked alternatives, the present state among them. */
  public FitDialog(Shell parent, LengthUnit units, List<Alternative> ranked) {
    super(parent);
    this.units = units;
    present = ranked.stream().filter(one -> one.kind() == Kind.PRESENT).findFirst().orElseThrow();
    cards.add(present);
    ranked.stream().filter(one -> one != present).limit(MOST_CHOICES).forEach(cards::add);
    chosen = ranked.get(0);
    setShellStyle(getShellStyle() | SWT.RESIZE);
  }

  /** What was chosen. */
  public Alternative chosen() {
    return chosen;
  }

  /** What is shown, from the left. */
  public List<Alternative> shown() {
    return List.copyOf(cards);
  }

  /** Chooses one of those shown. */
  public void choose(Alternative one) {
    chosen = one;
    for (int i = 0; i < buttons.size(); i++) {
      buttons.get(i).setSelection(cards.get(i) == one);
    }
    getButton(IDialogConstants.OK_ID).setEnabled(one != present);
  }

  @Override
  public void create() {
    super.create();
    getShell().setText(TEXTS.text("fit.title"));
    setTitle(TEXTS.text("fit.heading", "panel", present.spec().id()));
    setMessage(TEXTS.text(chosen == present ? "fit.message.best" : "fit.message"));
    choose(chosen);
  }

  @Override
  protected Control createDialogArea(Composite parent) {
    Composite area = (Composite) super.createDialogArea(parent);
    ScrolledComposite scrolled = new ScrolledComposite(area, SWT.H_SCROLL | SWT.V_SCROLL);
    GridDataFactory.fillDefaults().grab(true, true).applyTo(scrolled);
    Composite row = new Composite(scrolled, SWT.NONE);
    GridLayoutFactory.fillDefaults().numColumns(cards.size()).margins(10, 10).spacing(14, 0).applyTo(row);
    cards.forEach(one -> card(row, one));
    scrolled.setContent(row);
    Point size = row.computeSize(SWT.DEFAULT, SWT.DEFAULT);
    row.setSize(size);
    GridDataFactory.fillDefaults().grab(true, true)
        .hint(Math.min(cards.size(), SEEN) * (CARD_WIDTH + 14) + 20, size.y + 16).applyTo(scrolled);
    return area;
  }

  private void card(Composite row, Alternative one) {
    Composite card = new Composite(row, SWT.NONE);
    GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 5).applyTo(card);
    GridDataFactory.fillDefaults().hint(CARD_WIDTH, SWT.DEFAULT).applyTo(card);
    Button button = new Button(card, SWT.RADIO);
    button.setText(one.title());
    button.addListener(SWT.Selection, event -> choose(one));
    GridDataFactory.fillDefaults().span(2, 1).applyTo(button);
    buttons.add(button);
    PanelPreview picture = new PanelPreview(card);
    picture.show(Optional.of(one.setOut()));
    picture.addListener(SWT.MouseDown, event -> choose(one));
    picture.addListener(SWT.MouseDoubleClick, event -> take(one));
    GridDataFactory.fillDefaults().span(2, 1).hint(CARD_WIDTH, PICTURE_HEIGHT).applyTo(picture);
    String narrowest = one.smallestCut().isPresent() ? LengthText.shown(one.smallestCut().getAsDouble(), units) : "–";
    fact(card, "smallest", narrowest);
    fact(card, "cuts", String.valueOf(one.cuts()));
    fact(card, "joint", LengthText.fine(one.joint(), units));
    fact(card, "tiles", String.valueOf(one.tilesToOrder()));
    words(card, one.change());
    words(card, one.consequence());
  }

  private void take(Alternative one) {
    choose(one);
    if (one != present) {
      okPressed();
    }
  }

  private static void fact(Composite card, String name, String value) {
    new Label(card, SWT.NONE).setText(TEXTS.text("fit." + name));
    Label label = new Label(card, SWT.RIGHT);
    label.setText(value);
    GridDataFactory.fillDefaults().grab(true, false).applyTo(label);
  }

  private static void words(Composite card, String words) {
    Label label = new Label(card, SWT.WRAP);
    label.setText(words);
    GridDataFactory.fillDefaults().span(2, 1).hint(CARD_WIDTH, SWT.DEFAULT).applyTo(label);
  }

  @Override
  protected void createButtonsForButtonBar(Composite parent) {
    createButton(parent, IDialogConstants.OK_ID, TEXTS.text("fit.apply"), true);
    createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
  }
}
