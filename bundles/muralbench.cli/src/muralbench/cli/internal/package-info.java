// SPDX-License-Identifier: EPL-2.0
/**
 * The headless command. {@link muralbench.cli.internal.Main} is plain Java and knows nothing of OSGi; every verb is a
 * class of its own.
 */
package muralbench.cli.internal;
