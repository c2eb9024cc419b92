// SPDX-License-Identifier: EPL-2.0
/** Lengths: reading, showing and storing them. */
package muralbench.base.length;
