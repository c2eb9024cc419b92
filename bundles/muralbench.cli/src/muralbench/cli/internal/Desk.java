// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.io.PrintStream;
import java.time.LocalDate;
import muralbench.export.ExporterRegistry;
import muralbench.setout.bond.BondRegistry;

/**
 * What the verbs work with.
 *
 * @param bonds the laying patterns that are known
 * @param exporters the exporters that are known
 * @param date the date printed on documents
 * @param out takes results, and nothing else
 * @param err takes what went wrong
 */
record Desk(BondRegistry bonds, ExporterRegistry exporters, LocalDate date, Output out, PrintStream err) {}
