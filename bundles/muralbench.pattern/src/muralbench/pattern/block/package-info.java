// SPDX-License-Identifier: EPL-2.0
/** Geometric pattern blocks, their library and how they fill a field. */
package muralbench.pattern.block;
