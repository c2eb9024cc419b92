// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TimeZone;
import muralbench.model.BalancedOrigin;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Panel;
import muralbench.model.RepeatedOutline;
import muralbench.model.SharedLine;
import muralbench.model.SharedOrigin;
import muralbench.model.TileKind;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SavingTest {
  private static final MuralFactory MAKE = MuralFactory.eINSTANCE;

  @TempDir
  Path folder;
  Path file;
  Mural mural;
  Panel panel;

  @BeforeEach
  void makeMural() {
    file = folder.resolve("wall.mural");
    mural = MAKE.createMural();
    mural.setSite(MAKE.createSite());
    TileKind tile = MAKE.createTileKind();
    tile.setId("T6");
    mural.getTileKinds().add(tile);
    panel = MAKE.createPanel();
    panel.setId("A");
    panel.setOutline(MAKE.createCircleOutline());
    panel.setBond(MAKE.createBond());
    panel.setOrigin(MAKE.createBalancedOrigin());
    panel.setTileKind(tile);
    mural.getPanels().add(panel);
  }

  @Test
  void readMuralIsTheOnlyContentOfItsOwnResource() throws Exception {
    MuralFile.write(mural, file);
    Mural read = MuralFile.read(file);
    Resource resource = read.eResource();
    assertEquals(1, resource.getContents().size());
    assertEquals(file.toAbsolutePath().toString(), resource.getURI().toFileString());
    assertNull(resource.getResourceSet());
  }

  @Test
  void aPanelThatRepeatsAnotherNeedsNeitherTileNorBondNorOrigin() throws Exception {
    RepeatedOutline repeated = MAKE.createRepeatedOutline();
    repeated.setPanel(panel);
    repeated.setX(1200);
    repeated.setMirrored(true);
    Panel other = MAKE.createPanel();
    other.setId("B");
    other.setOutline(repeated);
    mural.getPanels().add(other);
    MuralFile.write(mural, file);
    Mural read = MuralFile.read(file);
    RepeatedOutline outline = (RepeatedOutline) read.getPanels().get(1).getOutline();
    assertSame(read.getPanels().get(0), outline.getPanel());
    assertEquals(true, outline.isMirrored());
  }

  @Test
  void aSharedGridLeadsToItsPanel() throws Exception {
    SharedOrigin shared = MAKE.createSharedOrigin();
    shared.setPanel(panel);
    shared.setLine(SharedLine.LEVEL);
    Panel other = EcoreUtil.copy(panel);
    other.setId("B");
    other.setOrigin(shared);
    mural.getPanels().add(other);
    MuralFile.write(mural, file);
    Mural read = MuralFile.read(file);
    SharedOrigin origin = (SharedOrigin) read.getPanels().get(1).getOrigin();
    assertSame(read.getPanels().get(0), origin.getPanel());
    assertEquals(SharedLine.LEVEL, origin.getLine());
  }

  @Test
  void aSharedGridThatLeadsNowhereIsNotSaved() {
    panel.setOrigin(MAKE.createSharedOrigin());
    assertThrows(IOException.class, () -> MuralFile.write(mural, file));
  }

  @Test
  void aFocalPointAtZeroIsKeptAndOneThatIsNotThereStaysAway() throws Exception {
    BalancedOrigin origin = (BalancedOrigin) panel.getOrigin();
    origin.setFocalX(0);
    MuralFile.write(mural, file);
    BalancedOrigin read = (BalancedOrigin) MuralFile.read(file).getPanels().get(0).getOrigin();
    assertEquals(true, read.isSetFocalX());
    assertEquals(false, read.isSetFocalY());
  }

  @Test
  void savingDoesNotTouchTheMural() throws Exception {
    Resource resource = new XMIResourceImpl();
    resource.getContents().add(mural);
    resource.setTrackingModification(true);
    MuralFile.write(mural, file);
    assertSame(resource, mural.eResource());
    assertEquals(false, resource.isModified());
  }

  @Test
  void oneBackupIsKept() throws Exception {
    for (String title : new String[] {"one", "two", "three"}) {
      mural.setTitle(title);
      MuralFile.write(mural, file);
    }
    assertEquals("three", MuralFile.read(file).getTitle());
    assertEquals("two", MuralFile.read(folder.resolve("wall.mural.bak")).getTitle());
    assertEquals(2, folder.toFile().list().length);
  }

  @Test
  void assetsNobodyRefersToAreKept() throws Exception {
    byte[] picture = {1, 2, 3};
    String hash = Assets.of(mural).add(picture);
    MuralFile.write(mural, file);
    MuralFile.write(MuralFile.read(file), file);
    assertArrayEquals(picture, Assets.of(MuralFile.read(file)).find(hash).orElseThrow());
  }

  @Test
  void assetTakenAwayIsNotSaved() throws Exception {
    Assets assets = Assets.of(mural);
    String gone = assets.add(new byte[] {1});
    String stays = assets.add(new byte[] {2});
    assets.remove(gone);
    MuralFile.write(mural, file);
    assertEquals(Set.of(stays), Assets.of(MuralFile.read(file)).hashes());
  }

  @Test
  void assetsAreNamedBySha256() {
    // FIPS 180-4, example of one block: "abc".
    assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Assets.hash("abc".getBytes()));
  }

  @Test
  void assetsCannotBeChangedFromOutside() {
    byte[] picture = {1};
    String hash = Assets.of(mural).add(picture);
    picture[0] = 9;
    Assets.of(mural).find(hash).orElseThrow()[0] = 9;
    assertArrayEquals(new byte[] {1}, Assets.of(mural).find(hash).orElseThrow());
  }

  @Test
  void bytesDoNotDependOnTheTimeZone() throws Exception {
    TimeZone before = TimeZone.getDefault();
    MuralFile.write(mural, file);
    TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
    try {
      MuralFile.write(mural, folder.resolve("far.mural"));
    } finally {
      TimeZone.setDefault(before);
    }
    assertEquals(-1, Files.mismatch(file, folder.resolve("far.mural")));
  }

  @Test
  void tileThatLeftTheMuralStopsSaving() throws Exception {
    MuralFile.write(mural, file);
    byte[] old = Files.readAllBytes(file);
    mural.getTileKinds().clear();
    assertRefused("panel A refers to a tile kind that is not in the mural");
    assertArrayEquals(old, Files.readAllBytes(file));
    assertEquals(1, folder.toFile().list().length);
  }

  @Test
  void missingPartStopsSaving() {
    panel.setBond(null);
    assertRefused("panel A has no bond");
    mural.setSite(null);
    assertRefused("the mural has no site");
  }

  @Test
  void numberThatIsNoneStopsSaving() {
    panel.getBond().setOffset(Double.NaN);
    assertRefused("the bond of panel A has no proper number as its offset");
  }

  @Test
  void characterThatXmlCannotHoldStopsSaving() {
    panel.setTitle("bell \u0007");
    assertRefused("panel A has a character in its title");
    panel.setTitle("half \uD83C");
    assertRefused("panel A has a character in its title");
  }

  @Test
  void folderThatIsNotThereIsNamed() {
    file = folder.resolve("lost/wall.mural");
    assertRefused("lost is not there");
  }

  private void assertRefused(String part) {
    IOException e = assertThrows(IOException.class, () -> MuralFile.write(mural, file));
    assertTrue(e.getMessage().contains(part), e.getMessage());
  }
}
