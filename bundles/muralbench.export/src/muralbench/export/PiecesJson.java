// SPDX-License-Identifier: EPL-2.0
package muralbench.export;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.export.internal.PlainNumber;
import muralbench.setout.MuralSetOut;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.SetOut;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/**
 * The pieces of a mural as JSON, for other programs: millimetres and square millimetres, y up from finished floor,
 * outlines counter-clockwise and holes clockwise, both without the closing point. Areas are exact; curves are shown by
 * chords that stay within {@link SetOut#CHORD_ERROR} of them. The same mural gives the same text to the byte.
 */
public final class PiecesJson {
  private static final Messages TEXT = Messages.of(PiecesJson.class);

  private final JsonGenerator json;

  private PiecesJson(JsonGenerator json) {
    this.json = json;
  }

  /**
   * Writes the pieces.
   *
   * @param setOut the mural
   * @param out takes UTF-8 text that ends with a line feed; is flushed and left open
   * @param panelId the only panel to write, with totals of its own; empty for all
   * @throws InputException if there is no such panel, naming those there are
   * @throws IOException if {@code out} fails
   */
  public static void write(MuralSetOut setOut, OutputStream out, Optional<String> panelId)
      throws InputException, IOException {
    MuralSetOut chosen = panelId.isPresent() ? only(setOut, panelId.get()) : setOut;
    JsonFactory factory = JsonFactory.builder().disable(StreamWriteFeature.AUTO_CLOSE_TARGET).build();
    try (JsonGenerator json = factory.createGenerator(out)) {
      new PiecesJson(json).mural(chosen);
      json.writeRaw('\n');
    }
  }

  private static MuralSetOut only(MuralSetOut setOut, String id) throws InputException {
    List<PanelSetOut> found = setOut.panels().stream().filter(panel -> panel.spec().id().equals(id)).toList();
    if (found.isEmpty()) {
      String known = setOut.panels().stream().map(panel -> panel.spec().id()).collect(Collectors.joining(", "));
      throw new InputException(id, TEXT.text("panel.unknown"), TEXT.text("panel.unknown.remedy", "known", known));
    }
    return new MuralSetOut(setOut.spec(), found);
  }

  private void mural(MuralSetOut setOut) throws IOException {
    json.writeStartObject();
    json.writeArrayFieldStart("panels");
    for (PanelSetOut panel : setOut.panels()) {
      panel(panel);
    }
    json.writeEndArray();
    json.writeObjectFieldStart("totals");
    json.writeNumberField("pieces", setOut.pieces());
    json.writeNumberField("whole", setOut.whole());
    json.writeNumberField("cut", setOut.cut());
    json.writeNumberField("tilesToOrder", setOut.tilesToOrder());
    json.writeEndObject();
    json.writeEndObject();
  }

  private void panel(PanelSetOut panel) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", panel.spec().id());
    number("area", panel.area());
    if (panel.spec().origin() instanceof OriginSpec.Repeated repeated) {
      json.writeStringField("repeats", repeated.panel().id());
      json.writeBooleanField("mirrored", repeated.to().mirrored());
    }
    json.writeArrayFieldStart("pieces");
    for (Piece piece : panel.pieces()) {
      piece(piece);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void piece(Piece piece) throws IOException {
    json.writeStartObject();
    json.writeStringField("key", piece.key());
    json.writeNumberField("course", piece.course());
    json.writeNumberField("position", piece.position());
    json.writeStringField("kind", piece.kind().word());
    json.writeStringField("tile", piece.tile());
    number("area", piece.area());
    json.writeFieldName("outline");
    points(piece.outline().counterClockwise());
    json.writeArrayFieldStart("holes");
    for (Contour hole : piece.holes()) {
      points(hole.counterClockwise().reversed());
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void points(Contour contour) throws IOException {
    json.writeStartArray();
    for (Vec point : contour.points(SetOut.CHORD_ERROR)) {
      json.writeStartArray();
      json.writeNumber(PlainNumber.text(point.x()));
      json.writeNumber(PlainNumber.text(point.y()));
      json.writeEndArray();
    }
    json.writeEndArray();
  }

  private void number(String name, double value) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(PlainNumber.text(value));
  }
}
