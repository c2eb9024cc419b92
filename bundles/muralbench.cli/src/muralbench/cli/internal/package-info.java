// SPDX-License-Identifier: EPL-2.0
/** The headless command. */
package muralbench.cli.internal;
