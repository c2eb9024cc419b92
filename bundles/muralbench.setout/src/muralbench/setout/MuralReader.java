// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.base.place.PlaceIds;
import muralbench.model.DisplayUnits;
import muralbench.model.Exposure;
import muralbench.model.Mural;
import muralbench.model.Opening;
import muralbench.model.Outline;
import muralbench.model.Panel;
import muralbench.model.RepeatedOutline;
import muralbench.model.TileKind;
import muralbench.setout.geometry.Contour;
import muralbench.setout.movement.MovementSpec;
import org.eclipse.emf.ecore.EObject;

/** Takes what the set-out needs from the model. */
public final class MuralReader {
  private MuralReader() {}

  /**
   * The whole mural.
   *
   * @throws InputException naming the panel, opening or tile kind if a value is missing or out of range, an id is there
   *     twice or a path cannot be read
   */
  public static MuralSpec mural(Mural mural) throws InputException {
    return mural(mural, WorkReader.NONE);
  }

  /** The whole mural with what is worked on its panels; see {@link #mural(Mural)}. */
  public static MuralSpec mural(Mural mural, WorkReader works) throws InputException {
    PanelReader reader = new PanelReader(units(mural), works);
    checkIds(mural, reader);
    for (TileKind tile : mural.getTileKinds()) {
      reader.tile(tile);
    }
    List<PanelSpec> panels = new ArrayList<>();
    for (Panel panel : mural.getPanels()) {
      panels.add(new LinkedPanelReader(reader, PanelLinks.of(panel)).read(panel));
    }
    checkRepeatedIds(panels);
    return mural(mural, panels);
  }

  /**
   * The mural with panels that were read before.
   *
   * @throws InputException if the spares, a box or the swing of temperature cannot be
   */
  public static MuralSpec mural(Mural mural, List<PanelSpec> panels) throws InputException {
    MakingReader making = new MakingReader(new Ranges("", units(mural)));
    Exposure exposure = mural.getSite() == null ? Exposure.INTERIOR_DRY : mural.getSite().getExposure();
    return new MuralSpec(text(mural.getTitle()), text(mural.getClient()), text(mural.getRevision()), units(mural),
        exposure.getLiteral(), panels, making.swing(mural), making.allowances(mural));
  }

  /** One panel; see {@link #mural}. Whether its ids are unique in the mural is not looked at. */
  public static PanelSpec panel(Panel panel) throws InputException {
    return panel(panel, panel);
  }

  /**
   * A changed copy of a panel, read as if it stood in the mural in the place of that panel; what panels share with each
   * other is taken from there.
   */
  public static PanelSpec panel(Panel copy, Panel panel) throws InputException {
    return panel(copy, panel, WorkReader.NONE);
  }

  /** As {@link #panel(Panel, Panel)}, with what is worked on the panel. */
  public static PanelSpec panel(Panel copy, Panel panel, WorkReader works) throws InputException {
    return new LinkedPanelReader(new PanelReader(units(panel), works), PanelLinks.of(copy, panel)).read(copy);
  }

  /**
   * An outline as a counter-clockwise contour.
   *
   * @param owner id of the panel or opening it belongs to, for errors
   */
  public static Contour outline(Outline outline, String owner) throws InputException {
    return new OutlineReader(new Ranges(owner, units(outline))).contour(outline);
  }

  /**
   * The rule for the movement joints of a panel at its place, whether the panel follows it or not.
   *
   * @throws InputException if the swing of temperature cannot be
   */
  public static MovementSpec.ByRule movementRule(Panel panel) throws InputException {
    return new MovementReader(new Ranges(text(panel.getId()), units(panel))).byRule(panel);
  }

  /** The mural something belongs to; empty for what stands alone. */
  public static Optional<Mural> owner(EObject part) {
    EObject owner = part;
    while (owner != null && !(owner instanceof Mural)) {
      owner = owner.eContainer();
    }
    return Optional.ofNullable((Mural) owner);
  }

  /** The units of the mural something belongs to; millimetres for what stands alone. */
  public static LengthUnit units(EObject part) {
    return owner(part).filter(mural -> mural.getUnits() == DisplayUnits.INCHES).isPresent() ? LengthUnit.INCH
        : LengthUnit.MILLIMETRE;
  }

  private static void checkIds(Mural mural, PanelReader reader) throws InputException {
    Set<String> tiles = new HashSet<>();
    for (TileKind tile : mural.getTileKinds()) {
      reader.checkId(tile.getId(), "tile", "", tiles);
    }
    Set<String> places = new LinkedHashSet<>();
    for (Panel panel : mural.getPanels()) {
      reader.checkId(panel.getId(), "panel", "", new HashSet<>());
      checkPlace(panel.getId(), places);
      if (!(panel.getOutline() instanceof RepeatedOutline)) {
        for (Opening opening : panel.getOpenings()) {
          reader.checkId(opening.getId(), "opening", panel.getId(), new HashSet<>());
          checkPlace(opening.getId(), places);
        }
      }
    }
  }

  /** The openings of panels that repeat others have ids that come from both. */
  private static void checkRepeatedIds(List<PanelSpec> panels) throws InputException {
    Set<String> places = new LinkedHashSet<>();
    for (PanelSpec panel : panels) {
      checkPlace(panel.id(), places);
      for (OpeningSpec opening : panel.openings()) {
        checkPlace(opening.id(), places);
      }
    }
  }

  private static void checkPlace(String id, Set<String> places) throws InputException {
    Optional<String> other = PlaceIds.taken(id, places);
    if (other.isPresent()) {
      throw new InputException(id, PlaceIds.takenProblem(id, other.get()), PlaceIds.takenRemedy());
    }
    places.add(id);
  }

  private static String text(String value) {
    return value == null ? "" : value;
  }
}
