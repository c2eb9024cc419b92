// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.io.File;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import muralbench.base.Messages;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the name of a file or folder as it was typed; Java takes an empty one for the folder one is in. */
final class FileName implements ITypeConverter<Path> {
  private static final Messages TEXTS = Messages.of(FileName.class);

  @Override
  public Path convert(String name) {
    if (name.isBlank()) {
      throw new TypeConversionException(TEXTS.text("error.path.empty"));
    }
    try {
      return Path.of(name);
    } catch (InvalidPathException unfit) {
      throw new TypeConversionException(TEXTS.text("error.path", "path", name));
    }
  }

  /** Reads the name of a file that is to be written: with a slash at its end it would name a folder. */
  static final class Written implements ITypeConverter<Path> {
    @Override
    public Path convert(String name) {
      if (name.endsWith("/") || name.endsWith(File.separator)) {
        throw new TypeConversionException(TEXTS.text("error.path.folder", "path", name));
      }
      return new FileName().convert(name);
    }
  }
}
