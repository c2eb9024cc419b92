// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.survey;

import muralbench.app.internal.Pictures;
import muralbench.base.Messages;
import muralbench.base.length.LengthUnit;
import muralbench.editor.OpenMural;
import muralbench.model.Outline;
import muralbench.model.Panel;
import muralbench.model.Surface;
import muralbench.setout.geometry.Box;
import org.eclipse.jface.wizard.Wizard;

/** Takes the measurements of a wall, for a new panel or for one there is; the caller makes the change. */
public final class MeasuredWallWizard extends Wizard {
  private final MeasuredWallPage page;

  private MeasuredWallWizard(SurveyStart start, LengthUnit unit) {
    page = new MeasuredWallPage(start, unit);
    setWindowTitle(Messages.of(MeasuredWallWizard.class).text(start.panel().isEmpty() ? "wizard.new" : "wizard.again"));
    setDefaultPageImageDescriptor(Pictures.descriptor("banner"));
  }

  /** For a new panel. */
  public static MeasuredWallWizard forNewPanel(OpenMural mural) {
    return new MeasuredWallWizard(SurveyStart.fresh(mural.setOut(), mural.units()), mural.units());
  }

  /** For a panel there is; measurements that make no wall are shown too, so that they can be put right. */
  public static MeasuredWallWizard forPanel(OpenMural mural, Panel panel) {
    return forOutline(panel.getId(), panel.getSurface() == Surface.FLOOR, panel.getOutline(), mural.units());
  }

  /**
   * For an outline there is.
   *
   * @param panel id of the panel it belongs to
   * @param floor whether it lies on the floor
   */
  public static MeasuredWallWizard forOutline(String panel, boolean floor, Outline outline, LengthUnit units) {
    return new MeasuredWallWizard(SurveyStart.of(panel, floor, outline, units), units);
  }

  /** The measurements, once the wizard is finished. */
  public Outline outline() {
    return page.measured().orElseThrow().outline();
  }

  /** The box around the wall, once the wizard is finished. */
  public Box box() {
    return page.measured().orElseThrow().wall().corners().stream()
        .map(at -> new Box(at.x(), at.y(), at.x(), at.y())).reduce(Box::and).orElseThrow();
  }

  @Override
  public void addPages() {
    addPage(page);
  }

  @Override
  public boolean performFinish() {
    return page.measured().isPresent();
  }
}
