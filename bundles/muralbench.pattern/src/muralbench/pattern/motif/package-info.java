// SPDX-License-Identifier: EPL-2.0
/** Drawings on a tile, what they are symmetric to and which of them are one design. */
package muralbench.pattern.motif;
