// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal;

import org.eclipse.jface.resource.ImageDescriptor;

/** The pictures of the editor, drawn as SVG in icons/src and kept as PNG in two sizes. */
public final class Icons {
  private Icons() {}

  /** 16 pixels square. */
  public static ImageDescriptor small(String name) {
    return picture(name, "16");
  }

  /** 32 pixels square. */
  public static ImageDescriptor large(String name) {
    return picture(name, "32");
  }

  private static ImageDescriptor picture(String name, String size) {
    return ImageDescriptor.createFromURL(Icons.class.getResource("/icons/" + name + "-" + size + ".png"));
  }
}
