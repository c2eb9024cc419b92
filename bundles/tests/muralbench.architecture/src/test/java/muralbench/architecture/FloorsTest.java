// SPDX-License-Identifier: EPL-2.0
package muralbench.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.tngtech.archunit.core.domain.JavaClass;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Who may see whom: read from the compiled classes, so that nothing slips in by a manifest alone. */
class FloorsTest {
  /** Libraries of the desktop: for editor and app only. */
  private static final List<String> DESKTOP = List.of("org.eclipse.swt", "org.eclipse.jface", "org.eclipse.ui",
      "org.eclipse.draw2d", "org.eclipse.gef", "org.eclipse.e4");

  /** Libraries of documents: PDF, spreadsheets, CAD. For export only. */
  private static final List<String> DOCUMENTS = List.of("org.apache.pdfbox", "org.apache.fontbox",
      "org.dhatim.fastexcel", "com.github.rzymek", "org.apache.commons.csv", "org.apache.poi", "org.kabeja",
      "com.lowagie", "org.apache.batik");

  /** The JDK's own drawing, which needs a display or fakes one. */
  private static final List<String> AWT = List.of("java.awt", "javax.swing", "javax.imageio", "javax.print");

  private static final Set<String> UPSTAIRS = Set.of("editor", "app");

  static Set<String> rooms() {
    return House.rooms();
  }

  static Stream<String> below() {
    return rooms().stream().filter(room -> !UPSTAIRS.contains(room));
  }

  static Stream<String> allButExport() {
    return rooms().stream().filter(room -> !room.equals("export"));
  }

  static Stream<String> pure() {
    return Stream.of("base", "model", "brief", "setout");
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void everyRoomWasBuilt(String room) {
    assertFalse(House.classes(room).isEmpty(), "no classes of " + room);
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void aRoomSeesOnlyTheRoomsItMay(String room) {
    none(House.wrong(room, target -> House.room(target).isEmpty() || House.room(target).equals(room)
        || House.MAY_SEE.get(room).contains(House.room(target))));
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void aRoomRequiresOnlyTheBundlesOfRoomsItMaySee(String room) {
    List<String> wrong = House.header(room, "Require-Bundle").stream().map(entry -> entry.replaceFirst(";.*", ""))
        .filter(bundle -> bundle.startsWith("muralbench."))
        .filter(bundle -> !House.MAY_SEE.get(room).contains(bundle.substring("muralbench.".length()))).toList();
    assertEquals(List.of(), wrong);
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void nobodyLooksIntoTheInnerPackagesOfAnotherRoom(String room) {
    none(House.wrong(room, target -> House.room(target).isEmpty() || House.room(target).equals(room)
        || !(target.getPackageName() + ".").matches(".*\\.(internal|impl)\\..*")));
  }

  @ParameterizedTest
  @MethodSource("below")
  void nothingBelowTheEditorSeesTheDesktop(String room) {
    none(House.wrong(room, target -> !in(target, DESKTOP)));
    assertEquals(List.of(), House.header(room, "Require-Bundle").stream()
        .filter(bundle -> DESKTOP.stream().anyMatch(bundle::startsWith)).toList());
  }

  @ParameterizedTest
  @MethodSource("allButExport")
  void onlyExportSeesLibrariesOfDocuments(String room) {
    none(House.wrong(room, target -> !in(target, DOCUMENTS)));
  }

  @ParameterizedTest
  @MethodSource("pure")
  void computingNeedsNoDrawing(String room) {
    none(House.wrong(room, target -> !in(target, AWT)));
  }

  @Test
  void theCommandAndTheDesktopDoNotKnowEachOther() {
    none(House.wrong("cli", target -> !UPSTAIRS.contains(House.room(target))));
    none(House.wrong("editor", target -> !House.room(target).equals("cli")));
    none(House.wrong("app", target -> !House.room(target).equals("cli")));
  }

  private static boolean in(JavaClass type, List<String> packages) {
    return packages.stream().anyMatch(name -> (type.getPackageName() + ".").startsWith(name + "."));
  }

  private static void none(Set<String> wrong) {
    assertEquals(Set.of(), wrong);
  }
}
