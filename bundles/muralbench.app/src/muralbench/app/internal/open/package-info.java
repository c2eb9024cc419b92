// SPDX-License-Identifier: EPL-2.0
/** Opening murals and briefs, and the files opened lately. */
package muralbench.app.internal.open;
