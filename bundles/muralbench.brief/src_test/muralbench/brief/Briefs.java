// SPDX-License-Identifier: EPL-2.0
package muralbench.brief;

/** Briefs for tests. */
final class Briefs {
  /** Every field there is. */
  static final String FULL = """
      { "format": "muralbench-brief", "version": 1, "title": "Harbour wall", "client": "Harbour office",
        "revision": "C", "units": "in",
        "site": { "exposure": "exterior-frost" },
        "tiles": [ { "id": "T6", "width": 6, "height": 6, "thickness": "3/8", "facialVariation": "1/32",
            "waterAbsorption": 0.3, "body": "stoneware" } ],
        "panels": [ { "id": "A", "title": "Low water", "tile": "T6", "joint": "1/8", "surface": "floor",
            "mounting": "removable", "edgeGap": "1/16",
            "outline": { "rectangle": [0, 36, 72, 48] },
            "openings": [ { "id": "A1", "kind": "outlet", "outline": { "rectangle": [20, 42, 2.25, 3.5] } } ],
            "bond": { "kind": "grid", "offset": 0.25, "rotation": 45, "settings": { "size": "2" } },
            "origin": [12, 36.5] } ] }
      """;

  /** No field that may be left out. */
  static final String SHORT = """
      { "format": "muralbench-brief", "version": 1, "title": "Harbour wall",
        "tiles": [ { "id": "T6", "width": 6, "height": 6 } ],
        "panels": [ { "id": "A", "tile": "T6", "joint": 0.125, "outline": { "rectangle": [0, 36, 72, 48] } } ] }
      """;

  private Briefs() {}
}
