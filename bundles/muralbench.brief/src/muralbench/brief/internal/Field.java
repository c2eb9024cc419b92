// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A value in the brief and where it stands.
 *
 * @param node the value; a missing node if the field is not given
 * @param pointer its JSON pointer (RFC 6901)
 */
record Field(JsonNode node, String pointer) {
  /** A name as part of a pointer. */
  static String escaped(String name) {
    return name.replace("~", "~0").replace("/", "~1");
  }

  boolean isGiven() {
    return !node.isMissingNode();
  }

  Field at(String name) {
    return new Field(node.path(name), pointer + "/" + escaped(name));
  }

  Field at(int index) {
    return new Field(node.path(index), pointer + "/" + index);
  }

  List<Field> items() {
    List<Field> items = new ArrayList<>();
    for (int i = 0; i < node.size(); i++) {
      items.add(at(i));
    }
    return items;
  }

  /** The fields of an object. */
  List<Field> named() {
    List<Field> named = new ArrayList<>();
    node.fieldNames().forEachRemaining(name -> named.add(at(name)));
    return named;
  }

  /** The name of this field in its object. */
  String name() {
    return pointer.substring(pointer.lastIndexOf('/') + 1).replace("~1", "/").replace("~0", "~");
  }

  Map<String, String> texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    node.properties().forEach(field -> texts.put(field.getKey(), field.getValue().textValue()));
    return texts;
  }

  String text(String otherwise) {
    return isGiven() ? node.textValue() : otherwise;
  }

  double number(double otherwise) {
    return isGiven() ? node.doubleValue() : otherwise;
  }
}
