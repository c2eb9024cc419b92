// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.survey;

import muralbench.model.Outline;
import muralbench.setout.survey.AdjustedWall;

/**
 * Measurements that make a wall.
 *
 * @param outline the measurements as the model keeps them, owned by nobody
 * @param wall the wall they make
 */
record Measured(Outline outline, AdjustedWall wall) {}
