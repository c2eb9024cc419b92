// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file.internal;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.model.file.SchemaVersion;

/**
 * What a .mural file says about itself before anything else of it is read. In every version, past and to come, it is
 * one flat JSON object of texts and whole numbers; members that are not known are passed over.
 *
 * @param schemaVersion number of the file format, one of {@link SchemaVersion}
 * @param program version of the Muralbench that wrote the file
 */
public record Manifest(int schemaVersion, String program) {
  private static final String FORMAT = "muralbench-mural";

  /** Reads a manifest and refuses one that is not ours or newer than this program. */
  public static Manifest parse(byte[] json, FileProblem problem) throws InputException {
    Map<String, Object> members;
    try {
      members = FlatJson.parse(new String(json, StandardCharsets.UTF_8));
    } catch (IllegalArgumentException e) {
      throw problem.of(e, "manifest");
    }
    if (!FORMAT.equals(members.get("format"))) {
      throw problem.of("notMural");
    }
    if (!(members.get("schemaVersion") instanceof Long version) || !(members.get("program") instanceof String program)
        || version < SchemaVersion.OLDEST) {
      throw problem.of("manifest");
    }
    if (version > SchemaVersion.CURRENT) {
      throw problem.of("newer", "program", program, "version", version, "current", SchemaVersion.CURRENT);
    }
    return new Manifest(version.intValue(), program);
  }

  /** The manifest as JSON in UTF-8. */
  public byte[] bytes() {
    return """
        {
          "format": "%s",
          "schemaVersion": %d,
          "program": "%s"
        }
        """.formatted(FORMAT, schemaVersion, program).getBytes(StandardCharsets.UTF_8);
  }
}
