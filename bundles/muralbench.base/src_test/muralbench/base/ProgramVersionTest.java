// SPDX-License-Identifier: EPL-2.0
package muralbench.base;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.Manifest;
import org.junit.jupiter.api.Test;

class ProgramVersionTest {
  @Test
  void isTheVersionOfTheBundle() throws Exception {
    try (InputStream in = Files.newInputStream(Path.of("META-INF", "MANIFEST.MF"))) {
      String version = new Manifest(in).getMainAttributes().getValue("Bundle-Version");
      assertEquals(version.replace(".qualifier", ""), ProgramVersion.CURRENT);
    }
  }
}
