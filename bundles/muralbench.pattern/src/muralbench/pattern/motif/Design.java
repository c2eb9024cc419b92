// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

/**
 * What has to be painted to get a tile, whichever way the tile is then turned. Two tiles are of one design exactly if a
 * turn makes one look like the other; mirror images share the family and differ in the hand.
 *
 * @param number number of the design, from 1 in the order of first appearance
 * @param family the number of the design that was the first of its mirror images
 * @param hand which of two mirror images it is
 * @param motif the drawing, in its colourway, in the orientation in which it is painted
 */
public record Design(int number, int family, Hand hand, Motif motif) {
  @Override
  public boolean equals(Object other) {
    return other instanceof Design design && design.number == number && design.motif == motif;
  }

  @Override
  public int hashCode() {
    return number;
  }
}
