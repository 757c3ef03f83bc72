package loopwright.paper;

import java.io.Writer;
import java.util.LinkedHashMap;
import java.util.Map;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.NullNode;

/** One JSON document, written piece by piece, so that a long answer need not be in memory as a whole. */
final class Json {

    private static final ObjectWriter WRITER = JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
            .build()
            .writer()
            .with(new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")));

    /** Null, for a figure that there is not. */
    static final Object NOTHING = NullNode.getInstance();

    private final JsonGenerator generator;
    private final Writer out;

    /** A document on a writer, which stays open. */
    Json(Writer out) {
        this.out = out;
        this.generator = WRITER.createGenerator(out);
    }

    /** A map that keeps the order of its names. */
    static Map<String, Object> object() {
        return new LinkedHashMap<>();
    }

    /** Starts the document, or an object in a list. */
    Json open() {
        generator.writeStartObject();
        return this;
    }

    /** Ends the object. */
    Json close() {
        generator.writeEndObject();
        return this;
    }

    /** A name and its value. */
    Json put(String name, Object value) {
        generator.writeName(name);
        generator.writePOJO(value);
        return this;
    }

    /** A name and the start of its list. */
    Json openList(String name) {
        generator.writeName(name);
        generator.writeStartArray();
        return this;
    }

    /** An item of the list. */
    Json item(Object value) {
        generator.writePOJO(value);
        return this;
    }

    /** Ends the list. */
    Json closeList() {
        generator.writeEndArray();
        return this;
    }

    /** Ends the document with a line break. */
    void end() {
        generator.flush();
        new java.io.PrintWriter(out, true).println();
    }
}
