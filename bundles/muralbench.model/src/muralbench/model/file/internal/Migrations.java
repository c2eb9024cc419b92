// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file.internal;

import java.io.IOException;
import java.util.List;
import muralbench.base.InputException;
import muralbench.model.file.SchemaVersion;
import org.w3c.dom.Document;
import org.xml.sax.SAXException;

/** All migration steps in order. */
public final class Migrations {
  static final List<Migration> STEPS = List.of(new Version1To2());

  private Migrations() {}

  /**
   * Brings {@code mural.xmi} of an older version to the current one, step by step.
   *
   * @param version its version, from {@link SchemaVersion#OLDEST} to {@link SchemaVersion#CURRENT}
   */
  public static byte[] toCurrent(int version, byte[] xmi, FileProblem problem) throws InputException {
    if (version == SchemaVersion.CURRENT) {
      return xmi;
    }
    try {
      Document document = SafeXml.parse(xmi);
      for (Migration step : STEPS) {
        if (step.from() >= version) {
          step.migrate(document, problem);
        }
      }
      return SafeXml.bytes(document);
    } catch (SAXException | IOException e) {
      throw MuralXmi.damaged(e, problem);
    }
  }
}
