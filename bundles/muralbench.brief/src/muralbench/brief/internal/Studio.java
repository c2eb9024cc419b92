// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import java.util.Set;
import java.util.TreeSet;
import muralbench.base.InputException;
import muralbench.model.BackingBoard;
import muralbench.model.BoardMaterial;
import muralbench.model.EdgeProtection;
import muralbench.model.Making;
import muralbench.model.MuralFactory;
import muralbench.model.Painting;
import muralbench.model.Spare;

/**
 * Reads what the studio makes of the tiles: how pieces are made up, the spares and the boards of removable panels.
 *
 * @param lengths reads the lengths among it
 */
record Studio(Lengths lengths) {
  private static final MuralFactory MAKE = MuralFactory.eINSTANCE;
  private static final double POUND = 0.45359237;

  /** How pieces are made from tiles. */
  Making making(Field field) throws InputException {
    Making making = MAKE.createMaking();
    making.setPainted(Painting.get(field.at("painted").text(making.getPainted().getLiteral())));
    Field kerf = field.at("kerf");
    making.setKerf(kerf.isGiven() ? lengths.gap(kerf) : making.getKerf());
    Field edges = field.at("factoryEdges");
    if (edges.isGiven()) {
      Set<String> sides = new TreeSet<>();
      edges.items().forEach(side -> sides.add(side.text("")));
      making.setFactoryLeft(sides.contains("left"));
      making.setFactoryRight(sides.contains("right"));
      making.setFactoryTop(sides.contains("top"));
      making.setFactoryBottom(sides.contains("bottom"));
    }
    return making;
  }

  /** The spares of one kind of bond. */
  static Spare spare(String bond, Field percent) {
    Spare spare = MAKE.createSpare();
    spare.setBond(bond);
    spare.setPercent(percent.number(0));
    return spare;
  }

  /** The board of a removable panel. */
  BackingBoard board(Field field) throws InputException {
    BackingBoard board = MAKE.createBackingBoard();
    board.setMaterial(BoardMaterial.get(field.at("material").text(board.getMaterial().getLiteral())));
    Field thickness = field.at("thickness");
    board.setThickness(thickness.isGiven() ? lengths.size(thickness) : 0);
    board.setDensity(field.at("density").number(0));
    if (board.getMaterial() == BoardMaterial.OTHER && (board.getThickness() == 0 || board.getDensity() == 0)) {
      throw BriefProblem.at(field.pointer(), "board.other");
    }
    Field reveal = field.at("reveal");
    board.setReveal(reveal.isGiven() ? lengths.position(reveal) : 0);
    board.setEdge(EdgeProtection.get(field.at("edge").text(board.getEdge().getLiteral())));
    board.setHangerCapacity(kilograms(field.at("hangerCapacity")));
    return board;
  }

  /** A swing of temperature, °C; 0 if it is not given. */
  static double swing(Field field) {
    String text = field.text("");
    if (text.isEmpty()) {
      return 0;
    }
    double degrees = Double.parseDouble(text.replaceFirst(" ?°?[CF]$", ""));
    return text.endsWith("F") ? degrees * 5 / 9 : degrees;
  }

  private static double kilograms(Field field) {
    if (!field.isGiven() || field.node().isNumber()) {
      return field.number(0);
    }
    String text = field.text("");
    double number = Double.parseDouble(text.replaceFirst(" ?(kg|lb)$", ""));
    return text.endsWith("lb") ? number * POUND : number;
  }
}
