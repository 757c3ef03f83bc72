package loopwright.catalog.read;

import java.util.Optional;
import loopwright.catalog.read.Node.MapNode;

/**
 * One item of a file: where it stands, and its record if everything in it was right.
 *
 * @param id empty where the item has none
 * @param value the record, or nothing if the item had problems
 */
public record Item(FileKind kind, Subject subject, MapNode node, String id, Optional<Object> value) {

    /** The record, if it is of this class and was right. */
    public <R> Optional<R> as(Class<R> type) {
        return value.filter(type::isInstance).map(type::cast);
    }

    /** A problem at a field of this item. */
    public Problem problem(String path, String found, String allowed, String hint) {
        return subject.problem(node.placeOf(path), path, found, allowed, hint);
    }
}
