// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import muralbench.base.length.LengthUnit;
import muralbench.editor.OpenMural;
import muralbench.editor.internal.commands.Names;
import muralbench.editor.internal.properties.Entries.Range;
import muralbench.model.DisplayUnits;
import muralbench.model.Exposure;
import muralbench.model.Mural;
import muralbench.model.Opening;
import muralbench.model.Panel;
import muralbench.model.TileClass;
import muralbench.model.TileKind;
import muralbench.setout.order.OrderLine;
import muralbench.setout.order.OrderList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.views.properties.IPropertySource;

/** Finds the properties of a thing. */
public final class PropertySources {
  private PropertySources() {}

  /** The properties of a mural, panel, opening or kind of tile, as they are now. */
  public static IPropertySource of(OpenMural mural, EObject thing) {
    return new ModelProperties(mural, thing, lines(mural, thing));
  }

  private static List<Property> lines(OpenMural mural, EObject thing) {
    if (thing instanceof Panel panel) {
      return new PanelLines(mural, panel).lines();
    }
    if (thing instanceof Opening opening) {
      return opening(mural, opening);
    }
    return thing instanceof TileKind tile ? tile(mural, tile) : mural(mural);
  }

  private static List<Property> mural(OpenMural open) {
    Mural mural = open.mural();
    List<Property> lines = new ArrayList<>();
    lines.add(Entries.words("title", "general", mural::getTitle, mural::setTitle));
    lines.add(Entries.words("client", "general", mural::getClient, mural::setClient));
    lines.add(Entries.words("revision", "general", mural::getRevision, mural::setRevision));
    lines.add(Entries.choice("units", "general", DisplayUnits.class, mural::getUnits, mural::setUnits));
    if (mural.getSite() != null) {
      lines.add(Entries.choice("exposure", "general", Exposure.class, mural.getSite()::getExposure,
          mural.getSite()::setExposure));
      lines.add(new Swing(mural.getSite(), open.units()).line());
    }
    lines.addAll(new MakingLines(open).lines());
    lines.add(Property.info("pieces", "result", () -> String.valueOf(open.setOut().pieces())));
    lines.add(Property.info("whole", "result", () -> String.valueOf(open.setOut().whole())));
    lines.add(Property.info("cut", "result", () -> String.valueOf(open.setOut().cut())));
    lines.add(Property.info("tilesToOrder", "result", () -> String.valueOf(open.setOut().tilesToOrder())));
    OrderList.of(open.setOut(), open.setOut().spec().allowances()).forEach(line -> lines.add(order(line)));
    return lines;
  }

  private static Property order(OrderLine line) {
    String words = ModelProperties.TEXTS.text(line.box() == 0 ? "order.single" : "order.boxes", "laid", line.laid(),
        "ordered", line.ordered(), "spares", line.spares(), "boxes", line.boxes(), "box", line.box());
    return Property.info(LineNames.ORDER + line.tile(), "result", () -> words);
  }

  private static List<Property> opening(OpenMural mural, Opening opening) {
    List<Property> lines = new ArrayList<>();
    lines.add(Entries.place(false, opening::getId, () -> Names.ids(mural.mural()), opening::setId));
    lines.add(Entries.words("kind", "general", opening::getKind, opening::setKind));
    lines.addAll(new OutlineLines(opening, mural.units(), opening::setOutline).lines());
    return lines;
  }

  private static List<Property> tile(OpenMural mural, TileKind tile) {
    LengthUnit unit = mural.units();
    List<Property> lines = new ArrayList<>();
    lines.add(Entries.id("general", tile::getId, () -> tileIds(mural.mural()), tile::setId));
    lines.add(Entries.words("body", "general", tile::getBody, tile::setBody));
    lines.add(Entries.length("width", "size", unit, Range.POSITIVE, tile::getWidth, tile::setWidth));
    lines.add(Entries.length("height", "size", unit, Range.POSITIVE, tile::getHeight, tile::setHeight));
    lines.add(Entries.length("thickness", "size", unit, Range.NOT_NEGATIVE, tile::getThickness, tile::setThickness));
    lines.add(Entries.length("facialVariation", "size", unit, Range.NOT_NEGATIVE, tile::getFacialVariation,
        tile::setFacialVariation));
    lines.add(Entries.choice("tileClass", "size", TileClass.class, tile::getTileClass, tile::setTileClass));
    lines.add(Entries.lengthOrBlank("warpage", "size", unit, -1, tile::getWarpage, tile::setWarpage));
    lines.add(Entries.numberOrBlank("waterAbsorption", "general", -1, tile::getWaterAbsorption,
        tile::setWaterAbsorption));
    lines.add(Entries.numberOrBlank("expansion", "general", 0, tile::getExpansion, tile::setExpansion));
    lines.add(Entries.countOrBlank("box", "general", tile::getBox, tile::setBox));
    return lines;
  }

  private static Set<String> tileIds(Mural mural) {
    return mural.getTileKinds().stream().map(TileKind::getId).collect(Collectors.toSet());
  }
}
