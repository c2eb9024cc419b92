// SPDX-License-Identifier: EPL-2.0
package muralbench.sample.plugin;

import java.util.List;
import java.util.function.Consumer;
import muralbench.setout.bond.Bond;
import muralbench.setout.bond.BondRequest;
import muralbench.setout.bond.Cell;
import muralbench.setout.bond.Pattern;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;

/** Columns of tiles, every second column dropped by half a tile and joint. */
public final class HalfDropBond implements Bond {
  @Override
  public String kind() {
    return "half-drop";
  }

  @Override
  public String label() {
    return "Half drop";
  }

  @Override
  public Pattern lay(BondRequest request) {
    double width = request.tile().width();
    double height = request.tile().height();
    return new HalfDrop(width, height, width + request.joint(), height + request.joint());
  }

  private record HalfDrop(double width, double height, double across, double up) implements Pattern {
    @Override
    public void cells(Box area, Consumer<Cell> each) {
      // One more on every side; only faces that meet the area are named.
      for (int column = count(area.minX(), across) - 1; column <= count(area.maxX(), across); column++) {
        for (int row = count(area.minY(), up) - 1; row <= count(area.maxY(), up) + 1; row++) {
          Contour face = Contour.rectangle(column * across, row * up - drop(column), width, height);
          if (face.box().meets(area)) {
            each.accept(new Cell(row, column, face));
          }
        }
      }
    }

    private double drop(int column) {
      return column % 2 == 0 ? 0 : up / 2;
    }

    private static int count(double length, double module) {
      return (int) Math.floor(length / module);
    }

    @Override
    public List<Run> runs(Axis axis, Box area) {
      return axis == Axis.ALONG ? List.of(new Run(0, width, across))
          : List.of(new Run(0, height, up), new Run(-up / 2, height, up));
    }

    @Override
    public double density() {
      return 1 / (across * up);
    }
  }
}
