// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import muralbench.base.InputException;
import muralbench.base.Messages;

/**
 * Blocks as plain text. A remark stands behind #. Colours are capital letters that stand for names. Rows are written
 * from the top, units from the left, parted by blanks:
 *
 * <pre>
 * A          plain                     A/B A\B    half squares along the rising or falling diagonal, left colour first
 * A:B:C:D    quarter squares: top, right, bottom, left
 * A/B:C      a half square and two quarters, the quarters clockwise; likewise A:B/C, A\B:C, A:B\C
 * A-B-C      rails from the top        A|B        rails from the left
 * &lt;A&gt;B       a square of A on its corner, corners of B
 * sw(A)B     a quarter circle of A about the lower left corner (se, ne, nw for the others), the rest B
 * .          the unit is covered by a shape below
 * </pre>
 *
 * <p>A block is written as
 *
 * <pre>
 * block Shoofly
 * also Shoo Fly               another name; as many lines as need be
 * grid 3                      units each way
 * colour A ground
 * colour B star
 * radius 3/4                  of quarter circles, in units; 3/4 if left out
 * A/B A B\A                   the rows
 * A   B A
 * A\B A B/A
 * rectangle A 0,0 2,1         lower left corner, width and height, in units from the lower left of the block
 * shape B 0,0 2,0 1,1         corners in order; whole numbers, fractions or decimals
 * geese 0,0 up B A            lower left corner, where the triangle points, its colour, the colour beside it
 * </pre>
 */
public final class BlockText {
  static final Messages MESSAGES = Messages.of(Block.class);

  private final String source;
  private final List<Block> blocks = new ArrayList<>();
  private BlockReader reader;

  private BlockText(String source) {
    this.source = source;
  }

  /**
   * Reads blocks.
   *
   * @param source name of the file or field, for messages
   * @param text the text
   * @return the blocks in their order
   * @throws InputException naming the line or the block, and the remedy
   */
  public static List<Block> parse(String source, String text) throws InputException {
    BlockText all = new BlockText(source);
    int number = 0;
    for (String line : text.split("\\R")) {
      number++;
      String bare = line.replaceFirst("#.*", "").strip();
      if (!bare.isEmpty()) {
        all.line(number, bare);
      }
    }
    all.end();
    return List.copyOf(all.blocks);
  }

  private void line(int number, String line) throws InputException {
    if (line.equals("block") || line.startsWith("block ")) {
      end();
      reader = new BlockReader(source, line.substring(5).strip());
    } else if (reader == null) {
      throw new InputException(source, MESSAGES.text("text.first", "line", number), MESSAGES.text("text.first.remedy"));
    } else {
      reader.line(number, line);
    }
  }

  private void end() throws InputException {
    if (reader != null) {
      blocks.add(reader.block());
    }
    Set<String> names = new LinkedHashSet<>();
    for (Block block : blocks) {
      if (!names.add(block.name())) {
        throw new InputException(source, MESSAGES.text("text.twice", "name", block.name()),
            MESSAGES.text("text.twice.remedy"));
      }
    }
  }
}
