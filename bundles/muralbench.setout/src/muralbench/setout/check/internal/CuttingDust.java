// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.Map;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;

/** Cutting fired tile dry sets free silica dust: 29 CFR 1926.1153 limits it to 50 µg/m³ over eight hours. */
final class CuttingDust implements Rule {
  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    if (mural.cut() > 0) {
      Report report = new Report("dust.silica", mural.spec().units());
      found.accept(report.finding(Grade.ADVICE, "", "", Map.of("cut", mural.cut()), "cut", mural.cut()));
    }
  }
}
