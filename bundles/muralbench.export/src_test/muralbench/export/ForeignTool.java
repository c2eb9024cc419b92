// SPDX-License-Identifier: EPL-2.0
package muralbench.export;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Assumptions;

/** Programs of others that read what we write; a test that needs one is skipped where it is not installed. */
public final class ForeignTool {
  /** What a program printed and how it ended. */
  public record Result(int exit, String text) {}

  private ForeignTool() {}

  /** Runs a program with both its outputs joined; skips the calling test if there is no such program. */
  public static Result run(String... command) throws IOException, InterruptedException {
    Assumptions.assumeTrue(installed(command[0]), command[0] + " is not installed");
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    try (InputStream out = process.getInputStream()) {
      String text = new String(out.readAllBytes(), StandardCharsets.UTF_8);
      return new Result(process.waitFor(), text);
    }
  }

  private static boolean installed(String program) {
    return List.of(System.getenv().getOrDefault("PATH", "").split(":")).stream()
        .anyMatch(folder -> !folder.isEmpty() && Files.isExecutable(Path.of(folder, program)));
  }
}
