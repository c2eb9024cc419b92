// SPDX-License-Identifier: EPL-2.0
/** The boards of panels that can be taken down: size, mass and hanging points. */
package muralbench.setout.board;
