// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import muralbench.app.internal.open.MuralOpener;
import muralbench.app.internal.open.RecentFiles;
import muralbench.brief.BriefReader;
import muralbench.editor.ModelCommand;
import muralbench.editor.MuralEditor;
import muralbench.editor.OpenMural;
import muralbench.model.Mural;
import muralbench.model.file.MuralFile;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorReference;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FilesTest extends DesktopTest {
  @TempDir
  private Path temporary;
  private Path file;

  @BeforeEach
  void writeAFile() throws Exception {
    RecentFiles.ofWorkbench().clear();
    file = temporary.resolve("landing.mural");
    MuralFile.write(BriefReader.demo(), file);
  }

  @Test
  void aChangeIsUndoneRedoneAndSavedThroughTheMenuCommands() throws Exception {
    IEditorPart editor = open();
    assertFalse(editor.isDirty());
    rename(mural(editor), "Evening");
    assertTrue(editor.isDirty());
    Gestures.run("org.eclipse.ui.edit.undo");
    assertFalse(editor.isDirty());
    Gestures.run("org.eclipse.ui.edit.redo");
    assertTrue(editor.isDirty());
    Gestures.run("org.eclipse.ui.file.save");
    assertFalse(editor.isDirty());
    assertEquals("Evening", MuralFile.read(file).getTitle());
  }

  @Test
  void undoNamesTheCommandInTheEditMenu() {
    IEditorPart editor = open();
    rename(mural(editor), "Evening");
    await("Undo carries the name of the change", () -> Gestures.menuTexts("edit").stream()
        .anyMatch(text -> text.replace("&", "").startsWith("Undo Change Title")));
  }

  @Test
  void oneFileOpensOneEditor() {
    open();
    open();
    assertEquals(1, page().getEditorReferences().length);
  }

  @Test
  void openedFilesComeFirstAmongTheRecentAndMissingOnesAreGone() throws Exception {
    Path other = temporary.resolve("other.mural");
    Files.copy(file, other);
    open();
    new MuralOpener(page()).open(other);
    assertEquals(List.of(other, file), RecentFiles.ofWorkbench().files());
    Files.delete(other);
    assertEquals(List.of(file), RecentFiles.ofWorkbench().files());
  }

  @Test
  void noMoreThanTenFilesAreRemembered() throws Exception {
    for (int i = 0; i < 12; i++) {
      RecentFiles.ofWorkbench().add(Files.copy(file, temporary.resolve(i + ".mural")));
    }
    assertEquals(10, RecentFiles.ofWorkbench().files().size());
    assertEquals(temporary.resolve("11.mural"), RecentFiles.ofWorkbench().files().get(0));
  }

  @Test
  void savingUnderANameMakesItRecent() throws Exception {
    OpenMural mural = mural(open());
    RecentFiles.ofWorkbench().clear();
    Path other = temporary.resolve("saved.mural");
    mural.saveAs(other);
    assertEquals(List.of(other), RecentFiles.ofWorkbench().files());
  }

  @Test
  void aFileThatIsNoMuralIsRefusedInPlainWordsAndOpensNothing() throws Exception {
    Path bad = Files.writeString(temporary.resolve("bad.mural"), "not a mural");
    String told = Gestures.dialogText("bad.mural was not opened", () -> new MuralOpener(page()).open(bad));
    assertTrue(told.contains("bad.mural"), told);
    assertFalse(told.contains("Exception"), told);
    assertEquals(0, page().getEditorReferences().length);
    assertEquals(List.of(), RecentFiles.ofWorkbench().files());
  }

  @Test
  void aBriefOpensAsANewMuralThatIsStillToBeSaved() throws Exception {
    Path brief = Files.writeString(temporary.resolve("wall.json"), """
        {"format": "muralbench-brief", "version": 1, "title": "Quay", "units": "in",
         "site": {"exposure": "interior-dry"}, "tiles": [{"id": "T6", "width": 6, "height": 6}],
         "panels": [{"id": "A", "tile": "T6", "joint": "1/8", "outline": {"rectangle": [0, 36, 72, 48]},
           "bond": {"kind": "grid"}, "origin": "balanced"}]}
        """);
    new MuralOpener(page()).open(brief);
    IEditorReference[] editors = page().getEditorReferences();
    assertEquals(1, editors.length);
    assertTrue(editors[0].isDirty());
    assertEquals("Quay", mural(editors[0].getEditor(true)).mural().getTitle());
  }

  private IEditorPart open() {
    new MuralOpener(page()).open(file);
    return page().getActiveEditor();
  }

  private static OpenMural mural(IEditorPart editor) {
    return ((MuralEditor) editor).openMural();
  }

  private static void rename(OpenMural mural, String title) {
    Mural model = mural.mural();
    mural.execute(ModelCommand.of("Change Title", model, () -> model.setTitle(title)));
  }
}
