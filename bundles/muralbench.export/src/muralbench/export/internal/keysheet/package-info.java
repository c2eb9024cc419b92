// SPDX-License-Identifier: EPL-2.0
/** Installer key sheets: elevations with every piece and its key, planned first and drawn afterwards. */
package muralbench.export.internal.keysheet;
