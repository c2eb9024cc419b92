// SPDX-License-Identifier: EPL-2.0
/** Cut pieces grouped by shape. */
package muralbench.setout.cut;
