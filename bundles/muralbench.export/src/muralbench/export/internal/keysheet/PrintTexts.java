// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.time.LocalDate;
import java.util.List;
import muralbench.base.Messages;
import muralbench.base.length.LengthUnit;
import muralbench.export.ExportContext;
import muralbench.export.internal.pdf.TitleBlock;
import muralbench.setout.MuralSpec;
import muralbench.setout.PanelSpec;

/** Texts that are the same on every key sheet of a mural. */
final class PrintTexts {
  private final Messages texts = Messages.of(PrintTexts.class);
  private final MuralSpec mural;
  private final LocalDate date;

  PrintTexts(ExportContext context) {
    mural = context.setOut().spec();
    date = context.date();
  }

  Messages texts() {
    return texts;
  }

  LengthUnit units() {
    return mural.units();
  }

  /** The title of the mural, or a word for it. */
  String project() {
    return mural.title().isBlank() ? texts.text("untitled") : mural.title();
  }

  /** A panel's id and title. */
  static String name(PanelSpec panel) {
    return panel.title().isBlank() ? panel.id() : panel.id() + " · " + panel.title();
  }

  /** The title block of a sheet. */
  TitleBlock titleBlock(String subject, String scale, int number, int count) {
    String sheet = texts.text("title.sheet.value", "number", number, "count", count);
    return new TitleBlock(List.of(
        List.of(new TitleBlock.Field(texts.text("title.project"), project(), 1)),
        List.of(new TitleBlock.Field(texts.text("title.client"), mural.client(), 1)),
        List.of(new TitleBlock.Field(texts.text("title.subject"), subject, 1)),
        List.of(new TitleBlock.Field(texts.text("title.sheet"), sheet, 0.5),
            new TitleBlock.Field(texts.text("title.scale"), scale, 0.5)),
        List.of(new TitleBlock.Field(texts.text("title.revision"), mural.revision(), 0.5),
            new TitleBlock.Field(texts.text("title.date"), date.toString(), 0.5))));
  }
}
