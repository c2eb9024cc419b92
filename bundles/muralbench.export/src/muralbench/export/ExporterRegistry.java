// SPDX-License-Identifier: EPL-2.0
package muralbench.export;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The exporters that are known, by id. Immutable. */
public final class ExporterRegistry {
  private final Map<String, Exporter> exporters;

  private ExporterRegistry(Map<String, Exporter> exporters) {
    this.exporters = exporters;
  }

  /** The exporters that come with the program. */
  public static ExporterRegistry standard() {
    return new ExporterRegistry(Map.of()).with(StandardExporters.all());
  }

  /**
   * These exporters and more.
   *
   * @throws IllegalArgumentException if an id is there already
   */
  public ExporterRegistry with(List<? extends Exporter> more) {
    Map<String, Exporter> all = new LinkedHashMap<>(exporters);
    for (Exporter exporter : more) {
      if (all.putIfAbsent(exporter.id(), exporter) != null) {
        throw new IllegalArgumentException("two exporters with the id " + exporter.id());
      }
    }
    return new ExporterRegistry(all);
  }

  /** The exporter of an id. */
  public Optional<Exporter> find(String id) {
    return Optional.ofNullable(exporters.get(id));
  }

  /** All exporters in order of registration. */
  public List<Exporter> all() {
    return List.copyOf(exporters.values());
  }
}
