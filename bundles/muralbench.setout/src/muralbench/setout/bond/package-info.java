// SPDX-License-Identifier: EPL-2.0
/** Laying patterns. */
package muralbench.setout.bond;
