// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file.internal;

import muralbench.base.InputException;
import org.w3c.dom.Document;

/** One step from a schema version to the next, made on the XML because the old structure has no classes any more. */
interface Migration {
  /** The version this step starts from; it leads to the next. */
  int from();

  /** Changes the document from {@link #from} to the version after it. */
  void migrate(Document document, FileProblem problem) throws InputException;
}
