// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.base.InputException;

/** The traditional blocks that come with the program, read from text files beside this class. */
public final class BlockLibrary {
  private static final List<String> FILES =
      List.of("patches.txt", "stars.txt", "triangles.txt", "strips.txt", "curves.txt");

  private final List<Block> blocks;

  private BlockLibrary(List<Block> blocks) {
    this.blocks = blocks;
  }

  /** Reads the library; takes some tens of milliseconds. */
  public static BlockLibrary load() {
    List<Block> blocks = new ArrayList<>();
    try {
      for (String file : FILES) {
        try (InputStream text = BlockLibrary.class.getResourceAsStream("library/" + file)) {
          blocks.addAll(BlockText.parse(file, new String(text.readAllBytes(), StandardCharsets.UTF_8)));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InputException e) {
      throw new IllegalStateException(e);
    }
    return new BlockLibrary(List.copyOf(blocks));
  }

  /** All blocks, those made up alike together. */
  public List<Block> blocks() {
    return blocks;
  }

  /** The block with a name or another name, capitals or not. */
  public Optional<Block> find(String name) {
    return blocks.stream().filter(block -> block.name().equalsIgnoreCase(name)
        || block.otherNames().stream().anyMatch(name::equalsIgnoreCase)).findFirst();
  }
}
