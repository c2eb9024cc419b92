// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.base.Messages;
import muralbench.base.PlainLine;

/** Findings as a table for people and as JSON for programs. */
final class FindingsReport {
  private static final Messages TEXTS = Messages.of(FindingsReport.class);

  private final List<Finding> findings;

  FindingsReport(List<Finding> findings) {
    this.findings = List.copyOf(findings);
  }

  /** The findings of error grade only. */
  FindingsReport errors() {
    return new FindingsReport(findings.stream().filter(finding -> finding.grade() == Grade.ERROR).toList());
  }

  /** {@link ExitCode#RULE_BROKEN} if there is a finding of error grade. */
  int exitCode() {
    return errors().findings.isEmpty() ? ExitCode.DONE : ExitCode.RULE_BROKEN;
  }

  /** For each finding what it is, what to do, and where the rule comes from; nothing if there are none. */
  void table(PrintStream out) {
    int place = findings.stream().mapToInt(finding -> PlainLine.of(finding.place()).length()).max().orElse(0);
    for (Finding finding : findings) {
      String head = String.format(Locale.ROOT, "%-8s %-" + Math.max(1, place) + "s  ",
          TEXTS.text("grade." + word(finding.grade())), PlainLine.of(finding.place()));
      out.println(head + PlainLine.of(finding.message()));
      String below = " ".repeat(head.length());
      out.println(below + PlainLine.of(finding.remedy()));
      out.println(below + PlainLine.of(TEXTS.text("finding.source", "source", finding.source())));
    }
  }

  /** {@code {"findings":[...]}} in UTF-8, on one line. */
  void json(OutputStream out) throws IOException {
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
      json.writeStartObject();
      json.writeArrayFieldStart("findings");
      for (Finding finding : findings) {
        write(json, finding);
      }
      json.writeEndArray();
      json.writeEndObject();
      json.writeRaw('\n');
    }
  }

  private static void write(JsonGenerator json, Finding finding) throws IOException {
    json.writeStartObject();
    json.writeStringField("code", finding.code());
    json.writeStringField("grade", word(finding.grade()));
    json.writeStringField("place", finding.place());
    json.writeStringField("message", finding.message());
    json.writeStringField("remedy", finding.remedy());
    json.writeStringField("source", finding.source());
    json.writeObjectFieldStart("values");
    for (Map.Entry<String, Object> value : new TreeMap<>(finding.values()).entrySet()) {
      json.writeFieldName(value.getKey());
      write(json, value.getValue());
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private static void write(JsonGenerator json, Object value) throws IOException {
    if (value instanceof Iterable<?> several) {
      json.writeStartArray();
      for (Object one : several) {
        write(json, one);
      }
      json.writeEndArray();
    } else if (value instanceof Number || value instanceof Boolean) {
      json.writeObject(value);
    } else {
      json.writeString(String.valueOf(value));
    }
  }

  private static String word(Grade grade) {
    return grade.name().toLowerCase(Locale.ROOT);
  }
}
