// SPDX-License-Identifier: EPL-2.0
/** The palette: tools for what can be added to a wall. */
package muralbench.editor.internal.palette;
