// SPDX-License-Identifier: EPL-2.0
/** Drawings of panels as SVG. */
package muralbench.export.internal.svg;
