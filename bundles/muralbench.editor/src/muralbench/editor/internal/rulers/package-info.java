// SPDX-License-Identifier: EPL-2.0
/** Rulers along the wall in the mural's units. */
package muralbench.editor.internal.rulers;
