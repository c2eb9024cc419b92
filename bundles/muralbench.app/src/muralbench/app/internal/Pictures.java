// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal;

import java.util.stream.Stream;
import muralbench.base.Grade;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.swt.graphics.Image;

/** The pictures of the desktop; images live in JFace's registry and are never disposed of by their users. */
public final class Pictures {
  /** Name of our bundle. */
  public static final String BUNDLE = "muralbench.app";

  private Pictures() {}

  /** A picture from the icons folder, by name without ending. */
  public static ImageDescriptor descriptor(String name) {
    return ResourceLocator.imageDescriptorFromBundle(BUNDLE, "icons/" + name + ".png")
        .orElseGet(ImageDescriptor::getMissingImageDescriptor);
  }

  /** As {@link #descriptor}, as an image. */
  public static Image image(String name) {
    String key = BUNDLE + "/" + name;
    if (JFaceResources.getImageRegistry().getDescriptor(key) == null) {
      JFaceResources.getImageRegistry().put(key, descriptor(name));
    }
    return JFaceResources.getImage(key);
  }

  /** The sign of a grade. */
  public static Image grade(Grade grade) {
    return image(switch (grade) {
      case ERROR -> "grade-error";
      case WARNING -> "grade-warning";
      case ADVICE -> "grade-advice";
    });
  }

  static Image[] window() {
    return Stream.of("16", "32", "48", "64", "128").map(size -> image("muralbench" + size)).toArray(Image[]::new);
  }
}
