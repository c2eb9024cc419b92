// SPDX-License-Identifier: EPL-2.0
/** The exporter of pieces as JSON. */
package muralbench.export.internal.pieces;
