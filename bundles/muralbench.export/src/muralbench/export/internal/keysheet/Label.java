// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.util.Optional;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Line;

/**
 * A text placed on a sheet.
 *
 * @param text what it says
 * @param type its letters
 * @param box from the base line to the height of capitals, mm on paper
 * @param upwards whether it reads upwards
 * @param leader the line from the thing named to the text, if the text stands elsewhere
 */
record Label(String text, Type type, Box box, boolean upwards, Optional<Line> leader) {
  /** Free space kept around a text, mm. */
  static final double AIR = 0.25;

  /** The box with its air. */
  Box place() {
    return box.grown(AIR);
  }
}
