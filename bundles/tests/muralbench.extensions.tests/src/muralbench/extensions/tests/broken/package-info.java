// SPDX-License-Identifier: EPL-2.0
/** Contributions that cannot be used. */
package muralbench.extensions.tests.broken;
