package loopwright.fit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loopwright.fit.ModModel.ModWorld;
import loopwright.fit.Seating.Hindrance;

/**
 * What keeps every radiator of a brief from a mount: how far the one gets that comes furthest, with the mods that help it
 * most.
 *
 * @param mount the mount's id
 * @param hindrance none when a radiator can hang there, and meets something
 * @param strictness what counts as meeting
 */
public record MountHindrance(String mount, Hindrance hindrance, Strictness strictness) {

    /** The hindrance at each mount, in the chassis's order. */
    public static List<MountHindrance> of(FitSearch search) {
        List<MountHindrance> out = new ArrayList<>();
        for (MountFrame frame : search.fitCase().frames()) {
            out.add(new MountHindrance(
                    frame.mount().id(),
                    furthest(search, frame),
                    search.fitCase().strictness()));
        }
        return List.copyOf(out);
    }

    private static Hindrance furthest(FitSearch search, MountFrame frame) {
        List<Hindrance> order = List.of(
                Hindrance.NO_SEAT, Hindrance.NO_COVER, Hindrance.TOO_CLOSED, Hindrance.NO_AIR_OUTSIDE, Hindrance.NONE);
        int best = 0;
        ModSet about =
                ModRules.aboutMount(search.fitCase().chassis(), frame.mount().id());
        Set<ModSet> seen = new HashSet<>();
        for (ModWorld world : search.worlds()) {
            if (!seen.add(world.mods().and(about))) {
                continue;
            }
            for (Shape shape : search.fitCase().shapes().all()) {
                Hindrance now = search.fitCase().seating().hindrance(frame, shape, world.mods());
                best = Math.max(best, order.indexOf(now));
            }
        }
        return order.get(best);
    }

    /** In words. */
    public String text() {
        if (hindrance != Hindrance.NONE) {
            return hindrance.text();
        }
        return strictness == Strictness.NO_TIGHT
                ? "a radiator can hang there, but always meets a wall or a part, or leaves a tight place"
                : "a radiator can hang there, but always meets a wall or a part";
    }
}
