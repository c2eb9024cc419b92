// SPDX-License-Identifier: EPL-2.0
/** Templates in full size for wedges and other curved cuts. */
package muralbench.export.internal.templates;
