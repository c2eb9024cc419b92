// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import muralbench.cli.internal.CommandBed.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UsageTest {
  @TempDir
  private Path folder;

  @Test
  void showsHelpOnStandardOutput() {
    Result result = run("--help");

    assertEquals(ExitCode.DONE, result.code());
    assertTrue(result.out().startsWith("Usage: muralbench"), result.out());
    assertTrue(result.out().contains("Exit codes: 0 done"), result.out());
    assertEquals("", result.err());
  }

  @Test
  void showsItsVersion() {
    assertEquals("Muralbench 1.2.3\n", run("--version").out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"demo", "new", "pieces", "sheets", "cuts", "check", "export"})
  void everyVerbExplainsItselfAndItsOptions(String verb) {
    Result result = run(verb, "--help");

    assertEquals(ExitCode.DONE, result.code());
    assertTrue(result.out().startsWith("Usage: muralbench " + verb), result.out());
    assertTrue(run("--help").out().contains("\n  " + verb + " "), "not in the list of verbs");
    assertTrue(result.out().lines().noneMatch(line -> line.matches("\\s+--\\w+(=\\w+)?\\s*")), result.out());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      ''                               | Name a verb
      paint                            | no verb 'paint'
      check                            | FILE
      check a.mural b.mural            | b.mural
      check --loud a.mural             | --loud
      sheets a.mural                   | --out
      sheets a.mural --out             | --out
      sheets a.mural --out d --paper b | letter, tabloid, a4, a3
      new a.json                       | --out
      check -clean a.mural             | -clean
      new a.json --out new/            | 'new/' names a folder
      sheets a.mural --out=            | the name is empty
      new a.json --out=                | the name is empty
      """)
  void badUsageIsTwoPlainLinesAndExitTwo(String line, String named) {
    Result result = run((Object[]) (line.isEmpty() ? new String[0] : line.split(" ")));

    assertEquals(ExitCode.BAD_INPUT, result.code());
    assertEquals("", result.out());
    assertTrue(result.err().startsWith("muralbench: ") && result.err().contains(named), result.err());
    assertEquals(2, result.err().lines().count(), result.err());
    assertTrue(result.err().contains("--help'"), result.err());
  }

  @Test
  void wordsTheFrameworkWouldTakeComeThroughQuoted() {
    String[] plain = CliApplication.unquoted(new String[] {"=check", "=-clean", "==a", "=", "bare"});

    assertEquals("check,-clean,=a,,bare", String.join(",", plain));
  }

  private Result run(Object... arguments) {
    return new CommandBed(folder).run(arguments);
  }
}
