package loopwright.catalog.measure;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import loopwright.catalog.Catalog;
import loopwright.catalog.part.Part;
import loopwright.catalog.read.FileKind;
import loopwright.catalog.read.Nearest;
import loopwright.quantity.Dimension;

/**
 * Every length of a catalogue by its address, {@code ID.PATH}.
 *
 * <p>Items are looked at when they are asked for. {@code practice} and {@code standards} are items too.
 */
public final class Lengths {

    private final Map<String, Record> items = new TreeMap<>();
    private final Map<String, Dimension> instead;
    private final Map<String, RecordWalk> walked = new HashMap<>();

    /** The lengths as the catalogue has them. */
    public Lengths(Catalog catalog) {
        items.put(FileKind.PRACTICE.word(), catalog.practice());
        items.put(FileKind.STANDARDS.word(), catalog.standards());
        for (Part part : catalog.parts().values()) {
            items.put(part.id(), (Record) part);
        }
        this.instead = Map.of();
    }

    private Lengths(Map<String, Record> items, Map<String, Dimension> instead) {
        this.items.putAll(items);
        this.instead = Map.copyOf(instead);
    }

    /** The same lengths after some were replaced. */
    public Lengths with(List<Replacement> replacements) {
        Map<String, Dimension> more = new HashMap<>(instead);
        replacements.forEach(r -> more.put(r.address(), r.to()));
        return new Lengths(items, more);
    }

    /** The lengths of one record, whatever catalogue it is from, in the order of its fields. */
    public static List<Length> of(String id, Record item) {
        return RecordWalk.through(id, item).lengths();
    }

    /** The ids of all items, sorted. */
    public List<String> ids() {
        return List.copyOf(items.keySet());
    }

    /** The ids of a kind's items, sorted. */
    public List<String> ids(FileKind kind) {
        return items.entrySet().stream()
                .filter(e -> kind.record().isInstance(e.getValue()))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The lengths of an item, in the order of its fields; none if there is no such item. */
    public List<Length> of(String id) {
        return walk(id).map(walk -> walk.lengths().stream().map(this::now).toList())
                .orElse(List.of());
    }

    /** A length by its item and path. */
    public Optional<Length> find(String id, String path) {
        return of(id).stream().filter(l -> l.path().equals(path)).findFirst();
    }

    /** Whether an item has that field, and it is no length. */
    boolean hasOther(String id, String path) {
        return walk(id).map(walk -> walk.otherFields().contains(path)).orElse(false);
    }

    /** A hint at the length that a mistyped path may mean; empty if none is near. */
    String hint(String id, String path) {
        List<String> known = of(id).stream().map(Length::path).toList();
        List<Length> tails = PathTail.of(path).matching(of(id));
        if (tails.size() == 1) {
            return "Maybe " + tails.get(0).path() + "?";
        }
        String near = Nearest.hint(path, known);
        return near.isEmpty() ? PathTail.hint(path, known) : near;
    }

    private Length now(Length length) {
        return Optional.ofNullable(instead.get(length.address()))
                .map(length::with)
                .orElse(length);
    }

    private Optional<RecordWalk> walk(String id) {
        return Optional.ofNullable(items.get(id))
                .map(item -> walked.computeIfAbsent(id, i -> RecordWalk.through(i, item)));
    }
}
