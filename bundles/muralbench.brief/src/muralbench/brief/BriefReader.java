// SPDX-License-Identifier: EPL-2.0
package muralbench.brief;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import muralbench.base.InputException;
import muralbench.brief.internal.BriefBytes;
import muralbench.brief.internal.BriefFolder;
import muralbench.brief.internal.BriefJson;
import muralbench.brief.internal.BriefMural;
import muralbench.brief.internal.BriefProblem;
import muralbench.brief.internal.BriefSchema;
import muralbench.model.Mural;

/**
 * Reads a brief, the JSON description of a wall and its panels, into a new mural. The published schema is
 * {@code brief.schema.json} beside this class. Whether the panels can be set out is not looked at here: a line that
 * crosses itself or an opening outside its panel is found by the set-out.
 */
public final class BriefReader {
  private BriefReader() {}

  /**
   * Reads a brief file, UTF-8 and at most 16 MB, and the drawings it uses from its folder.
   *
   * @throws InputException naming the field by JSON pointer if the brief cannot be used, or the file if that is it
   * @throws IOException if the disk fails
   */
  public static Mural read(Path file) throws InputException, IOException {
    if (!Files.exists(file)) {
      throw BriefProblem.at(file.toString(), "missingFile");
    }
    if (Files.isDirectory(file)) {
      throw BriefProblem.at(file.toString(), "folder");
    }
    if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
      throw BriefProblem.at(file.toString(), "unreadable");
    }
    byte[] bytes = start(file);
    if (bytes.length > BriefJson.LARGEST) {
      throw BriefProblem.at(file.toString(), "huge", "limit", BriefJson.LARGEST >> 20);
    }
    BriefBytes content = new BriefBytes(bytes);
    if (content.isBlank()) {
      throw BriefProblem.at(file.toString(), "emptyFile");
    }
    try {
      return read(content.text(), BriefFolder.of(file));
    } catch (CharacterCodingException e) {
      throw BriefProblem.at(file.toString(), content.startsLikeJson() ? "notUtf8" : "notText");
    }
  }

  /**
   * Reads a brief from its text. As it has no folder, it cannot use drawings.
   *
   * @throws InputException naming the field by JSON pointer if the brief cannot be used; the pointer is empty for the
   *     brief as a whole
   */
  public static Mural readText(String json) throws InputException {
    return read(json, BriefFolder.NONE);
  }

  private static Mural read(String json, BriefFolder folder) throws InputException {
    // Some editors put a byte order mark in front, which is no part of the text.
    JsonNode brief = BriefJson.parse(json.startsWith("\uFEFF") ? json.substring(1) : json);
    BriefSchema.load().check(brief);
    return BriefMural.of(brief, folder);
  }

  /** The brief of the demonstration mural. */
  public static Mural demo() {
    try (InputStream in = BriefReader.class.getResourceAsStream("demo.json")) {
      return readText(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException("the demonstration is part of the program", e);
    } catch (InputException e) {
      throw new IllegalStateException("the demonstration is a good brief", e);
    }
  }

  /** No more of the file than one byte over the limit, whatever its size is by now. */
  private static byte[] start(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(BriefJson.LARGEST + 1);
    }
  }
}
