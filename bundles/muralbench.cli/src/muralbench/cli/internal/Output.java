// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Standard output. A print stream keeps its failures to itself; this one remembers what the first was. */
final class Output extends PrintStream {
  private static final Path LINK = Path.of("/proc/self/fd/1");

  private final Target target;

  /** Prints to a stream, in an encoding. */
  Output(OutputStream stream, Charset encoding) {
    this(new Target(stream), encoding);
  }

  private Output(Target target, Charset encoding) {
    super(new BufferedOutputStream(target), false, encoding);
    this.target = target;
  }

  /** The standard output of this process, in the encoding Java itself would use for it. */
  static Output standard() {
    String encoding = System.getProperty("stdout.encoding", System.getProperty("sun.stdout.encoding"));
    return new Output(new FileOutputStream(FileDescriptor.out),
        encoding == null ? Charset.defaultCharset() : Charset.forName(encoding));
  }

  /** Whether it failed because the program that reads it has seen enough and closed the pipe. */
  boolean readerLeft() {
    return target.failure != null && (saysPipe(target.failure) || target.standard() && leadsToPipe());
  }

  /** EPIPE has no exception of its own; its text is "Broken pipe" unless the system speaks another language. */
  private static boolean saysPipe(IOException failure) {
    return String.valueOf(failure.getMessage()).toLowerCase(Locale.ROOT).contains("pipe");
  }

  private static boolean leadsToPipe() {
    try {
      return Files.readSymbolicLink(LINK).toString().startsWith("pipe:");
    } catch (IOException | UnsupportedOperationException noSuchLink) {
      return false;
    }
  }

  /** Takes the bytes and keeps the first failure. */
  private static final class Target extends OutputStream {
    private final OutputStream stream;
    private IOException failure;

    Target(OutputStream stream) {
      this.stream = stream;
    }

    boolean standard() {
      return stream instanceof FileOutputStream;
    }

    @Override
    public void write(int b) throws IOException {
      write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      try {
        stream.write(bytes, from, length);
      } catch (IOException e) {
        failure = failure == null ? e : failure;
        throw e;
      }
    }
  }
}
