// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

import java.util.ArrayList;
import java.util.List;
import muralbench.setout.geometry.Vec;

/**
 * Finds the shifts that go with a matrix. A drawing is kept by x -> Wx + w exactly if for every wave (h, k) the
 * coefficient at (h, k)W is the one at (h, k) times exp(2 pi i (h, k).w). Two strong waves leave finitely many shifts;
 * each of these is tried on all waves of all colours.
 */
final class SpectralMatch {
  /** Coefficients that differ by less are the same; fractions of the cell's area. */
  static final double SAME = 1e-6;
  /** A wave weaker than this says nothing about a phase. */
  private static final double WEAK = 1e-4;
  /** Shifts closer than this are one, in edges of the cell. */
  private static final double SAME_SHIFT = 1e-4;

  /** An integer matrix in coordinates of the cell. */
  record Matrix(int xx, int xy, int yx, int yy) {
    int determinant() {
      return xx * yy - xy * yx;
    }
  }

  private record Wave(int colour, int h, int k) {}

  private final Spectrum spectrum;

  SpectralMatch(Spectrum spectrum) {
    this.spectrum = spectrum;
  }

  /** The shifts between 0 and 1 with which the matrix keeps the drawing; empty too if a stripe leaves a shift free. */
  List<Vec> shifts(Matrix matrix) {
    Wave first = strongest(null);
    Wave second = first == null ? null : strongest(first);
    List<Vec> found = new ArrayList<>();
    if (second == null || !sameSize(first, matrix) || !sameSize(second, matrix)) {
      return found;
    }
    int determinant = first.h * second.k - first.k * second.h;
    double phase1 = phase(first, matrix);
    double phase2 = phase(second, matrix);
    for (int i = 0; i < Math.abs(determinant); i++) {
      for (int j = 0; j < Math.abs(determinant); j++) {
        double p = phase1 + i;
        double q = phase2 + j;
        Vec shift = new Vec(part((p * second.k - q * first.k) / determinant),
            part((q * first.h - p * second.h) / determinant));
        if (found.stream().noneMatch(other -> near(other, shift)) && keeps(matrix, shift)) {
          found.add(shift);
        }
      }
    }
    return found;
  }

  /** Whether the drawing repeats both ways: neither stripes nor one colour. */
  boolean bothWays() {
    Wave first = strongest(null);
    return first != null && strongest(first) != null;
  }

  /** The strongest wave, or the one with most strength for few shifts that is independent of another. */
  private Wave strongest(Wave other) {
    Wave best = null;
    double most = WEAK;
    for (int colour = 0; colour < spectrum.colours(); colour++) {
      for (int h = -Spectrum.REACH; h <= Spectrum.REACH; h++) {
        for (int k = -Spectrum.REACH; k <= Spectrum.REACH; k++) {
          int shared = other == null ? (h == 0 && k == 0 ? 0 : 1) : Math.abs(h * other.k - k * other.h);
          double strength = shared == 0 ? 0 : spectrum.size(colour, h, k);
          if (strength > WEAK && (best == null || strength / shared > most)) {
            best = new Wave(colour, h, k);
            most = strength / shared;
          }
        }
      }
    }
    return best;
  }

  private boolean sameSize(Wave wave, Matrix matrix) {
    int h = wave.h * matrix.xx + wave.k * matrix.yx;
    int k = wave.h * matrix.xy + wave.k * matrix.yy;
    return !Spectrum.within(h, k)
        || Math.abs(spectrum.size(wave.colour, h, k) - spectrum.size(wave.colour, wave.h, wave.k)) < SAME;
  }

  /** The phase, in turns, by which the wave's image is ahead of the wave. */
  private double phase(Wave wave, Matrix matrix) {
    int h = wave.h * matrix.xx + wave.k * matrix.yx;
    int k = wave.h * matrix.xy + wave.k * matrix.yy;
    double image = Math.atan2(spectrum.im(wave.colour, h, k), spectrum.re(wave.colour, h, k));
    double own = Math.atan2(spectrum.im(wave.colour, wave.h, wave.k), spectrum.re(wave.colour, wave.h, wave.k));
    return (image - own) / (2 * Math.PI);
  }

  private boolean keeps(Matrix matrix, Vec shift) {
    for (int h = -Spectrum.REACH; h <= Spectrum.REACH; h++) {
      for (int k = -Spectrum.REACH; k <= Spectrum.REACH; k++) {
        int imageH = h * matrix.xx + k * matrix.yx;
        int imageK = h * matrix.xy + k * matrix.yy;
        if (Spectrum.within(imageH, imageK) && !keeps(h, k, imageH, imageK, shift)) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean keeps(int h, int k, int imageH, int imageK, Vec shift) {
    double angle = 2 * Math.PI * (h * shift.x() + k * shift.y());
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    for (int colour = 0; colour < spectrum.colours(); colour++) {
      double re = spectrum.re(colour, h, k);
      double im = spectrum.im(colour, h, k);
      double off = Math.hypot(re * cos - im * sin - spectrum.re(colour, imageH, imageK),
          re * sin + im * cos - spectrum.im(colour, imageH, imageK));
      if (off > SAME) {
        return false;
      }
    }
    return true;
  }

  private static double part(double x) {
    double part = x - Math.floor(x);
    return part > 1 - SAME_SHIFT / 2 ? 0 : part;
  }

  private static boolean near(Vec a, Vec b) {
    return apart(a.x(), b.x()) < SAME_SHIFT && apart(a.y(), b.y()) < SAME_SHIFT;
  }

  private static double apart(double a, double b) {
    double off = Math.abs(a - b) % 1;
    return Math.min(off, 1 - off);
  }
}
