// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.dxf;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;

/** Writes small DXF files for tests, group by group. */
final class Dxf {
  private Dxf() {}

  /** A file whose header says nothing but the units; each entity in its groups, divided by blanks. */
  static byte[] units(int units, String... entities) {
    return file("0 SECTION 2 HEADER 9 $INSUNITS 70 " + units + " 0 ENDSEC " + section(entities));
  }

  /** A file with entities alone, as of R12. */
  static byte[] entities(String... entities) {
    return file(section(entities));
  }

  /** A file of the given groups; EOF is added. */
  static byte[] file(String groups) {
    return text(groups + " 0 EOF ");
  }

  static byte[] text(String groups) {
    return Arrays.stream(groups.trim().split(" +")).collect(Collectors.joining("\r\n", "", "\r\n"))
        .getBytes(StandardCharsets.UTF_8);
  }

  private static String section(String... entities) {
    return "0 SECTION 2 ENTITIES " + String.join(" ", entities) + " 0 ENDSEC";
  }

  static String line(double x1, double y1, double x2, double y2) {
    return "0 LINE 8 0 10 " + x1 + " 20 " + y1 + " 11 " + x2 + " 21 " + y2;
  }

  static String arc(double x, double y, double radius, double start, double end) {
    return "0 ARC 8 0 10 " + x + " 20 " + y + " 40 " + radius + " 50 " + start + " 51 " + end;
  }

  static String circle(double x, double y, double radius) {
    return "0 CIRCLE 8 0 10 " + x + " 20 " + y + " 40 " + radius;
  }

  /** A light polyline of x, y and bulge. */
  static String light(boolean closed, double... vertices) {
    StringBuilder text = new StringBuilder("0 LWPOLYLINE 8 0 90 " + vertices.length / 3 + " 70 " + (closed ? 1 : 0));
    for (int i = 0; i < vertices.length; i += 3) {
      text.append(" 10 ").append(vertices[i]).append(" 20 ").append(vertices[i + 1]).append(" 42 ")
          .append(vertices[i + 2]);
    }
    return text.toString();
  }

  /** A polyline of R12 of x, y and bulge. */
  static String polyline(int flags, double... vertices) {
    StringBuilder text = new StringBuilder("0 POLYLINE 8 0 66 1 70 " + flags);
    for (int i = 0; i < vertices.length; i += 3) {
      text.append(" 0 VERTEX 8 0 10 ").append(vertices[i]).append(" 20 ").append(vertices[i + 1]).append(" 42 ")
          .append(vertices[i + 2]);
    }
    return text + " 0 SEQEND 8 0";
  }

  /**
   * Area of a path of M, L, circular A and Z, counter-clockwise above 0: shoelace formula for the chords, and for each
   * arc the circular segment r² (a - sin a) / 2 over its chord 2 r sin(a / 2).
   */
  static double area(String path) {
    String[] words = path.split("(?<=[MLAZ])|\\s+(?=[MLAZ])|\\s+");
    double area = 0;
    double[] start = null;
    double[] at = null;
    int i = 0;
    while (i < words.length) {
      String command = words[i++];
      i = words.length > i && words[i].isEmpty() ? i + 1 : i;
      if (command.equals("Z")) {
        area += cross(at, start);
      } else if (command.equals("A")) {
        double r = Double.parseDouble(words[i]);
        double[] to = {Double.parseDouble(words[i + 5]), Double.parseDouble(words[i + 6])};
        double a = 2 * Math.asin(Math.min(1, Math.hypot(to[0] - at[0], to[1] - at[1]) / 2 / r));
        a = words[i + 3].equals("1") ? 2 * Math.PI - a : a;
        area += cross(at, to) + (words[i + 4].equals("1") ? 1 : -1) * r * r * (a - Math.sin(a)) / 2;
        at = to;
        i += 7;
      } else {
        double[] to = {Double.parseDouble(words[i]), Double.parseDouble(words[i + 1])};
        area += at == null ? 0 : cross(at, to);
        start = at == null ? to : start;
        at = to;
        i += 2;
      }
    }
    return area;
  }

  private static double cross(double[] a, double[] b) {
    return (a[0] * b[1] - a[1] * b[0]) / 2;
  }
}
