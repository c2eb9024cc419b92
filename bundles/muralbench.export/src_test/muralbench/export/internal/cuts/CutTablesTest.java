// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import muralbench.base.length.LengthUnit;
import muralbench.export.SampleMural;
import muralbench.setout.MuralSetOut;
import muralbench.setout.cut.CutList;
import org.junit.jupiter.api.Test;

class CutTablesTest {
  private final MuralSetOut mural = SampleMural.inches();

  @Test
  void thereIsOneRowForEachShape() {
    // Worked by hand from the sample: 100 mm is 3.937 in, nearest sixteenth 3-15/16; 15 240 mm2 are 23.62 sq in. The
    // longest uncut side is drawn at the bottom.
    assertEquals(List.of(2, "trimmed", "T6", 3, "6 in", "3-15/16 in", 6.0, 3.9375, "in", 23.62, "sq in",
        "A-01-04 A-02-04 A-03-04"), tables(mural).cuts().rows().get(1));
    assertEquals(4, tables(mural).cuts().rows().size());
  }

  @Test
  void millimetresAreRoundedToHalves() {
    List<Object> row = tables(SampleMural.of(LengthUnit.MILLIMETRE, SampleMural.panel("A"))).cuts().rows().get(1);
    assertEquals(List.of("152.5 mm", "100 mm", 152.5, 100.0, "mm", 15240.0, "mm2"), row.subList(4, 11));
  }

  @Test
  void everyPieceHasARowWithTheNumberOfItsCut() {
    List<List<Object>> rows = tables(mural).pieces().rows();
    assertEquals(12, rows.size());
    assertEquals(List.of("3-15/16 in", "6 in"), rows.get(3).subList(6, 8), "as it stands on the wall");
    assertEquals(List.of("A-01-01", "A", 1, 1, "whole", "T6", "6 in", "6 in", 6.0, 6.0, "in", ""), rows.get(0));
    assertEquals(2, rows.get(3).get(11));
  }

  @Test
  void theTotalsAreThoseOfTheSetOut() {
    MuralSetOut two = SampleMural.of(LengthUnit.INCH, SampleMural.panel("A"), SampleMural.panel("B"));
    assertEquals(List.of("", "", 24, 12, 12, 24), tables(two).panels().rows().get(2));
    assertEquals(List.of("T6", 24, 24), tables(two).tiles().rows().get(0));
  }

  private static CutTables tables(MuralSetOut setOut) {
    return new CutTables(setOut, CutList.of(setOut));
  }
}
