// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import muralbench.app.internal.panel.MovementChoice.Kind;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.editor.OpenMural;
import muralbench.editor.PanelPreview;
import muralbench.model.Panel;
import muralbench.pattern.work.PatternReader;
import muralbench.setout.MuralReader;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.MovementAxis;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementPlan;
import muralbench.setout.movement.MovementSpec;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Chooses the movement joints of a panel; the panel is set out beside the user interface as they change. */
public final class MovementDialog extends TrialDialog {
  private static final Messages TEXTS = Messages.of(MovementDialog.class);
  private static final int INDENT = 24;
  private static final int WORDS_WIDTH = 360;
  private static final int PICTURE_WIDTH = 430;
  private static final double SEEN = 0.01;
  private static final int REACH = 5;

  private final OpenMural mural;
  private final PanelSpec panel;
  private final MovementSpec.ByRule rule;
  private final LengthUnit units;
  private MovementChoice choice;
  private JointTable table;
  private PanelSetOut made;
  private boolean takeOver;

  /**
   * A dialog for a panel.
   *
   * @throws InputException if the panel cannot be read
   */
  public MovementDialog(Shell parent, OpenMural mural, Panel panel) throws InputException {
    super(parent, TEXTS.text("movement.apply"));
    this.mural = mural;
    this.panel = PatternReader.panel(panel);
    this.rule = MuralReader.movementRule(panel);
    this.units = mural.units();
    this.choice = MovementChoice.of(panel);
  }

  /** What was chosen. */
  public MovementChoice choice() {
    return choice;
  }

  /** The set-out with what is chosen now; none while it is worked out or cannot be. */
  public Optional<PanelSetOut> made() {
    return Optional.ofNullable(made);
  }

  @Override
  public void create() {
    super.create();
    getShell().setText(TEXTS.text("movement.title"));
    setTitle(TEXTS.text("movement.heading", "panel", panel.id()));
    table.show(choice.joints(), choice.kind() == Kind.HAND);
    ask();
  }

  @Override
  protected Control createDialogArea(Composite parent) {
    Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
    GridLayoutFactory.fillDefaults().numColumns(2).margins(10, 10).spacing(16, 6).applyTo(area);
    GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
    startTrial(parent, mural.bonds(), units);
    Composite left = new Composite(area, SWT.NONE);
    GridLayoutFactory.fillDefaults().spacing(8, 6).applyTo(left);
    GridDataFactory.fillDefaults().grab(false, true).applyTo(left);
    for (Kind kind : Kind.values()) {
      option(left, kind);
    }
    table = new JointTable(left, units, panel.outline().box(), width(), this::edited);
    GridDataFactory.fillDefaults().grab(true, true).indent(INDENT, 0).applyTo(table.control());
    PanelPreview preview = addPreview(area);
    GridDataFactory.fillDefaults().grab(true, true).hint(PICTURE_WIDTH, SWT.DEFAULT).applyTo(preview);
    preview.addListener(SWT.MouseDown, event -> preview.wall(event.x, event.y).ifPresent(this::pick));
    return area;
  }

  /** A click on a joint in the picture selects it in the table. */
  private void pick(Vec at) {
    made().stream().flatMap(setOut -> setOut.movement().stream())
        .filter(joint -> distance(joint, at) <= joint.width() / 2 + preview().millimetres(REACH))
        .min(Comparator.comparingDouble(joint -> distance(joint, at))).ifPresent(table::select);
  }

  private static double distance(MovementJoint joint, Vec at) {
    return Math.abs(joint.at() - (joint.axis() == MovementAxis.VERTICAL ? at.x() : at.y()));
  }

  private double width() {
    return rule.rule().width(rule.rule().greatestSpacing(), rule.swing(), panel.joint());
  }

  private void option(Composite left, Kind kind) {
    String key = "movement." + kind.name().toLowerCase(Locale.ROOT);
    Button button = new Button(left, SWT.RADIO);
    button.setText(TEXTS.text(key));
    button.setSelection(choice.kind() == kind);
    button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
      if (button.getSelection()) {
        choose(kind);
      }
    }));
    Label words = new Label(left, SWT.WRAP);
    words.setText(TEXTS.text(key + ".hint", "spacing", LengthText.shownInFeet(rule.rule().greatestSpacing(), units),
        "width", LengthText.fine(width(), units)));
    GridDataFactory.fillDefaults().indent(INDENT, 0).hint(WORDS_WIDTH, SWT.DEFAULT).applyTo(words);
  }

  /** Where nothing was placed by hand yet, the joints that are there now are taken over. */
  private void choose(Kind kind) {
    boolean first = kind == Kind.HAND && choice.joints().isEmpty();
    boolean byRule = choice.kind() == Kind.RULE;
    choice = new MovementChoice(kind, first && made != null ? taken(made) : choice.joints());
    if (first && made == null && byRule) {
      // The joints of the rule are on their way.
      takeOver = true;
      return;
    }
    takeOver = false;
    table.show(choice.joints(), kind == Kind.HAND);
    ask();
  }

  /** Joints that are there, at round places: the set-out puts them on the same joints of the bond again. */
  private List<MovementJoint> taken(PanelSetOut setOut) {
    return setOut.movement().stream().map(joint -> new MovementJoint(joint.axis(),
        LengthText.rounded(joint.at(), units), joint.width())).toList();
  }

  private void edited() {
    choice = new MovementChoice(choice.kind(), table.joints());
    ask();
  }

  private void ask() {
    made = null;
    allow(false);
    Optional<String> problem = table.problem();
    if (problem.isPresent()) {
      trial().drop();
      refuse(problem.get());
    } else if (choice.kind() == Kind.HAND && choice.joints().isEmpty()) {
      trial().drop();
      preview().show(Optional.empty());
      setErrorMessage(null);
      setMessage(TEXTS.text("movement.empty"));
    } else {
      setErrorMessage(null);
      setMessage(TEXTS.text("movement.settingOut"));
      trial().ask(panel.withMovement(choice.spec(rule)));
    }
  }

  @Override
  void accept(PanelSetOut setOut) {
    made = setOut;
    if (takeOver) {
      choose(Kind.HAND);
      return;
    }
    preview().show(Optional.of(setOut));
    if (choice.kind() != Kind.HAND) {
      table.show(setOut.movement(), false);
    }
    setErrorMessage(null);
    double bay = MovementPlan.greatestBay(setOut, setOut.movement().stream().map(MovementJoint::line).toList());
    List<MovementJoint> joints = setOut.movement();
    boolean far = bay > rule.rule().greatestSpacing() + SEEN;
    setMessage(TEXTS.text(far ? "movement.far" : joints.isEmpty() ? "movement.needless"
        : joints.size() == 1 ? "movement.good.one" : "movement.good", "count",
        joints.size(), "bay", LengthText.shownInFeet(bay, units), "spacing",
        LengthText.shownInFeet(rule.rule().greatestSpacing(), units)),
        far ? IMessageProvider.WARNING : IMessageProvider.NONE);
    allow(true);
  }
}
