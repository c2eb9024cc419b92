// SPDX-License-Identifier: EPL-2.0
/** The changes a person can make to a mural, each one step of undo. */
package muralbench.editor.internal.commands;
