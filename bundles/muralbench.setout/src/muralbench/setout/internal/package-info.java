// SPDX-License-Identifier: EPL-2.0
/** Inner workings of the set-out. */
package muralbench.setout.internal;
