// SPDX-License-Identifier: EPL-2.0
/** Bands of border tiles: runs, corners and the layouts that close. */
package muralbench.pattern.border;
