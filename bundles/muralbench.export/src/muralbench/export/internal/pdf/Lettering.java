// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.text.Bidi;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The letters of all printed documents: which signs there are and how wide they are. Knows no document, so that pages
 * can be planned before they are drawn. A sign the font lacks is replaced by a visible mark.
 */
public final class Lettering implements AutoCloseable {
  private static final int REPLACEMENT = 0xFFFD;

  private final Face plain;
  private final Face bold;

  private Lettering(Face plain, Face bold) {
    this.plain = plain;
    this.bold = bold;
  }

  /** Reads the fonts that come with the program. */
  public static Lettering open() throws IOException {
    return new Lettering(new Face("fonts/DejaVuSansCondensed.ttf"), new Face("fonts/DejaVuSansCondensed-Bold.ttf"));
  }

  /** Width of a text as it will be printed, mm. */
  public double width(String text, Type type) throws IOException {
    Face face = face(type);
    long units = 0;
    for (int sign : printable(text, type).codePoints().toArray()) {
      units += face.font.getAdvanceWidth(face.glyphs.getGlyphId(sign));
    }
    return units * size(type) * type.stretch() / face.unitsPerEm;
  }

  /** The size of the font (its em) that gives the height of capitals asked for, mm. */
  public double size(Type type) {
    Face face = face(type);
    return type.height() * face.unitsPerEm / face.capHeight;
  }

  /**
   * The text as it will be printed: in reading order from left to right, white space as single spaces, a mark for every
   * sign that the font lacks.
   */
  public String printable(String text, Type type) {
    Face face = face(type);
    StringBuilder shown = new StringBuilder(text.length());
    text.codePoints().forEach(sign -> shown.appendCodePoint(face.shown(sign)));
    String line = shown.toString();
    return Bidi.requiresBidi(line.toCharArray(), 0, line.length()) ? visualOrder(line) : line;
  }

  private static String visualOrder(String line) {
    Bidi runs = new Bidi(line, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
    byte[] levels = new byte[runs.getRunCount()];
    String[] parts = new String[levels.length];
    for (int i = 0; i < levels.length; i++) {
      levels[i] = (byte) runs.getRunLevel(i);
      String part = line.substring(runs.getRunStart(i), runs.getRunLimit(i));
      parts[i] = levels[i] % 2 == 0 ? part : new StringBuilder(part).reverse().toString();
    }
    Bidi.reorderVisually(levels, 0, parts, 0, parts.length);
    return String.join("", parts);
  }

  TrueTypeFont font(boolean heavy) {
    return (heavy ? bold : plain).font;
  }

  private Face face(Type type) {
    return type.bold() ? bold : plain;
  }

  @Override
  public void close() throws IOException {
    plain.font.close();
    bold.font.close();
  }

  /** One font file. */
  private static final class Face {
    private final TrueTypeFont font;
    private final CmapLookup glyphs;
    private final int unitsPerEm;
    private final double capHeight;

    Face(String file) throws IOException {
      try (InputStream in = Lettering.class.getResourceAsStream(file)) {
        font = new TTFParser().parse(new RandomAccessReadBuffer(in));
      }
      // Ligatures would part what is printed from what a reader can search for.
      font.setEnableGsub(false);
      glyphs = font.getUnicodeCmapLookup();
      unitsPerEm = font.getUnitsPerEm();
      // The font's own table of measures does not state the height of its capitals.
      capHeight = font.getGlyph().getGlyph(glyphs.getGlyphId('H')).getYMaximum();
    }

    int shown(int sign) {
      if (Character.isWhitespace(sign) || Character.isSpaceChar(sign)) {
        return ' ';
      }
      boolean hidden = Character.isISOControl(sign) || Character.getType(sign) == Character.SURROGATE;
      return hidden || glyphs.getGlyphId(sign) == 0 ? REPLACEMENT : sign;
    }
  }
}
