// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.survey;

/**
 * How far a measurement is from the adjusted wall.
 *
 * @param measurement what was measured
 * @param off measured less adjusted, mm
 * @param suspect whether that is more than {@link Survey#SUSPECT} times the accuracy of the tape
 */
public record Misfit(Measurement measurement, double off, boolean suspect) {}
