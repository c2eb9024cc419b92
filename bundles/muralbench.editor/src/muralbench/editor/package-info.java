// SPDX-License-Identifier: EPL-2.0
/** The tile-grid editor. */
package muralbench.editor;
