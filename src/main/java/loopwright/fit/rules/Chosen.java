package loopwright.fit.rules;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import loopwright.catalog.part.Part;

/**
 * The parts that fill some roles.
 *
 * @param parts a part a role; a role that nothing fills (no separate reservoir) is absent
 */
public record Chosen(Map<Role, Part> parts) {

    /** Copies. */
    public Chosen {
        parts = java.util.Collections.unmodifiableMap(
                parts.isEmpty() ? new EnumMap<>(Role.class) : new EnumMap<>(parts));
    }

    /**
     * The part that fills a role.
     *
     * @throws IllegalArgumentException if nothing fills it, or another kind of part does
     */
    public <P extends Part> P the(Role role, Class<P> kind) {
        return find(role, kind)
                .orElseThrow(() -> new IllegalArgumentException("no " + kind.getSimpleName() + " as " + role));
    }

    /** The part that fills a role, if any does. */
    public <P extends Part> Optional<P> find(Role role, Class<P> kind) {
        return Optional.ofNullable(parts.get(role)).filter(kind::isInstance).map(kind::cast);
    }
}
