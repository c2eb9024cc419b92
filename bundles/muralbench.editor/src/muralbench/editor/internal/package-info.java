// SPDX-License-Identifier: EPL-2.0
/** Inner workings of the editor. */
package muralbench.editor.internal;
