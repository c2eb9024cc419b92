// SPDX-License-Identifier: EPL-2.0
package muralbench.extensions.tests.broken;

/** Is no bond at all. */
public class NotABond {}
