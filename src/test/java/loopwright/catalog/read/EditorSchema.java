package loopwright.catalog.read;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.basis.Span;
import loopwright.quantity.Dimension;
import loopwright.quantity.Distribution;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** JSON Schema (2020-12) of a kind of file, made from its record, so that an editor can complete and check fields. */
final class EditorSchema {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private EditorSchema() {}

    /** The whole schema as text, ending in a line break. */
    static String of(FileKind kind) {
        ObjectNode root = JSON.objectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("title", "Loopwright " + kind.word());
        ObjectNode body = kind.isList() ? JSON.objectNode().put("type", "object") : record(kind.record());
        ObjectNode properties = JSON.objectNode();
        properties.set("schema", JSON.objectNode().put("const", kind.schema()));
        properties.set("source", text());
        ArrayNode required = JSON.arrayNode().add("schema").add("source");
        if (kind.isList()) {
            properties.set("items", list(record(kind.record())));
            required.add("items");
        } else {
            properties.setAll((ObjectNode) body.get("properties"));
            body.get("required").forEach(required::add);
        }
        body.set("properties", properties);
        body.set("required", required);
        body.put("additionalProperties", false);
        root.setAll(body);
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        return JsonMapper.builder()
                        .build()
                        .writer()
                        .with(new DefaultPrettyPrinter()
                                .withObjectIndenter(indenter)
                                .withArrayIndenter(indenter))
                        .writeValueAsString(root)
                + "\n";
    }

    private static ObjectNode record(Class<?> record) {
        ObjectNode properties = JSON.objectNode();
        ArrayNode required = JSON.arrayNode();
        for (Slot slot : Slot.allOf(record)) {
            properties.set(slot.name().text(), value(slot));
            if (!slot.mayBeAbsent()) {
                required.add(slot.name().text());
            }
        }
        ObjectNode out = JSON.objectNode().put("type", "object");
        out.set("properties", properties);
        out.set("required", required);
        return out.put("additionalProperties", false);
    }

    private static ObjectNode value(Slot slot) {
        Class<?> raw = slot.raw();
        if (raw == Optional.class) {
            return value(slot.held());
        }
        if (raw == List.class) {
            return list(value(slot.held()));
        }
        if (raw == Dimension.class) {
            return dimension(slot.range());
        }
        if (raw == Span.class) {
            return list(dimension(Slot.allOf(Span.class).get(0).range()))
                    .put("minItems", 2)
                    .put("maxItems", 2);
        }
        if (raw == Pattern.class) {
            return text().put("pattern", "^[1-5]x(80|92|120|140|180|200)$");
        }
        if (raw.isRecord()) {
            return record(raw);
        }
        if (raw.isEnum()) {
            ArrayNode choices = JSON.arrayNode();
            Allowed.choices(raw).forEach(choices::add);
            ObjectNode out = JSON.objectNode();
            out.set("enum", choices);
            return out;
        }
        if (raw == String.class) {
            return text();
        }
        if (raw == boolean.class) {
            return JSON.objectNode().put("type", "boolean");
        }
        boolean isReal = raw == double.class || raw == Double.class;
        return number(isReal ? "number" : "integer", slot.range());
    }

    private static ObjectNode dimension(Range range) {
        ObjectNode fields = JSON.objectNode();
        fields.set("value_mm", number("number", range));
        fields.set("plus_minus_mm", number("number", new Range(0, 50, "")));
        ObjectNode known = JSON.objectNode();
        known.set("enum", JSON.arrayNode().add("measured").add("datasheet").add("assumed"));
        fields.set("known", known);
        ObjectNode distribution = JSON.objectNode();
        ArrayNode spreads = JSON.arrayNode();
        Allowed.choices(Distribution.class).forEach(spreads::add);
        distribution.set("enum", spreads);
        fields.set("distribution", distribution);
        ObjectNode map = JSON.objectNode().put("type", "object");
        map.set("properties", fields);
        map.set("required", JSON.arrayNode().add("value_mm"));
        map.put("additionalProperties", false);
        ObjectNode out = JSON.objectNode().put("description", "mm with at most two decimals, or unknown");
        out.set(
                "oneOf",
                JSON.arrayNode()
                        .add(number("number", range))
                        .add(map)
                        .add(JSON.objectNode().put("const", "unknown")));
        return out;
    }

    private static ObjectNode number(String type, Range range) {
        ObjectNode out = JSON.objectNode().put("type", type);
        bound(out, "minimum", range.min());
        return range.max() == Double.MAX_VALUE ? out : bound(out, "maximum", range.max());
    }

    private static ObjectNode bound(ObjectNode out, String field, double value) {
        return value == Math.rint(value) ? out.put(field, (long) value) : out.put(field, value);
    }

    private static ObjectNode list(ObjectNode items) {
        ObjectNode out = JSON.objectNode().put("type", "array");
        out.set("items", items);
        return out;
    }

    private static ObjectNode text() {
        return JSON.objectNode().put("type", "string").put("minLength", 1);
    }
}
