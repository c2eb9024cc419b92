// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.rulers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.DoubleStream;
import muralbench.base.length.LengthUnit;
import org.junit.jupiter.api.Test;

class TicksTest {
  private static List<Ticks.Tick> figures(double to, double scale, LengthUnit unit) {
    return Ticks.between(0, to, scale, unit).stream().filter(tick -> !tick.label().isEmpty()).toList();
  }

  @Test
  void farAwayTheInchRulerCountsInFeet() {
    assertEquals(List.of("0", "4 ft", "8 ft"), figures(2500, 0.06, LengthUnit.INCH).stream().map(Ticks.Tick::label)
        .toList());
  }

  @Test
  void nearByItShowsFractions() {
    assertEquals(List.of("0", "1/2 in", "1 in"), figures(25.4, 6, LengthUnit.INCH).stream().map(Ticks.Tick::label)
        .toList());
  }

  @Test
  void theMetricRulerCountsInMillimetres() {
    assertEquals(List.of("0", "500 mm", "1000 mm"), figures(1100, 0.2, LengthUnit.MILLIMETRE).stream()
        .map(Ticks.Tick::label).toList());
  }

  @Test
  void figuresNeverCrowd() {
    DoubleStream.iterate(0.03, scale -> scale < 30, scale -> scale * 1.3).forEach(scale -> {
      List<Ticks.Tick> figures = figures(2000 / scale, scale, LengthUnit.INCH);
      assertTrue(figures.size() >= 2, "at " + scale);
      assertTrue((figures.get(1).at() - figures.get(0).at()) * scale >= 60, "at " + scale);
    });
  }
}
