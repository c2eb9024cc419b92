// SPDX-License-Identifier: EPL-2.0
/** Set-out: from outline, bond and origin to keyed pieces. */
package muralbench.setout;
