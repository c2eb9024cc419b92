// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.util.Arrays;
import java.util.stream.Collectors;
import muralbench.base.Messages;
import muralbench.base.length.LengthUnit;
import muralbench.export.Paper;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The option {@code --paper}; left out, the paper is the usual one where the mural's units are used. */
final class PaperOption {
  private static final Messages TEXTS = Messages.of(PaperOption.class);

  @Option(names = "--paper", paramLabel = "PAPER", converter = ByWord.class, descriptionKey = "option.paper")
  private Paper paper;

  /** The paper asked for, or letter for a mural in inches and A4 for one in millimetres. */
  Paper orUsualFor(LengthUnit units) {
    if (paper != null) {
      return paper;
    }
    return units == LengthUnit.INCH ? Paper.LETTER : Paper.A4;
  }

  /** Reads a paper's name. */
  static final class ByWord implements ITypeConverter<Paper> {
    @Override
    public Paper convert(String word) {
      return Paper.find(word).orElseThrow(() -> new TypeConversionException(TEXTS.text("error.paper", "word", word,
          "known", Arrays.stream(Paper.values()).map(Paper::word).collect(Collectors.joining(", ")))));
    }
  }
}
