// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import muralbench.setout.geometry.Contour;

/**
 * An opening the tile runs around.
 *
 * @param id short name, unique in the mural
 * @param kind what it is for, such as {@code outlet} or {@code window}
 * @param outline its edge, in the wall plane
 */
public record OpeningSpec(String id, String kind, Contour outline) {}
