// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import java.util.List;
import muralbench.base.Messages;
import muralbench.setout.geometry.PathData.PathDataException;

/** Carries out the commands of path data one after the other. */
final class PathReader {
  private static final Messages MESSAGES = Messages.of(PathData.class);

  private final PathScanner scanner;
  private final PathBuilder path;
  private Vec base = Vec.ZERO;
  private Vec cubicControl;
  private Vec quadraticControl;

  PathReader(String data, boolean closing) {
    scanner = new PathScanner(data);
    path = new PathBuilder(closing);
  }

  List<Contour> contours() throws PathDataException {
    commands();
    return something(path.contours());
  }

  List<List<Segment>> lines() throws PathDataException {
    commands();
    return something(path.lines());
  }

  private static <T> List<T> something(List<T> drawn) throws PathDataException {
    if (drawn.isEmpty()) {
      throw new PathDataException(MESSAGES.text("path.nothing"));
    }
    return drawn;
  }

  private void commands() throws PathDataException {
    if (!scanner.more()) {
      throw new PathDataException(MESSAGES.text("path.empty"));
    }
    boolean started = false;
    while (scanner.more()) {
      int at = scanner.position();
      if (!started && !scanner.startsSubpath()) {
        throw scanner.expected("path.start");
      }
      started = true;
      command(scanner.command(), at);
    }
  }

  private void command(char letter, int at) throws PathDataException {
    if (letter == 'Z' || letter == 'z') {
      path.close();
      forgetControls();
      return;
    }
    char each = letter;
    do {
      base = Character.isLowerCase(each) ? path.here() : Vec.ZERO;
      segment(each, at);
      // Further pairs after a move are lines.
      each = each == 'M' ? 'L' : each == 'm' ? 'l' : each;
    } while (scanner.repeats());
  }

  private void segment(char letter, int at) throws PathDataException {
    switch (Character.toUpperCase(letter)) {
      case 'M' -> path.move(checked(firstPoint(), at));
      case 'L' -> path.line(checked(firstPoint(), at));
      case 'H' -> path.line(checked(new Vec(base.x() + scanner.first(), path.here().y()), at));
      case 'V' -> path.line(checked(new Vec(path.here().x(), base.y() + scanner.first()), at));
      case 'C' -> cubic(firstPoint(), nextPoint(), nextPoint(), at);
      case 'S' -> cubic(reflected(cubicControl), firstPoint(), nextPoint(), at);
      case 'Q' -> quadratic(firstPoint(), nextPoint(), at);
      case 'T' -> quadratic(reflected(quadraticControl), firstPoint(), at);
      default -> arc(at);
    }
    if ("CS".indexOf(Character.toUpperCase(letter)) < 0) {
      cubicControl = null;
    }
    if ("QT".indexOf(Character.toUpperCase(letter)) < 0) {
      quadraticControl = null;
    }
  }

  private void cubic(Vec c1, Vec c2, Vec to, int at) throws PathDataException {
    path.cubic(checked(c1, at), checked(c2, at), checked(to, at));
    cubicControl = c2;
  }

  private void quadratic(Vec control, Vec to, int at) throws PathDataException {
    Cubic cubic = Cubic.ofQuadratic(path.here(), checked(control, at), checked(to, at));
    path.cubic(cubic.c1(), cubic.c2(), to);
    quadraticControl = control;
  }

  private void arc(int at) throws PathDataException {
    EndpointArc arc = new EndpointArc(scanner.first(), scanner.next(), scanner.next(), scanner.flag(), scanner.flag());
    Vec here = path.here();
    Vec to = checked(nextPoint(), at);
    if (to.equals(here)) {
      return;
    }
    Segment segment = arc.between(here, to);
    if (segment instanceof Arc full) {
      checked(full.centre(), at);
      checked(new Vec(full.rx() + full.ry(), full.from() + full.sweep()), at);
    }
    path.add(segment, to);
  }

  private Vec reflected(Vec control) {
    return control == null ? path.here() : path.here().times(2).minus(control);
  }

  private Vec firstPoint() throws PathDataException {
    double x = scanner.first();
    return base.plus(new Vec(x, scanner.next()));
  }

  private Vec nextPoint() throws PathDataException {
    double x = scanner.next();
    return base.plus(new Vec(x, scanner.next()));
  }

  private void forgetControls() {
    cubicControl = null;
    quadraticControl = null;
  }

  private static Vec checked(Vec point, int at) throws PathDataException {
    if (!Double.isFinite(point.x()) || !Double.isFinite(point.y())) {
      throw new PathDataException(MESSAGES.text("path.overflow", "at", at));
    }
    return point;
  }
}
