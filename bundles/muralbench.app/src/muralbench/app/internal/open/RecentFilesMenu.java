// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.open;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import muralbench.base.Messages;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.jface.action.LegacyActionTools;
import org.eclipse.jface.action.Separator;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.CompoundContributionItem;

/** What File > Open Recent offers. */
public final class RecentFilesMenu extends CompoundContributionItem {
  private static final Messages TEXTS = Messages.of(RecentFilesMenu.class);

  @Override
  protected IContributionItem[] getContributionItems() {
    RecentFiles recent = RecentFiles.ofWorkbench();
    List<IContributionItem> items = new ArrayList<>();
    for (Path file : recent.files()) {
      items.add(item(label(items.size() + 1, file), () -> open(file)));
    }
    if (items.isEmpty()) {
      IAction none = action(TEXTS.text("recent.none"), () -> {});
      none.setEnabled(false);
      return new IContributionItem[] {new ActionContributionItem(none)};
    }
    items.add(new Separator());
    items.add(item(TEXTS.text("recent.clear"), recent::clear));
    return items.toArray(IContributionItem[]::new);
  }

  private static String label(int number, Path file) {
    String mnemonic = number < 10 ? "&" + number : String.valueOf(number);
    return TEXTS.text("recent.item", "number", mnemonic,
        "name", LegacyActionTools.escapeMnemonics(file.getFileName().toString()),
        "folder", LegacyActionTools.escapeMnemonics(String.valueOf(file.getParent())));
  }

  private static void open(Path file) {
    new MuralOpener(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage()).open(file);
  }

  private static IContributionItem item(String label, Runnable run) {
    return new ActionContributionItem(action(label, run));
  }

  private static IAction action(String label, Runnable run) {
    return new Action(label) {
      @Override
      public void run() {
        run.run();
      }
    };
  }
}
