package loopwright.catalog;

import java.util.List;
import java.util.Map;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.part.Part;
import loopwright.catalog.standard.Practice;
import loopwright.catalog.standard.Standards;

/**
 * Everything the catalogue folder holds, checked.
 *
 * @param version a digest of the files, so that an answer can say what it came from
 * @param parts every part by id, in ascending order of id
 */
public record Catalog(
        String version, String currency, Map<String, Part> parts, Standards standards, Practice practice) {

    /** Copies nothing: the reader hands over an unmodifiable sorted map. */
    public Catalog {
        parts = java.util.Collections.unmodifiableSortedMap(new java.util.TreeMap<>(parts));
    }

    /** All parts of a kind, by id. */
    public <P extends Part> List<P> all(Class<P> kind) {
        return parts.values().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /**
     * The part with this id.
     *
     * @throws IllegalArgumentException if there is none of that kind: references are checked on reading
     */
    public <P extends Part> P part(Class<P> kind, String id) {
        Part part = parts.get(id);
        if (!kind.isInstance(part)) {
            throw new IllegalArgumentException("no " + kind.getSimpleName() + " with id " + id);
        }
        return kind.cast(part);
    }

    /** The chassis with this id. */
    public Chassis chassis(String id) {
        return part(Chassis.class, id);
    }
}
