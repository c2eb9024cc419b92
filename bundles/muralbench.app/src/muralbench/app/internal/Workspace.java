// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal;

import java.io.IOException;
import java.net.URL;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.eclipse.osgi.service.datalocation.Location;

/**
 * The folder for the window's layout and the list of recent files. Nobody is asked about it: a second desktop that
 * runs at the same time takes the next free folder beside the first.
 */
final class Workspace {
  private static final int MOST = 9;

  private Workspace() {}

  static void choose() {
    Location place = Platform.getInstanceLocation();
    if (place == null || place.isReadOnly()) {
      return;
    }
    try {
      if (place.isSet() || place.getDefault() == null) {
        place.lock();
      } else {
        takeFirstFree(place, place.getDefault());
      }
    } catch (IOException | IllegalStateException e) {
      ILog.of(Workspace.class).warn("The workspace cannot be locked; the layout may not be kept.", e);
    }
  }

  private static void takeFirstFree(Location place, URL first) throws IOException {
    String base = first.toExternalForm().replaceAll("/$", "");
    for (int number = 1; number <= MOST; number++) {
      if (place.set(new URL(number == 1 ? base + "/" : base + "-" + number + "/"), true)) {
        return;
      }
    }
  }
}
