package loopwright.catalog.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.read.Node.ListNode;
import loopwright.catalog.read.Node.MapNode;

/** One file of a known kind, and its items. */
public record Document(SourceFile file, FileKind kind, List<Item> items) {

    private static final Set<String> HEAD = Set.of("schema", "source");

    /** Keeps the order. */
    public Document {
        items = List.copyOf(items);
    }

    /** Parses and binds a file; nothing if it is not YAML or its kind is not known. */
    public static Optional<Document> of(SourceFile file, Problems problems) {
        return of(file, TreeEdit.NONE, problems);
    }

    /** Parses a file, changes its items' trees, and binds them. */
    public static Optional<Document> of(SourceFile file, TreeEdit edit, Problems problems) {
        Subject whole = new Subject(file.name(), "");
        Notes notes = new Notes(whole, problems);
        Optional<Node> root = YamlTree.parse(file, problems);
        if (root.isEmpty()) {
            return Optional.empty();
        }
        if (!(root.get() instanceof MapNode map)) {
            problems.add(
                    whole.problem(root.get().at(), "", root.get().words(), "a map with schema, source and items", ""));
            return Optional.empty();
        }
        if (map.findText("source").filter(s -> !s.isBlank()).isEmpty()) {
            notes.add(
                    map.placeOf("source"),
                    "source",
                    map.find("source").map(Node::words).orElse("nothing"),
                    "a text that says where the values come from",
                    "");
        }
        return kindOf(map, notes)
                .map(kind -> new Document(file, kind, itemsOf(kind, map, new Made(whole, edit, problems))));
    }

    private static Optional<FileKind> kindOf(MapNode map, Notes notes) {
        Optional<Node> schema = map.find("schema");
        if (schema.isEmpty()) {
            notes.add(map.at(), "schema", "nothing", "a line like schema: loopwright/pumps/1", "");
            return Optional.empty();
        }
        String text = map.findText("schema").orElse("");
        Optional<FileKind> kind = FileKind.find(text);
        if (kind.isEmpty()) {
            notes.add(
                    schema.get().at(),
                    "schema",
                    schema.get().words(),
                    FileKind.schemaWords(),
                    Nearest.hint(text, FileKind.schemas()));
        }
        return kind;
    }

    /** What every item of a file is made with. */
    private record Made(Subject whole, TreeEdit edit, Problems problems) {}

    private static List<Item> itemsOf(FileKind kind, MapNode map, Made with) {
        if (!kind.isList()) {
            return List.of(item(kind, map, HEAD, 0, with));
        }
        Notes notes = new Notes(with.whole(), with.problems());
        map.entries().forEach((field, entry) -> {
            if (!HEAD.contains(field) && !field.equals("items")) {
                List<String> known = List.of("schema", "source", "items");
                notes.add(
                        entry.keyAt(), field, "an unknown field", String.join(", ", known), Nearest.hint(field, known));
            }
        });
        Optional<Node> items = map.find("items");
        if (!(items.orElse(map) instanceof ListNode list)) {
            notes.add(map.placeOf("items"), "items", items.map(Node::words).orElse("nothing"), "a list", "");
            return List.of();
        }
        List<Item> out = new ArrayList<>();
        for (Node node : list.items()) {
            if (node instanceof MapNode one) {
                out.add(item(kind, one, Set.of(), out.size() + 1, with));
            } else {
                notes.add(node.at(), "items", node.words(), "a map for each " + kind.one(), "");
            }
        }
        return out;
    }

    private static Item item(FileKind kind, MapNode written, Set<String> besides, int number, Made with) {
        String id = written.findText("id").orElse("");
        MapNode map = with.edit().edited(kind, id, written);
        String label =
                id.isEmpty() ? kind.one() + (number > 0 ? " number " + number : "") : kind.one() + " \"" + id + "\"";
        Subject subject = new Subject(with.whole().file(), label);
        Optional<Object> value = new RecordBinder(subject, with.problems())
                .bind(kind.record(), map, besides)
                .map(r -> r);
        return new Item(kind, subject, map, id, value);
    }
}
