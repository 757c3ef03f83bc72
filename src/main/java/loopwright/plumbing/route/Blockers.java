package loopwright.plumbing.route;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What keeps a run from its way: bodies without which there would be one. */
public final class Blockers {

    private final Space space;
    private final TubeShape tube;
    private final int spacingHmm;

    /** Blockers in a space. */
    public Blockers(Space space, TubeShape tube, int spacingHmm) {
        this.space = space;
        this.tube = tube;
        this.spacingHmm = spacingHmm;
    }

    /**
     * The body that blocks alone, the first in order of name; else the bodies that are left when, in that order, every body
     * is taken back that can be with a way still there. Only the walls where not even an empty chassis has one.
     */
    public List<String> of(End from, End to) {
        Set<String> names = new TreeSet<>();
        space.solids().forEach(s -> names.add(s.body()));
        space.fanAir().forEach(s -> names.add(s.body()));
        for (String name : names) {
            if (open(Set.of(name), from, to)) {
                return List.of(name);
            }
        }
        if (!open(names, from, to)) {
            return List.of(Space.WALLS);
        }
        Set<String> gone = new LinkedHashSet<>(names);
        for (String name : names) {
            Set<String> fewer = new LinkedHashSet<>(gone);
            fewer.remove(name);
            if (open(fewer, from, to)) {
                gone = fewer;
            }
        }
        return new ArrayList<>(gone);
    }

    private boolean open(Set<String> without, End from, End to) {
        return new Router(space.without(without), tube, spacingHmm)
                .route(from, to)
                .isPresent();
    }
}
