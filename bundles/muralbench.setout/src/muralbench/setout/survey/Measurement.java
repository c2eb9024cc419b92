// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.survey;

/** One measurement made on site between or at named points; lengths in millimetres. */
public sealed interface Measurement {
  /** What was measured, in words such as {@code bottom} or {@code rise at 2}. */
  String name();

  /** What the tape or the level said, mm. */
  double value();

  /** A length taped from one point to another, above 0. */
  record Tape(String name, int from, int to, double value) implements Measurement {}

  /** The height of a point above the level line, negative below it. */
  record Rise(String name, int point, double value) implements Measurement {}

  /** The distance of a point along the level line, from its left end. */
  record Along(String name, int point, double value) implements Measurement {}
}
