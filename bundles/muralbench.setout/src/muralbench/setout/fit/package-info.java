// SPDX-License-Identifier: EPL-2.0
/** Choices of start, joint, margin and size that make a panel come out in better pieces. */
package muralbench.setout.fit;
