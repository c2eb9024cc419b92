// SPDX-License-Identifier: EPL-2.0
/** A bond and an exporter as a third party would add them, without touching the program; see docs/extending.md. */
package muralbench.sample.plugin;
