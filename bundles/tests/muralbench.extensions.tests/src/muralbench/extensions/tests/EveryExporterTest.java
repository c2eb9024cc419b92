// SPDX-License-Identifier: EPL-2.0
package muralbench.extensions.tests;

import java.util.stream.Stream;
import muralbench.export.Exporter;
import muralbench.extensions.Contributions;
import muralbench.testsupport.ExporterContract;
import org.eclipse.core.runtime.RegistryFactory;

/** Every registered exporter, the program's own and those of others, keeps the contract. */
class EveryExporterTest extends ExporterContract {
  @Override
  protected Stream<Exporter> exporters() {
    return Contributions.exporters(RegistryFactory.getRegistry()).all().stream();
  }
}
