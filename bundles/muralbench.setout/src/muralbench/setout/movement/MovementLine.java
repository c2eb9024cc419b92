// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.movement;

/**
 * One straight movement joint through a panel.
 *
 * @param axis the way it runs
 * @param at its middle, mm: x of a vertical one, y of a horizontal one, in the wall plane
 * @param throughTile whether no straight joint runs there, so that tile has to be cut for it
 * @param throughKeepOut whether it runs through something that is better not cut, for want of another line
 */
public record MovementLine(MovementAxis axis, double at, boolean throughTile, boolean throughKeepOut) {}
