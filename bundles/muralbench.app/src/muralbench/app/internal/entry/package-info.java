// SPDX-License-Identifier: EPL-2.0
/** Fields that several dialogs share. */
package muralbench.app.internal.entry;
