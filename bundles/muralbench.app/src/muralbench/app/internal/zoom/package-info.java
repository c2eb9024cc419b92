// SPDX-License-Identifier: EPL-2.0
/** The zoom commands of the View menu. */
package muralbench.app.internal.zoom;
