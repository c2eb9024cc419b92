// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import muralbench.model.Mural;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.eclipse.emf.ecore.util.EcoreUtil;

class MuralFileProperties {
  private static Path folder;

  @BeforeContainer
  static void makeFolder() throws Exception {
    folder = Files.createTempDirectory("murals");
  }

  @AfterContainer
  static void removeFolder() throws Exception {
    for (String name : new String[] {"a.mural", "a.mural.bak", "b.mural", "b.mural.bak"}) {
      Files.deleteIfExists(folder.resolve(name));
    }
    Files.delete(folder);
  }

  @Property(tries = 120)
  void anyMuralIsReadBackAsItWas(@ForAll long seed, @ForAll byte[] asset) throws Exception {
    Mural mural = new RandomMural(seed, 4).next();
    String hash = Assets.of(mural).add(asset);
    MuralFile.write(mural, folder.resolve("a.mural"));
    Mural again = MuralFile.read(folder.resolve("a.mural"));
    assertTrue(EcoreUtil.equals(mural, again));
    assertArrayEquals(asset, Assets.of(again).find(hash).orElseThrow());
  }

  @Property(tries = 30)
  void savingTwiceGivesTheSameBytes(@ForAll long seed) throws Exception {
    Mural mural = new RandomMural(seed, 3).next();
    Assets.of(mural).add(new byte[] {1, 2, 3});
    MuralFile.write(mural, folder.resolve("a.mural"));
    MuralFile.write(MuralFile.read(folder.resolve("a.mural")), folder.resolve("b.mural"));
    assertEquals(-1, Files.mismatch(folder.resolve("a.mural"), folder.resolve("b.mural")));
  }
}
