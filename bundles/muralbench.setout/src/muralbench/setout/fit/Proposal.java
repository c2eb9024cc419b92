// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.fit;

import muralbench.setout.PanelSpec;

/**
 * A change of a panel that was not set out yet.
 *
 * @param kind what is changed
 * @param spec the changed panel
 * @param amount how much is changed against the present, mm
 */
record Proposal(Alternative.Kind kind, PanelSpec spec, double amount) {}
