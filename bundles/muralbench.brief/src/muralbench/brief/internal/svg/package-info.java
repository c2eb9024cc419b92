// SPDX-License-Identifier: EPL-2.0
/** Finds the outline of a panel in an SVG drawing. */
package muralbench.brief.internal.svg;
