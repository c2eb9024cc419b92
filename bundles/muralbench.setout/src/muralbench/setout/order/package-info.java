// SPDX-License-Identifier: EPL-2.0
/** What to order: tiles with spares, in boxes. */
package muralbench.setout.order;
