// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.survey;

import java.util.Locale;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.model.LevelLineOutline;
import muralbench.setout.geometry.Vec;
import muralbench.setout.survey.AdjustedWall;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;

/** The measurements of one wall, with the wall they make and how true it is beside them. */
final class MeasuredWallPage extends WizardPage {
  private static final Messages TEXTS = Messages.of(MeasuredWallPage.class);
  private static final int PICTURE_WIDTH = 360;
  private static final int PICTURE_HEIGHT = 250;

  private final SurveyStart start;
  private final LengthUnit unit;
  private SurveyForm four;
  private SurveyForm line;
  private SurveyForm used;
  private Composite forms;
  private WallPicture picture;
  private TruePane trueness;
  private Optional<Measured> measured = Optional.empty();

  /** A page that begins with some measurements. */
  MeasuredWallPage(SurveyStart start, LengthUnit unit) {
    super("measured");
    this.start = start;
    this.unit = unit;
    setTitle(start.panel().isEmpty() ? TEXTS.text("page.new")
        : TEXTS.text("page.again", "panel", start.panel()));
    setDescription(TEXTS.text("page.description"));
  }

  /** What was typed, if it makes a wall. */
  Optional<Measured> measured() {
    return measured;
  }

  @Override
  public void createControl(Composite parent) {
    Composite body = new Composite(parent, SWT.NONE);
    GridLayoutFactory.swtDefaults().numColumns(2).margins(12, 10).spacing(16, 8).applyTo(body);
    createChoice(body);
    forms = new Composite(body, SWT.NONE);
    forms.setLayout(new StackLayout());
    GridDataFactory.fillDefaults().grab(false, true).applyTo(forms);
    four = new FourSidesForm(forms, this::changed);
    line = new LevelLineForm(forms, this::changed);
    picture = new WallPicture(body);
    GridDataFactory.fillDefaults().grab(true, true).hint(PICTURE_WIDTH, PICTURE_HEIGHT).applyTo(picture);
    Group group = new Group(body, SWT.NONE);
    group.setText(TEXTS.text(start.floor() ? "page.floor" : "page.true"));
    GridLayoutFactory.swtDefaults().margins(8, 6).applyTo(group);
    GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(group);
    trueness = new TruePane(group);
    GridDataFactory.fillDefaults().grab(true, false).applyTo(trueness.control());
    four.show(start.four(), unit);
    line.show(start.line(), unit);
    setControl(body);
    use(start.fromLevelLine() ? line : four);
  }

  @Override
  public void setVisible(boolean visible) {
    super.setVisible(visible);
    if (visible) {
      used.focus();
    }
  }

  private void createChoice(Composite body) {
    Composite row = new Composite(body, SWT.NONE);
    GridLayoutFactory.fillDefaults().numColumns(3).spacing(10, 0).applyTo(row);
    GridDataFactory.fillDefaults().span(2, 1).applyTo(row);
    new Label(row, SWT.NONE).setText(TEXTS.text("page.way"));
    choice(row, "page.four", !start.fromLevelLine(), () -> use(four));
    choice(row, "page.line", start.fromLevelLine(), () -> use(line));
  }

  private static void choice(Composite row, String key, boolean chosen, Runnable use) {
    Button button = new Button(row, SWT.RADIO);
    button.setText(TEXTS.text(key));
    button.setSelection(chosen);
    button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
      if (button.getSelection()) {
        use.run();
      }
    }));
  }

  private void use(SurveyForm form) {
    used = form;
    ((StackLayout) forms.getLayout()).topControl = form.control();
    forms.layout();
    changed();
  }

  private void changed() {
    if (used == null) {
      return;
    }
    measured = Optional.empty();
    setErrorMessage(null);
    setMessage(null);
    try {
      Measured found = used.measured();
      start.check(found.outline());
      measured = Optional.of(found);
      tell(found);
    } catch (InputException e) {
      if (used.missing().isPresent() && e.remedy().isEmpty() && e.place().isEmpty()) {
        setMessage(used.missing().get());
      } else {
        setErrorMessage(sentence(e));
      }
    }
    Optional<AdjustedWall> wall = measured.map(Measured::wall);
    picture.show(wall, measured.map(Measured::outline).filter(LevelLineOutline.class::isInstance)
        .map(outline -> ((LevelLineOutline) outline).getY()).orElse(Double.NaN), unit);
    trueness.show(wall, start.floor(), unit);
    setPageComplete(measured.isPresent());
  }

  private void tell(Measured found) {
    AdjustedWall wall = found.wall();
    String warning = MisfitWords.warning(wall, unit);
    if (start.onlyDrawn(found.outline())) {
      setMessage(TEXTS.text("drawn"), IMessageProvider.INFORMATION);
    } else if (!warning.isEmpty()) {
      setMessage(warning, IMessageProvider.WARNING);
    } else if (wall.spare() == 0) {
      Vec[] at = wall.fourCorners().toArray(Vec[]::new);
      setMessage(TEXTS.text("unchecked", "rising", LengthText.shown(at[0].distance(at[2]), unit), "falling",
          LengthText.shown(at[3].distance(at[1]), unit)), IMessageProvider.INFORMATION);
    } else {
      setMessage(TEXTS.text("agree"));
    }
  }

  private static String sentence(InputException e) {
    String problem = e.problem().substring(0, 1).toUpperCase(Locale.ROOT) + e.problem().substring(1);
    return e.remedy().isEmpty() ? problem : TEXTS.text("problem", "problem", problem, "remedy", e.remedy());
  }
}
