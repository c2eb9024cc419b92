// SPDX-License-Identifier: EPL-2.0
package muralbench.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import muralbench.pattern.block.Block;
import muralbench.pattern.block.BlockLibrary;
import muralbench.pattern.block.BlockText;
import muralbench.pattern.motif.Colourway;
import muralbench.pattern.motif.Designs;
import muralbench.pattern.motif.Motif;
import muralbench.pattern.motif.Orientation;

/** Tells designs apart among tiles with the traditional blocks, and among tiles that are nearly all different. */
public final class DesignsBenchmark {
  private static final Colourway IVORY = new Colourway("ivory", Map.of("white", "ivory", "light", "ivory"));

  private DesignsBenchmark() {}

  /** Runs all; takes about half a minute. */
  public static void main(String[] args) throws Exception {
    List<Motif> blocks = BlockLibrary.load().blocks().stream().map(Block::motif).toList();
    double ten = Medians.time(() -> designs(blocks, 10_000));
    double twenty = Medians.time(() -> designs(blocks, 20_000));
    print("designs of 10,000 tiles, " + blocks.size() + " blocks in all orientations", ten, "");
    print("designs of 20,000 tiles, " + blocks.size() + " blocks in all orientations", twenty, "aim at most 1000");
    List<Motif> drawings = new ArrayList<>();
    for (int i = 0; i < 20_000; i++) {
      drawings.add(drawing(i));
    }
    double half = Medians.time(() -> designs(drawings.subList(0, 10_000), 10_000));
    double all = Medians.time(() -> designs(drawings, 20_000));
    print("designs of 10,000 tiles, each drawn for itself", half, "");
    print("designs of 20,000 tiles, each drawn for itself", all, "aim at most 1000");
    System.out.printf(Locale.ROOT, "%-58s %9.2f      aim at most 2.3%n", "20,000 against 10,000 tiles", all / half);
  }

  private static Object designs(List<Motif> motifs, int tiles) {
    Designs designs = new Designs();
    for (int i = 0; i < tiles; i++) {
      Orientation orientation = Orientation.values()[i / motifs.size() % 8];
      // A new colourway, or what a motif looks like would be known from the run before.
      designs.add(motifs.get(i % motifs.size()), orientation, IVORY);
    }
    return designs.designs();
  }

  /** A tile of four by four squares in three colours. */
  private static Motif drawing(int seed) throws Exception {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder("block B\ngrid 4\ncolour A white\ncolour B blue\ncolour C red\n");
    for (int row = 0; row < 4; row++) {
      for (int column = 0; column < 4; column++) {
        text.append("ABC".charAt(random.nextInt(3))).append(column < 3 ? ' ' : '\n');
      }
    }
    return BlockText.parse("drawing", text.toString()).get(0).motif();
  }

  private static void print(String what, double milliseconds, String aim) {
    System.out.printf(Locale.ROOT, "%-58s %9.1f ms   %s%n", what, milliseconds, aim);
  }
}
