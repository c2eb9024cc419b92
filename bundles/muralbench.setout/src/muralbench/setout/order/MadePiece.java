// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import muralbench.setout.geometry.Box;

/**
 * A piece and where it lies on the tile it is made from, glazed face up.
 *
 * @param key key of the piece
 * @param place the rectangle around it on the tile whose lower left corner is (0, 0), mm
 * @param quarters quarter turns counter-clockwise from how the cutting list draws it
 */
public record MadePiece(String key, Box place, int quarters) {}
