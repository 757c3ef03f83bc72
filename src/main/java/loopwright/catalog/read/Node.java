package loopwright.catalog.read;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A piece of a file that knows where it stands. */
public sealed interface Node {

    /** Steps of a path like {@code mods[2].rules}. */
    Pattern STEP = Pattern.compile("\\[(\\d+)]|([^.\\[\\]]+)");

    /** Where it starts. */
    Place at();

    /** What it is, in words for a message. */
    String words();

    /** Fields in the order of the file. */
    record MapNode(Place at, Map<String, Entry> entries) implements Node {
        /** Keeps the order. */
        public MapNode {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }

        /** The value of a field. */
        public Optional<Node> find(String field) {
            return Optional.ofNullable(entries.get(field)).map(Entry::value);
        }

        /** The text of a field, if it is there and is text. */
        public Optional<String> findText(String field) {
            return find(field)
                    .filter(n -> n instanceof Scalar s && s.kind() == Scalar.Kind.TEXT)
                    .map(n -> ((Scalar) n).text());
        }

        @Override
        public String words() {
            return "a map";
        }
    }

    /** One field: where its name stands, and its value. */
    record Entry(Place keyAt, Node value) {}

    /** Items in the order of the file. */
    record ListNode(Place at, List<Node> items) implements Node {
        /** Keeps the order. */
        public ListNode {
            items = List.copyOf(items);
        }

        @Override
        public String words() {
            return "a list";
        }
    }

    /** A text, a number, a truth value, or nothing. */
    record Scalar(Place at, Kind kind, String text) implements Node {
        /** What it was written as. */
        public enum Kind {
            /** Text, quoted or not. */
            TEXT,
            /** A number. */
            NUMBER,
            /** true or false. */
            TRUTH,
            /** No value at all. */
            NOTHING
        }

        @Override
        public String words() {
            return switch (kind) {
                case TEXT -> "the text \"" + text + "\"";
                case NUMBER, TRUTH -> text;
                case NOTHING -> "nothing";
            };
        }
    }

    /** The place of a path like {@code mods[2].rules.requires[0]}, or of the deepest part of it that is there. */
    default Place placeOf(String path) {
        Node node = this;
        Matcher step = STEP.matcher(path);
        while (step.find()) {
            Optional<Node> next = Optional.empty();
            if (node instanceof MapNode map && step.group(2) != null) {
                next = map.find(step.group(2));
            } else if (node instanceof ListNode list && step.group(1) != null) {
                int index = Integer.parseInt(step.group(1));
                next = index < list.items().size() ? Optional.of(list.items().get(index)) : Optional.empty();
            }
            if (next.isEmpty()) {
                return node.at();
            }
            node = next.get();
        }
        return node.at();
    }
}
