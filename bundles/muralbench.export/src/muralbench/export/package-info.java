// SPDX-License-Identifier: EPL-2.0
/** The exporter contract, its registry and the standard exporters. */
package muralbench.export;
