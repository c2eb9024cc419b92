// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import muralbench.base.Messages;

/**
 * A failure of the file system in plain words.
 *
 * @param problem what went wrong, with the file if it is known
 * @param remedy what to do, a sentence
 */
record DiskTrouble(String problem, String remedy) {
  private static final Messages TEXTS = Messages.of(DiskTrouble.class);

  /** Parts a problem from its remedy where the file rooms report both in one text. */
  private static final String SEAM = "; ";

  static DiskTrouble of(IOException failure) {
    String said = failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
    int seam = said.lastIndexOf(SEAM);
    if (seam > 0) {
      String remedy = said.substring(seam + SEAM.length());
      return new DiskTrouble(said.substring(0, seam),
          Character.toUpperCase(remedy.charAt(0)) + remedy.substring(1) + ".");
    }
    boolean known = failure instanceof FileSystemException where && where.getFile() != null;
    return new DiskTrouble(known ? ((FileSystemException) failure).getFile() + ": " + reason(failure) : said,
        TEXTS.text("error.disk.remedy"));
  }

  private static String reason(IOException failure) {
    if (failure instanceof NoSuchFileException) {
      return TEXTS.text("error.disk.missing");
    }
    if (failure instanceof AccessDeniedException) {
      return TEXTS.text("error.disk.denied");
    }
    if (failure instanceof FileAlreadyExistsException || failure instanceof NotDirectoryException) {
      return TEXTS.text("error.disk.file");
    }
    String reason = ((FileSystemException) failure).getReason();
    return reason == null ? failure.getClass().getSimpleName() : reason;
  }
}
