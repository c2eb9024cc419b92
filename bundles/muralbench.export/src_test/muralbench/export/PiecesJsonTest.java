// SPDX-License-Identifier: EPL-2.0
package muralbench.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.setout.MuralSetOut;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.geometry.Transfer;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;

/** Read back with a JSON parser that shares nothing with the writer but the grammar (RFC 8259). */
class PiecesJsonTest {
  private final MuralSetOut two =
      SampleMural.of(LengthUnit.INCH, SampleMural.panel("A"), SampleMural.panel("B"));

  @Test
  void hasExactlyTheAgreedFieldsInOrder() throws Exception {
    JsonNode root = read(two, Optional.empty());
    assertEquals(List.of("panels", "totals"), names(root));
    assertEquals(List.of("id", "area", "pieces"), names(root.at("/panels/0")));
    assertEquals(List.of("key", "course", "position", "kind", "tile", "area", "outline", "holes"),
        names(root.at("/panels/0/pieces/0")));
    assertEquals(List.of("pieces", "whole", "cut", "tilesToOrder"), names(root.at("/totals")));
  }

  @Test
  void aRepeatedPanelTellsWhichItRepeats() throws Exception {
    PanelSetOut first = SampleMural.panel("A");
    Transfer to = Transfer.of(first.spec().outline().box(), new Vec(5000, 900), true);
    PanelSpec spec = first.spec();
    PanelSpec repeat = new PanelSpec("B", "", "wall", "fixed", spec.tile(), spec.joint(), spec.edgeGap(),
        to.of(spec.outline()), List.of(), spec.bond(), new OriginSpec.Repeated(spec, to));
    PanelSetOut second = new PanelSetOut(repeat, first.origin(), first.area(), first.tiled(), first.pieces());
    JsonNode root = read(SampleMural.of(LengthUnit.INCH, first, second), Optional.empty());
    assertEquals(List.of("id", "area", "repeats", "mirrored", "pieces"), names(root.at("/panels/1")));
    assertEquals("A", root.at("/panels/1/repeats").asText());
    assertTrue(root.at("/panels/1/mirrored").booleanValue());
  }

  @Test
  void countsThePiecesOfAllPanels() throws Exception {
    assertEquals("{\"pieces\":24,\"whole\":12,\"cut\":12,\"tilesToOrder\":24}",
        read(two, Optional.empty()).at("/totals").toString());
  }

  @Test
  void aChosenPanelHasTotalsOfItsOwn() throws Exception {
    JsonNode root = read(two, Optional.of("B"));
    assertEquals(1, root.at("/panels").size());
    assertEquals("B", root.at("/panels/0/id").asText());
    assertEquals("{\"pieces\":12,\"whole\":6,\"cut\":6,\"tilesToOrder\":12}", root.at("/totals").toString());
  }

  @Test
  void anUnknownPanelIsRefusedNamingTheKnownOnes() {
    InputException refused = assertThrows(InputException.class, () -> text(two, Optional.of("Z")));
    assertEquals("Z", refused.place());
    assertTrue(refused.remedy().contains("A, B"), refused.remedy());
  }

  @Test
  void theOutlineOfAWholeTileIsItsFourCornersInMillimetres() throws Exception {
    JsonNode piece = read(two, Optional.of("A")).at("/panels/0/pieces/1");
    assertEquals("A-01-02", piece.at("/key").asText());
    assertEquals("[[155.575,914.4],[307.975,914.4],[307.975,1066.8],[155.575,1066.8]]",
        piece.at("/outline").toString());
    assertEquals(152.4 * 152.4, piece.at("/area").asDouble(), 1e-9);
  }

  @Test
  void everyOutlineRunsCounterClockwiseAndEveryHoleClockwise() throws Exception {
    for (JsonNode piece : read(two, Optional.empty()).findValues("pieces").get(0)) {
      assertTrue(shoelace(piece.at("/outline")) > 0, piece.at("/key").asText());
      piece.at("/holes").forEach(hole -> assertTrue(shoelace(hole) < 0, piece.at("/key").asText()));
    }
  }

  @Test
  void theAreaIsThatOfTheOutlineLessItsHoles() throws Exception {
    for (JsonNode piece : read(two, Optional.of("A")).at("/panels/0/pieces")) {
      double sum = shoelace(piece.at("/outline"));
      for (JsonNode hole : piece.at("/holes")) {
        sum += shoelace(hole);
      }
      // Chords stay within 0.001 mm of an arc, so the area differs by less than 0.001 mm times its length.
      assertEquals(sum, piece.at("/area").asDouble(), 0.001 * 2 * Math.PI * 100, piece.at("/key").asText());
    }
  }

  @Test
  void outlinesDoNotRepeatTheFirstPoint() throws Exception {
    for (JsonNode piece : read(two, Optional.of("A")).at("/panels/0/pieces")) {
      JsonNode outline = piece.at("/outline");
      assertFalse(outline.get(0).equals(outline.get(outline.size() - 1)), piece.at("/key").asText());
    }
  }

  @Test
  void writesTheSameBytesEveryTimeAndEndsTheLine() throws Exception {
    String once = text(two, Optional.empty());
    assertEquals(once, text(two, Optional.empty()));
    assertTrue(once.endsWith("}\n") && once.indexOf('\n') == once.length() - 1);
  }

  @Test
  void noNumberHasAnExponent() throws Exception {
    String numbers = text(two, Optional.empty()).replaceAll("\"[^\"]*\"", "");
    assertFalse(numbers.contains("e") || numbers.contains("E"));
  }

  private static double shoelace(JsonNode ring) {
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      JsonNode a = ring.get(i);
      JsonNode b = ring.get((i + 1) % ring.size());
      twice += a.get(0).asDouble() * b.get(1).asDouble() - a.get(1).asDouble() * b.get(0).asDouble();
    }
    return twice / 2;
  }

  private static List<String> names(JsonNode node) {
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static JsonNode read(MuralSetOut setOut, Optional<String> panel) throws Exception {
    return new ObjectMapper().readTree(text(setOut, panel));
  }

  private static String text(MuralSetOut setOut, Optional<String> panel) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PiecesJson.write(setOut, out, panel);
    return out.toString(StandardCharsets.UTF_8);
  }
}
