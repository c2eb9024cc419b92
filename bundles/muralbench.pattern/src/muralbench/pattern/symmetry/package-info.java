// SPDX-License-Identifier: EPL-2.0
/** Symmetry groups of the line and the plane, and finding them in a drawing. */
package muralbench.pattern.symmetry;
