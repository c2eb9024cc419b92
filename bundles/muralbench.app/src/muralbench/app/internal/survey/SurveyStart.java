// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.survey;

import muralbench.base.InputException;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.model.LevelLineOutline;
import muralbench.model.LevelStation;
import muralbench.model.MeasuredOutline;
import muralbench.model.MuralFactory;
import muralbench.model.Outline;
import muralbench.setout.MuralReader;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.geometry.Box;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * What the measurements begin with.
 *
 * @param panel id of the panel that is measured; empty for a new one
 * @param floor whether it lies on the floor
 * @param four four sides and two diagonals; lengths of 0 are not known yet
 * @param line a level line with its stations
 * @param fromLevelLine whether the panel was measured from the level line
 * @param drawn whether the lengths are those of a panel that was drawn and not measured
 */
record SurveyStart(String panel, boolean floor, MeasuredOutline four, LevelLineOutline line, boolean fromLevelLine,
    boolean drawn) {
  private static final MuralFactory MAKE = MuralFactory.eINSTANCE;
  private static final double INCH = 25.4;
  /** Where a first wall starts above the floor, and how large its level line is drawn: round and usual sizes. */
  private static final Box INCHES = new Box(0, 36 * INCH, 72 * INCH, 84 * INCH);
  private static final Box MILLIMETRES = new Box(0, 900, 1800, 2100);
  /** Read to 1/16 in or to 2 mm: common practice. */
  private static final double INCH_TAPE = INCH / 16;
  private static final double MILLIMETRE_TAPE = 2;
  /** Parts of a millimetre; what is finer is the dust of sums. */
  private static final double DUST = 1e6;

  /** A new panel, to the right of those there are. */
  static SurveyStart fresh(MuralSetOut mural, LengthUnit unit) {
    Box usual = unit == LengthUnit.INCH ? INCHES : MILLIMETRES;
    double right = mural.panels().stream().map(PanelSetOut::spec).mapToDouble(one -> one.outline().box().maxX()).max()
        .orElse(-usual.width() / 4);
    double low = mural.panels().stream().map(PanelSetOut::spec).mapToDouble(one -> one.outline().box().minY()).min()
        .orElse(usual.minY());
    double left = Math.ceil((right + usual.width() / 4) / unit.millimetres()) * unit.millimetres();
    Box place = new Box(left, low, left + usual.width(), low + usual.height());
    return new SurveyStart("", false, four(place, unit, false), line(place), false, false);
  }

  /** The measurements of a panel there is; of one that was not measured, those of the frame around it. */
  static SurveyStart of(String panel, boolean floor, Outline now, LengthUnit unit) {
    Box box = box(now, unit);
    MeasuredOutline four = now instanceof MeasuredOutline measured ? EcoreUtil.copy(measured) : four(box, unit, true);
    LevelLineOutline line = now instanceof LevelLineOutline taken ? EcoreUtil.copy(taken) : line(box);
    return new SurveyStart(panel, floor, four, line, now instanceof LevelLineOutline,
        !(now instanceof LevelLineOutline || now instanceof MeasuredOutline));
  }

  private static Box box(Outline outline, LengthUnit unit) {
    try {
      return MuralReader.outline(outline, "").box();
    } catch (InputException e) {
      // Measurements that make no wall are there to be put right; the other way to measure starts afresh.
      return unit == LengthUnit.INCH ? INCHES : MILLIMETRES;
    }
  }

  private static double clean(double millimetres) {
    return Math.round(millimetres * DUST) / DUST;
  }

  private static MeasuredOutline four(Box box, LengthUnit unit, boolean known) {
    MeasuredOutline wall = MAKE.createMeasuredOutline();
    wall.setX(box.minX());
    wall.setY(box.minY());
    wall.setAccuracy(unit == LengthUnit.INCH ? INCH_TAPE : MILLIMETRE_TAPE);
    if (known) {
      double across = clean(box.width());
      double up = clean(box.height());
      double diagonal = LengthText.rounded(Math.hypot(across, up), unit);
      wall.setBottom(across);
      wall.setTop(across);
      wall.setLeft(up);
      wall.setRight(up);
      wall.setRising(diagonal);
      wall.setFalling(diagonal);
    }
    return wall;
  }

  private static LevelLineOutline line(Box box) {
    LevelLineOutline line = MAKE.createLevelLineOutline();
    line.setX(box.minX());
    line.setY(clean(box.centre().y()));
    for (double along : new double[] {0, clean(box.width())}) {
      LevelStation station = MAKE.createLevelStation();
      station.setAlong(along);
      station.setDown(clean(box.height() / 2));
      station.setUp(clean(box.height() / 2));
      line.getStations().add(station);
    }
    return line;
  }

  /** Whether nothing of it was measured: the lengths of a drawn panel as they were at the start. */
  boolean onlyDrawn(Outline outline) {
    return drawn && (EcoreUtil.equals(outline, four) || EcoreUtil.equals(outline, line));
  }

  /** Looks whether an outline can be used, as the set-out will. */
  void check(Outline outline) throws InputException {
    MuralReader.outline(outline, panel);
  }
}
