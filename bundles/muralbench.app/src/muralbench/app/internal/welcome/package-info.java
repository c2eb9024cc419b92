// SPDX-License-Identifier: EPL-2.0
/** The first page a person sees. */
package muralbench.app.internal.welcome;
