// SPDX-License-Identifier: EPL-2.0
/** What can be done with the parts of the wall. */
package muralbench.editor.internal.policies;
