// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.palette;

import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Outlines;
import muralbench.model.Outline;

/** What the palette can put on the wall, each with a useful size (common practice). */
public enum NewThing {
  /** A panel of three feet square. */
  PANEL("", 36, 36),
  /** The cut-out for a single electrical box. */
  OUTLET("outlet", 2.25, 3.5),
  /** A small window. */
  WINDOW("window", 24, 36),
  /** A round hole, as for a pipe or a porthole. */
  ROUND("pipe", 6, 6);

  private static final double INCH = 25.4;

  private final String kind;
  private final double width;
  private final double height;

  NewThing(String kind, double widthInches, double heightInches) {
    this.kind = kind;
    this.width = Frame.clean(widthInches * INCH);
    this.height = Frame.clean(heightInches * INCH);
  }

  /** What an opening of this kind is for; empty for a panel. */
  public String kind() {
    return kind;
  }

  /** Whether it goes into a panel rather than onto the wall. */
  public boolean opening() {
    return this != PANEL;
  }

  /** The frame of usual size around a place on the wall. */
  public Frame around(double x, double y) {
    return new Frame(Frame.clean(x - width / 2), Frame.clean(y - height / 2), width, height);
  }

  /** An edge in a frame. */
  public Outline outline(Frame frame) {
    return this == ROUND ? Outlines.circle(frame) : Outlines.rectangle(frame);
  }
}
