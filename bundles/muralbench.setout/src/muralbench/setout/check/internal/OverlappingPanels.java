// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.SetOut;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** No place on the wall can be tiled twice. A panel may lie in an opening of another. */
final class OverlappingPanels implements Rule {
  private static final GeometryFactory JTS = new GeometryFactory();

  /** A panel with its tiled region, which is made when first asked for. */
  private static final class Region {
    private final PanelSetOut panel;
    private final Box box;
    private Geometry geometry;

    Region(PanelSetOut panel) {
      this.panel = panel;
      box = panel.tiled().stream().map(Contour::box).reduce(Box::and).orElse(null);
    }

    Geometry geometry() {
      if (geometry == null) {
        Geometry edges = union(panel, true);
        geometry = OverlayNGRobust.overlay(edges, union(panel, false), OverlayNG.DIFFERENCE);
      }
      return geometry;
    }

    private static Geometry union(PanelSetOut panel, boolean outer) {
      Geometry all = JTS.createPolygon();
      for (Contour edge : panel.tiled()) {
        if (edge.signedArea() > 0 == outer) {
          all = OverlayNGRobust.overlay(all, Overlap.polygon(edge), OverlayNG.UNION);
        }
      }
      return all;
    }

    /** Area that both cover, mm²; none where they only share an edge, even if it is curved and its chords differ. */
    double shared(Region other) {
      // The floor and the wall each have their own plane.
      boolean apart = !panel.spec().surface().equals(other.panel.spec().surface());
      if (apart || box == null || other.box == null || !box.meets(other.box)) {
        return 0;
      }
      Geometry common = OverlayNGRobust.overlay(geometry(), other.geometry(), OverlayNG.INTERSECTION);
      return common.getArea() > SetOut.DUST_AREA + SetOut.CHORD_ERROR * common.getLength() ? common.getArea() : 0;
    }
  }

  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("panels.overlap", mural.spec().units());
    List<Region> regions = mural.panels().stream().map(Region::new).toList();
    for (int i = 0; i < regions.size(); i++) {
      for (int j = 0; j < i; j++) {
        double shared = regions.get(i).shared(regions.get(j));
        if (shared > 0) {
          found.accept(finding(report, regions.get(j).panel.spec().id(), regions.get(i).panel.spec().id(), shared));
        }
      }
    }
  }

  private static Finding finding(Report report, String first, String second, double area) {
    return report.finding(Grade.ERROR, second, "", Map.of("panels", List.of(first, second), "area", area),
        "first", first, "second", second);
  }
}
