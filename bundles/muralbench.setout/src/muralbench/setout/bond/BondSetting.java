// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

/**
 * A parameter of a bond, given as text. Lengths carry their unit; a bare number is in millimetres.
 *
 * @param name as in briefs and files, one lower-case word
 * @param label name for people
 * @param standard the text that stands for a setting left out; empty if the bond works it out from the tile
 * @param hint what it does and which values will do, one sentence
 */
public record BondSetting(String name, String label, String standard, String hint) {}
