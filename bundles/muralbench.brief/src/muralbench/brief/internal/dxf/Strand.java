// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.dxf;

import java.util.ArrayList;
import java.util.List;

/**
 * Edges that hang together, each beginning where the one before ends.
 *
 * @param edges at least one
 * @param closed whether the last ends where the first begins
 */
record Strand(List<Edge> edges, boolean closed) {
  Strand {
    edges = List.copyOf(edges);
  }

  Spot start() {
    return edges.get(0).from();
  }

  Spot end() {
    return edges.get(edges.size() - 1).to();
  }

  Strand reversed() {
    List<Edge> reversed = new ArrayList<>();
    for (int i = edges.size() - 1; i >= 0; i--) {
      reversed.add(edges.get(i).reversed());
    }
    return new Strand(reversed, closed);
  }
}
