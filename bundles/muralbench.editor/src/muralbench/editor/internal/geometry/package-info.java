// SPDX-License-Identifier: EPL-2.0
/** Arithmetic of moving and snapping on the wall, free of any display. */
package muralbench.editor.internal.geometry;
