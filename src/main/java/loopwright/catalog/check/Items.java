package loopwright.catalog.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.read.FileKind;
import loopwright.catalog.read.Item;

/**
 * Every item of a catalogue, right or wrong.
 *
 * @param whole whether every file could be parsed; if not, a missing id may be in one that could not
 * @param asWritten chassis by id as their files have them, where lengths were replaced; else none
 */
public record Items(List<Item> all, boolean whole, Map<String, Chassis> asWritten) {

    /** Keeps the order. */
    public Items {
        all = List.copyOf(all);
        asWritten = Map.copyOf(asWritten);
    }

    /** Items as their files have them. */
    public Items(List<Item> all, boolean whole) {
        this(all, whole, Map.of());
    }

    /** The items of a class that were right. */
    <R> List<Placed<R>> of(Class<R> type) {
        return all.stream()
                .flatMap(item -> item.as(type).map(value -> new Placed<>(value, item)).stream())
                .toList();
    }

    /** The first record of a class, if it was right. */
    <R> Optional<R> findOnly(Class<R> type) {
        return of(type).stream().map(Placed::value).findFirst();
    }

    /** The ids of a kind, also of items that were wrong. */
    Set<String> ids(FileKind kind) {
        return all.stream()
                .filter(item -> item.kind() == kind && !item.id().isEmpty())
                .map(Item::id)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** A record and where it stands. */
    record Placed<R>(R value, Item item) {}
}
