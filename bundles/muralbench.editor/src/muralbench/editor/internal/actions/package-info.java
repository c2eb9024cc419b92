// SPDX-License-Identifier: EPL-2.0
/** The actions of the editor in menus, tool bar and keys. */
package muralbench.editor.internal.actions;
