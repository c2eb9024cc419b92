// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import muralbench.base.InputException;
import muralbench.model.Mural;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BadMuralFileTest {
  private static final String OPEN = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<mural:Mural xmi:version=\"2.0\""
      + " xmlns:xmi=\"http://www.omg.org/XMI\" xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\""
      + " xmlns:mural=\"urn:muralbench:mural\">";
  private static final String GOOD = OPEN + "<site/></mural:Mural>";

  @TempDir
  Path folder;
  Path file;

  @BeforeEach
  void name() {
    file = folder.resolve("wall.mural");
  }

  @Test
  void theGoodFileOfTheseTestsIsGood() throws Exception {
    Mural mural = MuralFile.read(Zips.mural(GOOD).write(file));
    assertEquals(0, mural.getPanels().size());
  }

  @Test
  void missingFile() {
    assertRefused("no such file");
  }

  @Test
  void folderInsteadOfFile() throws Exception {
    Files.createDirectory(file);
    assertRefused("this is a folder");
  }

  @Test
  void unreadableFile() throws Exception {
    Zips.mural(GOOD).write(file);
    assumeTrue(file.toFile().setReadable(false));
    assumeFalse(Files.isReadable(file), "this account may read anything");
    assertRefused("may not be read");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "PK", "{\"format\": \"muralbench-brief\"}", "plain text, and quite a bit of it"})
  void notAZip(String text) throws Exception {
    Files.writeString(file, text);
    assertRefused("not a .mural file");
  }

  @Test
  void zipOfSomethingElse() throws Exception {
    new Zips().add("word/document.xml", "<w/>").write(file);
    assertRefused("not a .mural file");
  }

  @Test
  void truncatedAnywhere() throws Exception {
    byte[] whole = Files.readAllBytes(Zips.mural(GOOD).write(file));
    for (int length = 4; length < whole.length; length += 7) {
      Files.write(file, Arrays.copyOf(whole, length));
      assertRefused("damaged or cut short");
    }
  }

  @Test
  void anyByteChangedIsRefusedOrHarmless() throws Exception {
    byte[] whole = Files.readAllBytes(Zips.mural(GOOD).write(file));
    for (int at = 0; at < whole.length; at++) {
      byte[] changed = whole.clone();
      changed[at] ^= 0x20;
      Files.write(file, changed);
      readOrRefuse();
    }
  }

  private void readOrRefuse() throws Exception {
    try {
      assertEquals(0, MuralFile.read(file).getPanels().size());
    } catch (InputException e) {
      assertTrue(e.getMessage().startsWith(file.toString()), e.getMessage());
    }
  }

  @Test
  void damageNamesTheBackupWhereThereIsOne() throws Exception {
    Files.write(file, new byte[] {'P', 'K', 3, 4});
    Files.writeString(folder.resolve("wall.mural.bak"), "old");
    assertRefused("Open the backup wall.mural.bak");
  }

  @ParameterizedTest
  @ValueSource(strings = {"../evil", "assets/../../evil", "/etc/evil", "assets\\evil", "C:/evil", "a//b", "./a", "..",
    "a\nb"})
  void unsafeEntryName(String name) throws Exception {
    Zips.mural(GOOD).add(name, "x").write(file);
    assertRefused("unsafe name");
  }

  @Test
  void entryTwice() throws Exception {
    Zips.mural(GOOD).add("mural.xmi", GOOD).write(file);
    assertRefused("\"mural.xmi\" twice");
  }

  @Test
  void tooManyEntries() throws Exception {
    Zips zip = Zips.mural(GOOD);
    for (int i = 0; i < 10_000; i++) {
      zip.add("n" + i, "");
    }
    zip.write(file);
    assertRefused("more than 10000 entries");
  }

  /** 10 GB of zeros in 10 MB, once with a header that lies small, once with the largest the header can say. */
  @ParameterizedTest
  @CsvSource({"mural.xmi,1000,far more", "mural.xmi,4294967294,more than 512 MB", "manifest.json,1000,far more",
    "assets/00,1000,far more", "assets/00,400000000,far more", "mural.xmi,30000000,far more"})
  void tenGigabyteBomb(String name, long claimed, String message) throws Exception {
    Zips zip = new Zips();
    if (!name.equals("manifest.json")) {
      zip.add("manifest.json", Zips.manifest(2));
    }
    if (!name.equals("mural.xmi")) {
      zip.add("mural.xmi", GOOD);
    }
    boolean tellsPackedSize = claimed == 30_000_000 || claimed == 400_000_000;
    zip.addZeros(name, tellsPackedSize ? 100 : 10_240, claimed).write(file);
    long before = usedMemory();
    assertTimeoutPreemptively(Duration.ofSeconds(60), () -> assertRefused(message));
    assertTrue(usedMemory() - before < 100 << 20);
  }

  private static long usedMemory() {
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }

  @Test
  void assetThatIsNotItsName() throws Exception {
    Zips.mural(GOOD).add("assets/" + Assets.hash(new byte[] {1}), new byte[] {2}).write(file);
    assertRefused("damaged");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "[]", "{", "{\"format\": \"muralbench-mural\"}", "{\"a\": 1, \"a\": 2}", "{} {}",
    "{\"format\": \"muralbench-mural\", \"schemaVersion\": \"2\", \"program\": \"1\"}",
    "{\"format\": \"muralbench-mural\", \"schemaVersion\": 0, \"program\": \"1\"}",
    "{\"format\": \"muralbench-mural\", \"schemaVersion\": 2.5, \"program\": \"1\"}",
    "{\"format\": \"muralbench-mural\", \"schemaVersion\": 2, \"program\": 1}"})
  void manifestThatCannotBeRead(String json) throws Exception {
    new Zips().add("manifest.json", json).add("mural.xmi", GOOD).write(file);
    assertRefused("manifest inside the file cannot be read");
  }

  @Test
  void newerVersionSaysWhichProgramIsNeeded() throws Exception {
    new Zips().add("manifest.json", Zips.manifest(3)).add("mural.xmi", "unheard of").write(file);
    assertRefused("Muralbench 9.8.7 in file format 3");
    assertRefused("reads formats up to 2");
    assertRefused("Open it with Muralbench 9.8.7 or a newer one");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void doctype(int version) throws Exception {
    String secret = Files.writeString(folder.resolve("secret"), "s").toUri().toString();
    String xmi = GOOD.replace("<mural:M", "<!DOCTYPE m [<!ENTITY e SYSTEM \"" + secret + "\">]>\n<mural:M");
    new Zips().add("manifest.json", Zips.manifest(version)).add("mural.xmi", xmi).write(file);
    assertRefused("DOCTYPE");
  }

  @Test
  void packageOfSomeoneElse() throws Exception {
    Zips.mural(GOOD.replace("urn:muralbench:mural", "http://www.eclipse.org/emf/2002/Ecore")).write(file);
    assertRefused("http://www.eclipse.org/emf/2002/Ecore");
  }

  @Test
  void schemaLocationIsNotFetched() throws Exception {
    String evil = folder.resolve("evil.ecore").toUri().toString();
    Zips.mural(GOOD.replace("xmlns:mural=\"urn:muralbench:mural\"", "xmlns:mural=\"urn:evil\" xsi:schemaLocation=\""
        + "urn:evil " + evil + "#/\"")).write(file);
    assertRefused("outside it");
  }

  @Test
  void unknownField() throws Exception {
    Zips.mural(GOOD.replace("<site/>", "<site colour=\"red\"/>")).write(file);
    assertRefused("\"colour\"");
  }

  @Test
  void unknownObject() throws Exception {
    Zips.mural(OPEN + "<site xsi:type=\"mural:Moon\"/></mural:Mural>").write(file);
    assertRefused("\"Moon\"");
  }

  @Test
  void wrongValue() throws Exception {
    Zips.mural(OPEN + "<site/><tileKinds id=\"T\" width=\"wide\"/></mural:Mural>").write(file);
    assertRefused("\"wide\"");
  }

  @ParameterizedTest
  @ValueSource(strings = {"NaN", "Infinity", "-Infinity", "1e999"})
  void numberThatIsNone(String number) throws Exception {
    Zips.mural(OPEN + "<site/><tileKinds id=\"T\" width=\"" + number + "\"/></mural:Mural>").write(file);
    assertRefused("tile kind T has no proper number as its width");
  }

  @Test
  void danglingTile() throws Exception {
    Zips.mural(withPanel("//@tileKinds.7")).write(file);
    assertRefused("//@tileKinds.7");
  }

  @Test
  void tileOfAnotherFile() throws Exception {
    String panel = withPanel("").replace(" tileKind=\"\"", "").replace("<origin", "<tileKind href=\"other.mural#/\"/>"
        + "<origin");
    Zips.mural(panel).write(file);
    assertRefused("panel A refers to a tile kind that is not in the mural");
  }

  @Test
  void referenceToAPartOfAnotherKind() throws Exception {
    Zips.mural(withPanel("//@site")).write(file);
    assertRefused("a value for \"tileKind\" that cannot be used there, \"Site\"");
  }

  @Test
  void panelWithoutATile() throws Exception {
    Zips.mural(withPanel("").replace(" tileKind=\"\"", "")).write(file);
    assertRefused("panel A has no tile kind");
  }

  @Test
  void twoRoots() throws Exception {
    String root = "<mural:Mural><site/></mural:Mural>";
    Zips.mural(OPEN.replace("<mural:Mural xmi", "<xmi:XMI xmi") + root + root + "</xmi:XMI>").write(file);
    assertRefused("2 murals instead of one");
  }

  @Test
  void rootThatIsNoMural() throws Exception {
    Zips.mural(GOOD.replace("<site/>", "").replace("mural:Mural", "mural:Site")).write(file);
    assertRefused("not a .mural file");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "not xml", "<mural"})
  void xmiThatIsNone(String text) throws Exception {
    Zips.mural(text).write(file);
    assertRefused("damaged or cut short");
  }

  @ParameterizedTest
  @ValueSource(strings = {"bond=\"herring\"", "origin=\"left\"", "bond=\"running 1/0\""})
  void oldValueThatCannotBeRead(String attribute) throws Exception {
    new Zips().add("manifest.json", Zips.manifest(1))
        .add("mural.xmi", OPEN + "<panels id=\"A\" " + attribute + "/></mural:Mural>").write(file);
    assertRefused("file format 1");
  }

  /** Read as version 1, the joint would become that of the mural, which version 2 does not have: 0. */
  @ParameterizedTest
  @ValueSource(strings = {"<panels id=\"A\" joint=\"3\"/>", "<panels id=\"A\"><bond offset=\"0.5\"/></panels>",
    "<panels id=\"A\" surface=\"floor\"/>", "<panels id=\"A\"><origin xsi:type=\"mural:FixedOrigin\"/></panels>",
    "<site exposure=\"exterior\"/>", "<panels id=\"A\" edgeGap=\"2\"/>",
    "<panels id=\"A\"><outline xsi:type=\"mural:MeasuredOutline\"/></panels>"})
  void newerContentUnderAnOldNumberIsRefused(String part) throws Exception {
    new Zips().add("manifest.json", Zips.manifest(1)).add("mural.xmi", OPEN + part + "</mural:Mural>").write(file);
    assertRefused("which that format does not have");
  }

  @Test
  void unknownFieldUnderAnOldNumber() throws Exception {
    new Zips().add("manifest.json", Zips.manifest(1))
        .add("mural.xmi", OPEN + "<tileKinds id=\"T\" colour=\"red\"/></mural:Mural>").write(file);
    assertRefused("\"colour\"");
  }

  @Test
  void objectWithoutANamespace() throws Exception {
    Zips.mural("<Mural><site/></Mural>").write(file);
    assertRefused("without a namespace");
  }

  private static String withPanel(String tile) {
    return OPEN + "<site/><tileKinds id=\"T\" width=\"1\" height=\"1\"/><panels id=\"A\" tileKind=\"" + tile + "\">"
        + "<outline xsi:type=\"mural:CircleOutline\" radius=\"1\"/><bond/>"
        + "<origin xsi:type=\"mural:BalancedOrigin\"/></panels></mural:Mural>";
  }

  private void assertRefused(String part) {
    InputException e = assertThrows(InputException.class, () -> MuralFile.read(file));
    assertTrue(e.getMessage().contains(part), e.getMessage());
    assertEquals(file.toString(), e.place());
    assertTrue(e.remedy().endsWith("."), e.remedy());
  }
}
