// SPDX-License-Identifier: EPL-2.0
/** The wall, its panels and its openings as edit parts and figures. */
package muralbench.editor.internal.parts;
