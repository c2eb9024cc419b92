// SPDX-License-Identifier: EPL-2.0
/**
 * The mural editor: {@link muralbench.editor.OpenMural} is one open document with its undo history and its live
 * set-out, {@link muralbench.editor.MuralEditor} shows it on the wall. The laying patterns are taken from the OSGi service
 * {@link muralbench.setout.bond.BondRegistry}, which the desktop registers; without one the standard ones are used.
 */
package muralbench.editor;
