// SPDX-License-Identifier: EPL-2.0
/** Start, window and bars of the desktop. */
package muralbench.app.internal;
