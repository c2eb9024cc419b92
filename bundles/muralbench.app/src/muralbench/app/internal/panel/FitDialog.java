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
import muralbench.setout.fit.FitAlternatives;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/**
 * Shows the panel as it is and the best three choices beside it, the best first, more of them when asked for; one of
 * them is taken.
 */
public final class FitDialog extends TitleAreaDialog {
  private static final Messages TEXTS = Messages.of(FitDialog.class);
  /** The best alternatives that are shown at first. */
  private static final int FIRST_CHOICES = 3;
  private static final int MOST_CHOICES = 6;
  private static final int CARD_WIDTH = 226;
  private static final int PICTURE_HEIGHT = 180;
  private static final int MORE_ID = IDialogConstants.CLIENT_ID + 1;

  private final LengthUnit units;
  private final Alternative present;
  private final List<Alternative> others;
  private final List<Alternative> cards = new ArrayList<>();
  private final List<Button> buttons = new ArrayList<>();
  private ScrolledComposite scrolled;
  private Composite row;
  private Alternative chosen;

  /** A dialog on ranked alternatives, the present state among them. */
  public FitDialog(Shell parent, LengthUnit units, List<Alternative> ranked) {
    super(parent);
    this.units = units;
    present = ranked.stream().filter(one -> one.kind() == Kind.PRESENT).findFirst().orElseThrow();
    cards.add(present);
    cards.addAll(FitAlternatives.shortlist(ranked, FIRST_CHOICES));
    others = FitAlternatives.shortlist(ranked, MOST_CHOICES).stream().filter(one -> !cards.contains(one)).toList();
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
    scrolled = new ScrolledComposite(area, SWT.H_SCROLL | SWT.V_SCROLL);
    row = new Composite(scrolled, SWT.NONE);
    cards.forEach(this::card);
    scrolled.setContent(row);
    lay();
    return area;
  }

  private void lay() {
    GridLayoutFactory.fillDefaults().numColumns(cards.size()).margins(10, 10).spacing(14, 0).applyTo(row);
    Point size = row.computeSize(SWT.DEFAULT, SWT.DEFAULT);
    row.setSize(size);
    GridDataFactory.fillDefaults().grab(true, true).hint(size.x, size.y).applyTo(scrolled);
  }

  /** Shows what else there is, in a wider window as far as the screen allows. */
  private void more() {
    getButton(MORE_ID).setEnabled(false);
    others.forEach(this::card);
    cards.addAll(others);
    lay();
    Rectangle screen = getShell().getMonitor().getClientArea();
    Rectangle now = getShell().getBounds();
    Point wanted = getShell().computeSize(SWT.DEFAULT, SWT.DEFAULT);
    int width = Math.min(screen.width, Math.max(now.width, wanted.x));
    int left = Math.max(screen.x, Math.min(now.x - (width - now.width) / 2, screen.x + screen.width - width));
    int bar = scrolled.getHorizontalBar().getSize().y;
    getShell().setBounds(left, now.y, width, Math.max(now.height, wanted.y + bar));
    choose(chosen);
  }

  private void card(Alternative one) {
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
  protected void buttonPressed(int id) {
    if (id == MORE_ID) {
      more();
    } else {
      super.buttonPressed(id);
    }
  }

  @Override
  protected void createButtonsForButtonBar(Composite parent) {
    if (!others.isEmpty()) {
      createButton(parent, MORE_ID, TEXTS.text("fit.more"), false);
    }
    createButton(parent, IDialogConstants.OK_ID, TEXTS.text("fit.apply"), true);
    createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
  }
}
