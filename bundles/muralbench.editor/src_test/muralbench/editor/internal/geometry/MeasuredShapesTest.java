// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import muralbench.editor.internal.commands.OutlineKind;
import muralbench.model.MeasuredOutline;
import muralbench.model.Outline;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MeasuredShapesTest {
  private static final Frame FRAME = new Frame(100, 900, 4000, 3000);

  private static Outline of(OutlineKind kind) {
    return kind.from(Outlines.rectangle(FRAME)).orElseThrow();
  }

  private static void assertFrame(Frame expected, Outline outline) {
    Frame frame = Outlines.frame(outline).orElseThrow();
    assertEquals(0, Math.hypot(frame.x() - expected.x(), frame.y() - expected.y()), 1e-6);
    assertEquals(0, Math.hypot(frame.width() - expected.width(), frame.height() - expected.height()), 1e-6);
  }

  @ParameterizedTest
  @EnumSource(names = {"MEASURED", "LEVEL_LINE"})
  void takesTheFrameAndIsMovedButNotStretched(OutlineKind kind) {
    Outline outline = of(kind);
    assertFrame(FRAME, outline);
    Outlines.fit(outline, FRAME, new Frame(150, 850, 4000, 3000));
    assertFrame(new Frame(150, 850, 4000, 3000), outline);
    Outline before = EcoreUtil.copy(outline);
    Outlines.fit(outline, FRAME, new Frame(100, 900, 4000, 3100));
    assertTrue(EcoreUtil.equals(before, outline));
  }

  @Test
  void theDiagonalsFitTheSides() {
    MeasuredOutline wall = (MeasuredOutline) of(OutlineKind.MEASURED);
    // Euclid's 3-4-5, a thousandfold.
    assertEquals(5000, wall.getRising());
    assertEquals(5000, wall.getFalling());
  }
}
