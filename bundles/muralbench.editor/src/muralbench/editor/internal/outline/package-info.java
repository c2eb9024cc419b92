// SPDX-License-Identifier: EPL-2.0
/** The Outline view: the tree of the mural and a small picture of the wall. */
package muralbench.editor.internal.outline;
