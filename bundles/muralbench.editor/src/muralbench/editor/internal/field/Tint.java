// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.field;

import muralbench.setout.PieceKind;

/** The colours of the editor: porcelain, plaster and slate, kept quiet so that the cuts stand out. */
public enum Tint {
  /** Around the wall. */
  DESK(0xE4E1DA),
  /** The bare wall. */
  WALL(0xF7F5F0),
  /** Below the floor line. */
  FLOOR(0xDAD3C5),
  /** The line of the finished floor. */
  FLOOR_LINE(0x6E6656),
  /** Between the pieces. */
  GROUT(0xC9C2B4),
  /** A panel whose set-out is not ready, and a field too small to show its tiles. */
  WAITING(0xECEBE7),
  /** A panel that cannot be set out. */
  FAULTY(0xF3DAD3),
  /** The edge of a panel. */
  EDGE(0x37474F),
  /** The edge of a cut piece. */
  CUT_EDGE(0x9AA7A6),
  /** Text that is read first. */
  INK(0x25323A),
  /** Text that is read second. */
  FAINT_INK(0x66727A),
  /** Inside an opening. */
  OPENING(0xFFFFFF),
  /** The edge of an opening. */
  OPENING_EDGE(0x8C5A3C),
  /** Lines that show what something snapped to. */
  GUIDE(0xC8452B),
  /** A whole tile. */
  WHOLE(0xFCFBF8),
  /** A piece with straight cuts. */
  TRIMMED(0xDCE9EC),
  /** A piece with a corner cut out. */
  NOTCHED(0xF2E4C8),
  /** A piece with a curved cut. */
  CURVED(0xDDE9D3),
  /** A piece with a hole. */
  PIERCED(0xEBDAE3);

  private final int rgb;

  Tint(int rgb) {
    this.rgb = rgb;
  }

  /** Red, green and blue in the usual order. */
  public int rgb() {
    return rgb;
  }

  /** The face of a piece. */
  public static Tint of(PieceKind kind) {
    return switch (kind) {
      case WHOLE -> WHOLE;
      case TRIMMED -> TRIMMED;
      case NOTCHED -> NOTCHED;
      case CURVED -> CURVED;
      case PIERCED -> PIERCED;
    };
  }
}
