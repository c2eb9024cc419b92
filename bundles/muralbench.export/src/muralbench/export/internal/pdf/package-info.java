// SPDX-License-Identifier: EPL-2.0
/**
 * The drawing surface of all printed documents: sheets, lettering, pens, contours, hatching, frame and title block.
 * Everything is measured in millimetres on the paper, from its lower left corner, y up.
 */
package muralbench.export.internal.pdf;
