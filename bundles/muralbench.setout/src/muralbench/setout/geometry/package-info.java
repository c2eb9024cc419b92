// SPDX-License-Identifier: EPL-2.0
/** Plane geometry with exact lines, arcs and Bezier curves; millimetres, y up. */
package muralbench.setout.geometry;
