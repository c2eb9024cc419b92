// SPDX-License-Identifier: EPL-2.0
/** Gestures of mouse and keyboard. */
package muralbench.editor.internal.tools;
