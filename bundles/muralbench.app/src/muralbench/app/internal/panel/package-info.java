// SPDX-License-Identifier: EPL-2.0
/** Commands on one panel: choices that fit better, and the bond. */
package muralbench.app.internal.panel;
