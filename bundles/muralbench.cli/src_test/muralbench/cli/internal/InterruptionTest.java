// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import muralbench.base.CancelledException;
import org.junit.jupiter.api.Test;

class InterruptionTest {
  @Test
  void workGoesOnWhileNobodyInterrupts() {
    try (Interruption interruption = new Interruption()) {
      interruption.begin("laying", 2);
      assertDoesNotThrow(() -> interruption.step(1));
    }
  }

  @Test
  void theNextStepAfterAnInterruptEndsTheWorkAndTheProgramWaitsForIt() throws InterruptedException {
    Interruption interruption = new Interruption();
    Thread goingDown = new Thread(interruption::cancelAndWait);
    goingDown.start();

    assertThrows(CancelledException.class, () -> {
      while (true) {
        interruption.step(0);
      }
    });
    assertTrue(goingDown.isAlive(), "did not wait");
    interruption.close();
    goingDown.join(2000);
    assertFalse(goingDown.isAlive(), "still waits");
  }
}
