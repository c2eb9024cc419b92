// SPDX-License-Identifier: EPL-2.0
/** The cutting list: one row or drawing for each shape of cut piece, as PDF, CSV and XLSX. */
package muralbench.export.internal.cuts;
