// SPDX-License-Identifier: EPL-2.0
/** The vocabulary all rooms speak: findings, progress, errors in the input. */
package muralbench.base;
