// SPDX-License-Identifier: EPL-2.0
/** Composition of the desktop. */
package muralbench.app.internal;
