// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import muralbench.model.BalancedOrigin;
import muralbench.model.DisplayUnits;
import muralbench.model.Exposure;
import muralbench.model.FixedOrigin;
import muralbench.model.Mural;
import muralbench.model.Panel;
import muralbench.model.RectangleOutline;
import muralbench.model.Surface;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files as older versions wrote them; see the README beside them. */
class KeptFilesTest {
  @TempDir
  Path folder;

  @Test
  void everyOlderVersionHasAKeptFile() {
    IntStream.range(SchemaVersion.OLDEST, SchemaVersion.CURRENT).forEach(version ->
        assertNotNull(KeptFilesTest.class.getResource("kept/version-" + version + ".mural"), "version " + version));
  }

  @Test
  void version1KeepsWhatTheMuralSaid() throws Exception {
    Mural mural = MuralFile.read(kept(1));
    assertEquals("Herons & reeds", mural.getTitle());
    assertEquals(DisplayUnits.MILLIMETRES, mural.getUnits());
    assertEquals(Exposure.INTERIOR_WET, mural.getSite().getExposure());
    assertEquals("1", mural.getRevision());
    assertEquals(2, mural.getTileKinds().size());
    assertEquals(-1, mural.getTileKinds().get(1).getWaterAbsorption());
  }

  @Test
  void version1JointOfTheMuralBecomesThatOfEachPanel() throws Exception {
    for (Panel panel : MuralFile.read(kept(1)).getPanels()) {
      assertEquals(3.175, panel.getJoint());
      assertEquals(0, panel.getEdgeGap());
    }
  }

  @Test
  void version1RunningBondAndOriginBecomeObjects() throws Exception {
    Mural mural = MuralFile.read(kept(1));
    Panel panel = mural.getPanels().get(0);
    assertEquals("grid", panel.getBond().getKind());
    assertEquals(0.5, panel.getBond().getOffset());
    assertEquals(12.7, ((FixedOrigin) panel.getOrigin()).getX());
    assertEquals(914.4, ((FixedOrigin) panel.getOrigin()).getY());
    assertEquals(Surface.WALL, panel.getSurface());
    assertSame(mural.getTileKinds().get(0), panel.getTileKind());
    assertEquals(57.15, ((RectangleOutline) panel.getOpenings().get(0).getOutline()).getWidth());
  }

  @Test
  void version1FloorBecomesASurface() throws Exception {
    Panel panel = MuralFile.read(kept(1)).getPanels().get(1);
    assertEquals(Surface.FLOOR, panel.getSurface());
    assertEquals(45, panel.getBond().getRotation());
    assertEquals(0, panel.getBond().getOffset());
    assertTrue(panel.getOrigin() instanceof BalancedOrigin);
  }

  @Test
  void version1AssetsAreKept() throws Exception {
    Assets assets = Assets.of(MuralFile.read(kept(1)));
    byte[] note = assets.find(assets.hashes().first()).orElseThrow();
    assertEquals("a note kept with the mural\n", new String(note, StandardCharsets.UTF_8));
  }

  @Test
  void savedAgainItIsOfTheCurrentVersion() throws Exception {
    Mural mural = MuralFile.read(kept(1));
    Path file = folder.resolve("new.mural");
    MuralFile.write(mural, file);
    assertTrue(EcoreUtil.equals(mural, MuralFile.read(file)));
    assertTrue(Zips.text(file, "manifest.json").contains("\"schemaVersion\": " + SchemaVersion.CURRENT));
    assertTrue(!Zips.text(file, "mural.xmi").contains("jointWidth"));
  }

  private Path kept(int version) throws Exception {
    try (var in = KeptFilesTest.class.getResourceAsStream("kept/version-" + version + ".mural")) {
      return Files.write(folder.resolve("old.mural"), in.readAllBytes());
    }
  }
}
