package loopwright.catalog.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import loopwright.catalog.read.Node.Entry;
import loopwright.catalog.read.Node.ListNode;
import loopwright.catalog.read.Node.MapNode;
import loopwright.catalog.read.Node.Scalar;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * Parses one file into a tree that knows its places.
 *
 * <p>Only plain maps, lists and scalars: no anchors, aliases or tags, one document a file. Nesting and the number of
 * nodes are bounded. A key that stands twice in a map is a problem; its first value stays.
 */
public final class YamlTree {

    /** Deepest nesting of maps and lists. */
    public static final int DEPTH_MAX = 32;

    /** Most maps, lists and scalars in a file. */
    public static final int NODES_MAX = 400_000;

    /** Duplicate keys are noted here, all of them; the parser would stop at the first. */
    private static final YAMLFactory FACTORY = YAMLFactory.builder()
            .disable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .loadSettings(LoadSettings.builder()
                    .setAllowDuplicateKeys(true)
                    .setCodePointLimit(SourceFile.BYTES_MAX)
                    .build())
            .build();

    private final int[] codePoints;
    private final YAMLParser parser;
    private final Subject file;
    private final Problems problems;
    private final AtomicInteger nodes = new AtomicInteger();

    private YamlTree(String text, YAMLParser parser, Subject file, Problems problems) {
        this.codePoints = text.codePoints().toArray();
        this.parser = parser;
        this.file = file;
        this.problems = problems;
    }

    /** The tree of a file; nothing, and a problem, when it is not plain YAML or too large. */
    public static Optional<Node> parse(SourceFile source, Problems problems) {
        Subject file = new Subject(source.name(), "");
        String text = source.text().startsWith("\uFEFF") ? source.text().substring(1) : source.text();
        try (YAMLParser parser = (YAMLParser) FACTORY.createParser(ObjectReadContext.empty(), text)) {
            YamlTree tree = new YamlTree(text, parser, file, problems);
            try {
                return Optional.of(tree.document());
            } catch (Refused e) {
                problems.add(file.problem(tree.here(), "", e.found, e.allowed, ""));
            } catch (JacksonException e) {
                problems.add(tree.syntax(e));
            }
        }
        return Optional.empty();
    }

    private Node document() throws Refused {
        JsonToken first = parser.nextToken();
        if (first == null) {
            throw new Refused("an empty file", "a map of fields");
        }
        Node root = node(first, 1);
        if (parser.nextToken() != null) {
            throw new Refused("a second document", "one document a file");
        }
        return root;
    }

    private Node node(JsonToken token, int depth) throws Refused {
        refuseMarks();
        if (nodes.incrementAndGet() > NODES_MAX) {
            throw new Refused("more than " + NODES_MAX + " values", "at most " + NODES_MAX + " values a file");
        }
        if (depth > DEPTH_MAX && (token == JsonToken.START_OBJECT || token == JsonToken.START_ARRAY)) {
            throw new Refused("nesting deeper than " + DEPTH_MAX, "at most " + DEPTH_MAX + " levels");
        }
        Place at = here();
        return switch (token) {
            case START_OBJECT -> map(at, depth);
            case START_ARRAY -> list(at, depth);
            case VALUE_STRING -> text(at, parser.getString());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Scalar(at, Scalar.Kind.NUMBER, parser.getString());
            case VALUE_TRUE, VALUE_FALSE -> new Scalar(at, Scalar.Kind.TRUTH, parser.getString());
            case VALUE_NULL -> new Scalar(at, Scalar.Kind.NOTHING, "");
            default -> throw new Refused("something that is not plain YAML", "maps, lists, texts and numbers");
        };
    }

    /** An empty text and no text at all look the same to the parser, so the quotes are looked up in the file. */
    private Scalar text(Place at, String text) {
        int first = firstCharacter();
        boolean nothing = first != '"' && first != '\'' && (text.isEmpty() || text.equals("~"));
        return new Scalar(at, nothing ? Scalar.Kind.NOTHING : Scalar.Kind.TEXT, text);
    }

    /** The character that the current token starts with; the parser does not tell every anchor. */
    private int firstCharacter() {
        long offset = parser.currentTokenLocation().getCharOffset();
        return offset >= 0 && offset < codePoints.length ? codePoints[(int) offset] : ' ';
    }

    private MapNode map(Place at, int depth) throws Refused {
        Map<String, Entry> entries = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
            Place keyAt = here();
            refuseMarks();
            String key = parser.currentName();
            Node value = node(next(), depth + 1);
            Entry before = entries.putIfAbsent(key, new Entry(keyAt, value));
            if (before != null) {
                problems.add(file.problem(
                        keyAt,
                        key,
                        "the field a second time",
                        "each field once",
                        "It stands already in line " + before.keyAt().line() + "."));
            }
        }
        return new MapNode(entries.isEmpty() ? at : firstOf(entries, at), entries);
    }

    /** A block map starts at its first field; the parser's own mark may be the line before. */
    private static Place firstOf(Map<String, Entry> entries, Place otherwise) {
        return entries.values().stream().findFirst().map(Entry::keyAt).orElse(otherwise);
    }

    private ListNode list(Place at, int depth) throws Refused {
        List<Node> items = new ArrayList<>();
        for (JsonToken token = next(); token != JsonToken.END_ARRAY; token = next()) {
            items.add(node(token, depth + 1));
        }
        return new ListNode(at, items);
    }

    private JsonToken next() throws Refused {
        JsonToken token = parser.nextToken();
        if (token == null) {
            throw new Refused("the end of the file", "the rest of it");
        }
        return token;
    }

    private void refuseMarks() throws Refused {
        if (parser.isCurrentAlias()) {
            throw new Refused("an alias", "plain values without anchors and aliases");
        }
        if (parser.getObjectId() != null || firstCharacter() == '&') {
            throw new Refused("an anchor", "plain values without anchors and aliases");
        }
        if (parser.getTypeId() != null || firstCharacter() == '!') {
            throw new Refused("a tag", "plain values without tags");
        }
    }

    private Place here() {
        return placeOf(parser.currentTokenLocation());
    }

    private static Place placeOf(TokenStreamLocation at) {
        return new Place(Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()));
    }

    private Problem syntax(JacksonException e) {
        Place at = e.getLocation() == null ? here() : placeOf(e.getLocation());
        String words = "it cannot be parsed";
        if (e.getCause() instanceof MarkedYamlEngineException marked) {
            words = marked.getProblem() == null ? words : marked.getProblem();
            at = marked.getProblemMark()
                    .map(m -> new Place(m.getLine() + 1, m.getColumn() + 1))
                    .orElse(at);
        }
        return file.problem(at, "", "a syntax error (" + words + ")", "plain YAML", "");
    }

    /** The file is YAML, but not of the kind that is read here. */
    private static final class Refused extends Exception {
        private static final long serialVersionUID = 1;
        private final String found;
        private final String allowed;

        Refused(String found, String allowed) {
            super(found);
            this.found = found;
            this.allowed = allowed;
        }
    }
}
