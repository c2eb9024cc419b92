// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.fit;

import java.util.OptionalDouble;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;

/**
 * A way to set a panel out, with its consequences.
 *
 * @param kind what is changed
 * @param setOut the set-out that comes of it; its {@code spec} is the changed panel
 * @param smallestCut true narrow width of the narrowest cut piece, mm; empty if nothing is cut
 * @param smallCuts how many cut pieces are smaller than half a tile
 * @param wholeAcross whether whole tiles end at both sides of the panel
 * @param wholeUp whether whole tiles end at the bottom and at the top of the panel
 * @param title what it is, in a few words
 * @param change what changes against the present, in plain words
 * @param consequence what comes of it, in plain words
 */
public record Alternative(Kind kind, PanelSetOut setOut, OptionalDouble smallestCut, int smallCuts,
    boolean wholeAcross, boolean wholeUp, String title, String change, String consequence) {
  /** What an alternative changes, the least first. */
  public enum Kind {
    /** Nothing. */
    PRESENT,
    /** The start: both ends are trimmed alike. */
    TRIM,
    /** The start. */
    START,
    /** The width of the joints. */
    JOINT,
    /** The margin inside the outline. */
    EDGE,
    /** The size of the panel. */
    SIZE
  }

  /** The panel it asks for. */
  public PanelSpec spec() {
    return setOut.spec();
  }

  /** How many pieces are cut. */
  public int cuts() {
    return setOut.cut();
  }

  /** Whether every piece is a whole tile. */
  public boolean noCuts() {
    return setOut.cut() == 0;
  }

  /** Width of the joints, mm. */
  public double joint() {
    return spec().joint();
  }

  /** How many tiles it takes, without spares. */
  public int tilesToOrder() {
    return setOut.tilesToOrder();
  }
}
