// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.survey;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.setout.geometry.Vec;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.apache.commons.math3.util.Pair;

/**
 * Adjusts the measurements of a wall by least squares: the corners that make the sum of the squared misfits least, all
 * measurements being taken as equally good. Where nothing ties the figure to the level line, the first point stays where it
 * is and the second at its height.
 */
public final class Survey {
  /** A measurement cannot be right if it misses by more than this many times the accuracy of the tape. */
  public static final double SUSPECT = 3;

  private static final int MOST_ROUNDS = 200;
  private static final double SINGULAR = 1e-7;

  private final List<Vec> guess;
  private final List<Measurement> measurements;
  private final double accuracy;
  private final boolean[] free;

  private Survey(List<Vec> guess, List<Measurement> measurements, double accuracy) {
    this.guess = guess;
    this.measurements = measurements;
    this.accuracy = accuracy;
    free = new boolean[2 * guess.size()];
    Arrays.fill(free, true);
    long rises = measurements.stream().filter(Measurement.Rise.class::isInstance).count();
    free[0] = measurements.stream().anyMatch(Measurement.Along.class::isInstance);
    free[1] = rises > 0;
    free[3] = rises > 1;
  }

  /**
   * The adjusted wall.
   *
   * @param guess where the points lie roughly, mm; the first two also say where the figure stays if nothing else does
   * @param measurements at least as many as there are unknown coordinates
   * @param accuracy what the tape is good for, mm, above 0
   * @throws InputException if the measurements do not fix the figure, or contradict each other so that none fits
   */
  public static AdjustedWall adjust(List<Vec> guess, List<Measurement> measurements, double accuracy)
      throws InputException {
    return new Survey(List.copyOf(guess), List.copyOf(measurements), accuracy).adjust();
  }

  private AdjustedWall adjust() throws InputException {
    Messages texts = Messages.of(Survey.class);
    double[] start = free(guess);
    if (measurements.size() < start.length) {
      throw undetermined(texts);
    }
    RealVector solution;
    try {
      Optimum optimum = new LevenbergMarquardtOptimizer().optimize(new LeastSquaresBuilder().start(start)
          .target(measurements.stream().mapToDouble(Measurement::value).toArray()).model(this::model)
          .maxEvaluations(MOST_ROUNDS).maxIterations(MOST_ROUNDS).build());
      double[] singular = new SingularValueDecomposition(optimum.getJacobian()).getSingularValues();
      if (singular[singular.length - 1] < SINGULAR * singular[0]) {
        throw undetermined(texts);
      }
      solution = optimum.getPoint();
    } catch (MathIllegalStateException e) {
      throw new InputException("", texts.text("survey.contradiction"), texts.text("survey.contradiction.remedy"), e);
    }
    List<Vec> corners = points(solution.toArray());
    List<Misfit> misfits = new ArrayList<>();
    for (Measurement measurement : measurements) {
      double off = measurement.value() - of(measurement, corners);
      misfits.add(new Misfit(measurement, off, Math.abs(off) > SUSPECT * accuracy));
    }
    return new AdjustedWall(corners, misfits, measurements.size() - start.length, accuracy);
  }

  private static InputException undetermined(Messages texts) {
    return new InputException("", texts.text("survey.undetermined"), texts.text("survey.undetermined.remedy"));
  }

  private double[] free(List<Vec> points) {
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < free.length; i++) {
      if (free[i]) {
        values.add(i % 2 == 0 ? points.get(i / 2).x() : points.get(i / 2).y());
      }
    }
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private List<Vec> points(double[] values) {
    List<Vec> points = new ArrayList<>();
    int next = 0;
    for (int i = 0; i < guess.size(); i++) {
      double x = free[2 * i] ? values[next++] : guess.get(i).x();
      double y = free[2 * i + 1] ? values[next++] : guess.get(i).y();
      points.add(new Vec(x, y));
    }
    return points;
  }

  private static double of(Measurement measurement, List<Vec> points) {
    if (measurement instanceof Measurement.Tape tape) {
      return points.get(tape.from()).distance(points.get(tape.to()));
    }
    return measurement instanceof Measurement.Rise rise ? points.get(rise.point()).y()
        : points.get(((Measurement.Along) measurement).point()).x();
  }

  private Pair<RealVector, RealMatrix> model(RealVector unknowns) {
    List<Vec> points = points(unknowns.toArray());
    double[] values = new double[measurements.size()];
    double[][] slopes = new double[measurements.size()][unknowns.getDimension()];
    for (int row = 0; row < values.length; row++) {
      Measurement measurement = measurements.get(row);
      values[row] = of(measurement, points);
      if (measurement instanceof Measurement.Tape tape) {
        Vec way = points.get(tape.to()).minus(points.get(tape.from())).times(1 / Math.max(values[row], 1e-9));
        slope(slopes[row], tape.to(), way);
        slope(slopes[row], tape.from(), way.times(-1));
      } else if (measurement instanceof Measurement.Rise rise) {
        slope(slopes[row], rise.point(), new Vec(0, 1));
      } else {
        slope(slopes[row], ((Measurement.Along) measurement).point(), new Vec(1, 0));
      }
    }
    return new Pair<>(new ArrayRealVector(values, false), new Array2DRowRealMatrix(slopes, false));
  }

  private void slope(double[] row, int point, Vec way) {
    int next = 0;
    for (int i = 0; i < free.length; i++) {
      if (free[i]) {
        if (i / 2 == point) {
          row[next] += i % 2 == 0 ? way.x() : way.y();
        }
        next++;
      }
    }
  }
}
