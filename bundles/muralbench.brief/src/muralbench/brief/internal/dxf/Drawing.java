// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.dxf;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;

/**
 * What a DXF file says that matters here: the sections HEADER and ENTITIES as in the DXF reference of AutoCAD, which
 * reads the same from R12 to 2018. Blocks, tables and objects are passed over, and so is what lies in paper space.
 *
 * @param units the header variable $INSUNITS; 0 for a drawing without units
 * @param entities what is drawn in the model
 */
record Drawing(int units, List<Entity> entities) {
  private static final int MOST = 200_000;

  static Drawing read(byte[] file, DxfProblem problem) throws InputException {
    TagReader tags = new TagReader(file, problem);
    int units = 0;
    List<Entity> entities = new ArrayList<>();
    while (!tags.atEnd()) {
      Tag tag = tags.take();
      if (!tag.is(0, "SECTION")) {
        throw problem.at(tag.line(), "section");
      }
      String name = tags.take().value();
      if (name.equals("HEADER")) {
        units = header(tags, problem);
      } else if (name.equals("ENTITIES")) {
        entities(tags, entities, problem);
      }
      while (!endOfSection(tags, problem)) {
        tags.take();
      }
      tags.take();
    }
    return new Drawing(units, entities);
  }

  private static boolean endOfSection(TagReader tags, DxfProblem problem) throws InputException {
    if (tags.atEnd()) {
      throw problem.at(tags.peek().line(), "truncated");
    }
    return tags.peek().is(0, "ENDSEC");
  }

  private static int header(TagReader tags, DxfProblem problem) throws InputException {
    int units = 0;
    while (!endOfSection(tags, problem)) {
      if (tags.take().is(9, "$INSUNITS") && tags.peek().code() == 70) {
        units = (int) Entity.number(tags.take(), problem);
      }
    }
    return units;
  }

  private static void entities(TagReader tags, List<Entity> entities, DxfProblem problem) throws InputException {
    while (!endOfSection(tags, problem)) {
      Entity entity = entity(tags, problem);
      if (entity.type().equals("POLYLINE")) {
        entity = new Entity(entity.type(), entity.tags(), entity.line(), vertices(tags, entity, problem));
      }
      if (!entity.onPaper()) {
        entities.add(entity);
      }
      if (entities.size() > MOST) {
        throw problem.of("huge", "limit", MOST);
      }
    }
  }

  private static Entity entity(TagReader tags, DxfProblem problem) throws InputException {
    Tag type = tags.take();
    if (type.code() != 0) {
      throw problem.at(type.line(), "code");
    }
    List<Tag> own = new ArrayList<>();
    while (tags.peek().code() != 0) {
      own.add(tags.take());
    }
    return new Entity(type.value(), own, type.line(), List.of());
  }

  private static List<Entity> vertices(TagReader tags, Entity polyline, DxfProblem problem) throws InputException {
    List<Entity> vertices = new ArrayList<>();
    while (tags.peek().is(0, "VERTEX")) {
      vertices.add(entity(tags, problem));
    }
    if (!tags.peek().is(0, "SEQEND")) {
      throw problem.at(polyline.line(), "seqend");
    }
    entity(tags, problem);
    return vertices;
  }
}
