// SPDX-License-Identifier: EPL-2.0
package muralbench.base.file;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A file being written beside its place; closing it forces it to disk. */
final class StagedFile extends BufferedOutputStream {
  private final FileChannel channel;
  private final Path staged;
  private final Path target;

  private StagedFile(FileChannel channel, Path staged, Path target) {
    super(Channels.newOutputStream(channel), 1 << 16);
    this.channel = channel;
    this.staged = staged;
    this.target = target;
  }

  static StagedFile create(Path staged, Path target) throws IOException {
    FileChannel channel = FileChannel.open(staged, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);
    return new StagedFile(channel, staged, target);
  }

  Path staged() {
    return staged;
  }

  Path target() {
    return target;
  }

  /** Closes without caring for what is still in the buffer. */
  void abandon() throws IOException {
    channel.close();
  }

  @Override
  public void close() throws IOException {
    if (channel.isOpen()) {
      try {
        flush();
        channel.force(true);
      } finally {
        channel.close();
      }
    }
  }
}
