// SPDX-License-Identifier: EPL-2.0
/** The rules a set-out is checked against, one class each. */
package muralbench.setout.check.internal;
