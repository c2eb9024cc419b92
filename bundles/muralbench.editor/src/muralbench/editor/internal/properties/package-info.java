// SPDX-License-Identifier: EPL-2.0
/** What the Properties view shows and lets a person change. */
package muralbench.editor.internal.properties;
