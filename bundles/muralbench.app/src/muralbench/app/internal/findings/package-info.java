// SPDX-License-Identifier: EPL-2.0
/** The list of what the checks found in the mural at hand. */
package muralbench.app.internal.findings;
