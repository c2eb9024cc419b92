// SPDX-License-Identifier: EPL-2.0
/** What several exporters share: numbers and texts for machines, names of files. */
package muralbench.export.internal;
