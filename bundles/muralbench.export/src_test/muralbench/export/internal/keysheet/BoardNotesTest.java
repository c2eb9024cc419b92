// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.BoardSpec;
import muralbench.setout.BondSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;
import org.junit.jupiter.api.Test;

/** 24.25 by 32.375 in of 8 in tile 8 mm thick on the usual board weigh 22.0 kg (48.4 lb), worked by hand. */
class BoardNotesTest {
  private static final double IN = 25.4;

  private static List<String> notes(String mounting, double thickness, BoardSpec board) throws InputException {
    PanelSpec spec = new PanelSpec("A", "", "wall", mounting, new TileSpec("T", 8 * IN, 8 * IN, thickness, 0, -1),
        IN / 8, 0, Contour.rectangle(0, 0, 24.25 * IN, 32.375 * IN), List.of(), BondSpec.grid(),
        new OriginSpec.Balanced());
    PanelSetOut panel = SetOut.panel(spec.withBoard(board), BondRegistry.standard(), Progress.NONE);
    return new BoardNotes(Messages.of(PanelNotes.class), LengthUnit.INCH).of(panel);
  }

  @Test
  void saysSizeMassAndHangingPoints() throws InputException {
    List<String> notes = notes("removable", 8, BoardSpec.usual());
    assertTrue(notes.get(0).contains("board 24-1/4 in × 32-3/8 in, flush"), notes.get(0));
    assertTrue(notes.get(0).contains("22 kg (48.4 lb)"), notes.get(0));
    assertTrue(notes.get(1).startsWith("Hang from 2 points in a level row, 27 in above the lower edge"), notes.get(1));
    assertTrue(notes.get(1).contains("6-1/16 in, 18-3/16 in from its left edge, each carrying about 11 kg"), notes.get(1));
    assertTrue(notes.get(2).contains("bare"), notes.get(2));
  }

  @Test
  void saysHowTheBoardStandsAndWhatGuardsTheEdges() throws InputException {
    List<String> notes = notes("removable", 8, new BoardSpec("plywood", 0, 0, -IN / 8, "frame", 5));
    assertTrue(notes.get(0).contains("staying 1/8 in behind"), notes.get(0));
    assertTrue(notes.get(1).startsWith("Hang from 4 points"), notes.get(1));
    assertTrue(notes.get(2).contains("guarded by a frame"), notes.get(2));
  }

  @Test
  void saysNothingOfWhatIsNotKnownOrNotThere() throws InputException {
    List<String> notes = notes("removable", 0, BoardSpec.usual());
    assertTrue(notes.get(0).endsWith("not known, as the thickness of the tile is not."), notes.get(0));
    assertEquals(false, notes.get(1).contains("carrying"));
    assertEquals(List.of(), notes("fixed", 8, BoardSpec.usual()));
  }
}
