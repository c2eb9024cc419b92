// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal;

import muralbench.base.Messages;
import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.ICoolBarManager;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.action.ToolBarContributionItem;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.swt.SWT;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.ActionFactory.IWorkbenchAction;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;

/**
 * The menu bar and the tool bar with the workbench's own actions; these follow the active editor, so that Undo and Redo
 * carry the name of the command. Everything of ours joins through plugin.xml at the named groups.
 */
final class DesktopBars extends ActionBarAdvisor {
  private static final Messages TEXTS = Messages.of(DesktopBars.class);

  private IWorkbenchAction save;
  private IWorkbenchAction saveAs;
  private IWorkbenchAction close;
  private IWorkbenchAction quit;
  private IWorkbenchAction undo;
  private IWorkbenchAction redo;
  private IWorkbenchAction delete;
  private IWorkbenchAction selectAll;
  private IWorkbenchAction resetLayout;
  private IWorkbenchAction about;

  DesktopBars(IActionBarConfigurer configurer) {
    super(configurer);
  }

  @Override
  protected void makeActions(IWorkbenchWindow window) {
    save = make(ActionFactory.SAVE, window);
    saveAs = make(ActionFactory.SAVE_AS, window);
    close = make(ActionFactory.CLOSE, window);
    close.setText(TEXTS.text("menu.close"));
    quit = make(ActionFactory.QUIT, window);
    quit.setText(TEXTS.text("menu.exit"));
    undo = make(ActionFactory.UNDO, window);
    redo = make(ActionFactory.REDO, window);
    delete = make(ActionFactory.DELETE, window);
    selectAll = make(ActionFactory.SELECT_ALL, window);
    resetLayout = make(ActionFactory.RESET_PERSPECTIVE, window);
    resetLayout.setText(TEXTS.text("menu.resetLayout"));
    about = make(ActionFactory.ABOUT, window);
    about.setText(TEXTS.text("menu.about"));
  }

  private IWorkbenchAction make(ActionFactory factory, IWorkbenchWindow window) {
    IWorkbenchAction action = factory.create(window);
    register(action);
    return action;
  }

  @Override
  protected void fillMenuBar(IMenuManager bar) {
    bar.add(fileMenu());
    bar.add(editMenu());
    bar.add(viewMenu());
    bar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
    bar.add(helpMenu());
  }

  private IMenuManager fileMenu() {
    MenuManager menu = new MenuManager(TEXTS.text("menu.file"), IWorkbenchActionConstants.M_FILE);
    menu.add(new GroupMarker("open"));
    menu.add(new Separator("save"));
    menu.add(save);
    menu.add(saveAs);
    menu.add(close);
    menu.add(new Separator("export"));
    menu.add(new Separator("exit"));
    menu.add(quit);
    return menu;
  }

  private IMenuManager editMenu() {
    MenuManager menu = new MenuManager(TEXTS.text("menu.edit"), IWorkbenchActionConstants.M_EDIT);
    menu.add(undo);
    menu.add(redo);
    menu.add(new Separator("select"));
    menu.add(delete);
    menu.add(selectAll);
    menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
    return menu;
  }

  private IMenuManager viewMenu() {
    MenuManager menu = new MenuManager(TEXTS.text("menu.view"), "view");
    menu.add(new GroupMarker("zoom"));
    menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
    menu.add(new Separator("show"));
    menu.add(new Separator("layout"));
    menu.add(resetLayout);
    return menu;
  }

  private IMenuManager helpMenu() {
    MenuManager menu = new MenuManager(TEXTS.text("menu.help"), IWorkbenchActionConstants.M_HELP);
    menu.add(new GroupMarker("welcome"));
    menu.add(new Separator("about"));
    menu.add(about);
    return menu;
  }

  @Override
  protected void fillCoolBar(ICoolBarManager bar) {
    ToolBarManager tools = new ToolBarManager(SWT.FLAT | SWT.RIGHT);
    tools.add(new GroupMarker("open"));
    tools.add(save);
    tools.add(new Separator("export"));
    tools.add(new Separator("undo"));
    tools.add(undo);
    tools.add(redo);
    tools.add(new Separator("zoom"));
    bar.add(new ToolBarContributionItem(tools, "muralbench.app.tools"));
  }
}
