// SPDX-License-Identifier: EPL-2.0
/** Finding and painting the pieces of a panel. */
package muralbench.editor.internal.field;
