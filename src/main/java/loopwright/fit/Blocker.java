package loopwright.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Shell;
import loopwright.fit.Growing.Form;
import loopwright.fit.Surroundings.Stand;
import loopwright.geometry.Clearance;
import loopwright.geometry.SpaceBox;

/**
 * Names what a growing body cannot grow past: the first thing without which it could be a hundredth larger, the nearest
 * first; if there is no such thing, the nearest.
 */
final class Blocker {

    /** Said where no cover is high enough. */
    static final String COVER = "raised cover";

    /** Said where taking away one thing would not help. */
    private static final String SEVERAL = "more than one thing";

    private final Surroundings surroundings;
    private final Growing growing;
    private final Shell.Interior interior;

    Blocker(Surroundings surroundings, Growing growing, Shell.Interior interior) {
        this.surroundings = surroundings;
        this.growing = growing;
        this.interior = interior;
    }

    /** Something that could be taken away. */
    private sealed interface Thing {
        /** A wall. */
        record Wall(Face face) implements Thing {}

        /** A body that does not slide, by its place among those. */
        record Still(int index) implements Thing {}

        /** A stack, by its place among those. */
        record Stack(int index) implements Thing {}
    }

    /** A thing as it is nearest to the body: the name of what is near, and the margin there. */
    private record Near(Thing thing, String name, int marginHmm) {}

    /** What stops the body beyond a growth at which it stands. */
    String beyond(int growthHmm) {
        if (forms(growthHmm + 1, Optional.empty()).isEmpty()) {
            return COVER;
        }
        Stand stand = surroundings.stand(forms(growthHmm, Optional.empty())).orElseThrow();
        List<Near> nearest = new ArrayList<>();
        for (Thing thing : things()) {
            near(thing, stand.body(), stand.stacks()).ifPresent(nearest::add);
        }
        nearest.sort(Comparator.comparingInt(Near::marginHmm));
        return nearest.stream()
                .filter(n -> without(n.thing(), growthHmm + 1).isPresent())
                .findFirst()
                .orElse(nearest.get(0))
                .name();
    }

    /** What keeps the body from standing at all as small as it is; empty where it is more than one thing. */
    Optional<String> atAll() {
        if (forms(0, Optional.empty()).isEmpty()) {
            return Optional.of(COVER);
        }
        List<Standing> starts = new ArrayList<>();
        for (int i = 0; i < surroundings.stackCount(); i++) {
            starts.add(surroundings.stack(i));
        }
        for (Thing thing : things()) {
            Optional<Near> met = without(thing, 0).flatMap(s -> near(thing, s.body(), starts));
            if (met.isPresent()) {
                return met.map(Near::name);
            }
        }
        return Optional.empty();
    }

    /** Said where {@link #atAll()} finds no single thing. */
    static String several() {
        return SEVERAL;
    }

    private List<Thing> things() {
        List<Thing> out = new ArrayList<>();
        for (int i = 0; i < surroundings.stackCount(); i++) {
            out.add(new Thing.Stack(i));
        }
        for (int i = 0; i < surroundings.stillBodies(); i++) {
            out.add(new Thing.Still(i));
        }
        for (Face face : Face.values()) {
            out.add(new Thing.Wall(face));
        }
        return out;
    }

    private List<Form> forms(int growthHmm, Optional<Face> ignored) {
        return growing.forms(growthHmm, growthHmm, ignored);
    }

    private Optional<Stand> without(Thing thing, int growthHmm) {
        if (thing instanceof Thing.Wall wall) {
            return surroundings.stand(forms(growthHmm, Optional.of(wall.face())));
        }
        Surroundings rest = thing instanceof Thing.Stack stack
                ? surroundings.withoutStack(stack.index())
                : surroundings.withoutStill(((Thing.Still) thing).index());
        return rest.stand(forms(growthHmm, Optional.empty()));
    }

    private Optional<Near> near(Thing thing, Standing body, List<Standing> stacks) {
        if (thing instanceof Thing.Wall wall) {
            return nearWall(wall, body);
        }
        Standing other = thing instanceof Thing.Stack stack
                ? stacks.get(stack.index())
                : surroundings.stillBody(((Thing.Still) thing).index());
        return nearBody(thing, body, other);
    }

    private static Optional<Near> nearBody(Thing thing, Standing body, Standing other) {
        Optional<Near> best = Optional.empty();
        if (!body.occupant().pairsWith(other.occupant())) {
            return best;
        }
        for (int i = 0; i < body.occupant().boxes().size(); i++) {
            for (int j = 0; j < other.occupant().boxes().size(); j++) {
                SpaceBox a = box(body, i);
                SpaceBox b = box(other, j);
                if (!a.room() || !b.room()) {
                    int margin = Clearance.hmm(a, b) - Math.max(a.needHmm(), b.needHmm());
                    if (best.isEmpty() || margin < best.get().marginHmm()) {
                        best = Optional.of(new Near(thing, other.name(j), margin));
                    }
                }
            }
        }
        return best;
    }

    private Optional<Near> nearWall(Thing.Wall wall, Standing body) {
        if (!body.occupant().pairsWith(wall.face())) {
            return Optional.empty();
        }
        Axis axis = wall.face().normal();
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < body.occupant().boxes().size(); i++) {
            SpaceBox box = box(body, i);
            int distance = wall.face().isHigh()
                    ? MountFrame.interior(interior, axis).valueHmm()
                            - box.along(axis).to()
                    : box.along(axis).from();
            least = Math.min(least, distance - box.needHmm());
        }
        return Optional.of(new Near(wall, name(wall.face()), least));
    }

    private static SpaceBox box(Standing standing, int index) {
        Standing.Shift shift = standing.shift();
        return standing.occupant().boxes().get(index).moved(shift.x(), shift.y(), shift.z());
    }

    private static String name(Face wall) {
        return wall.name().toLowerCase(Locale.ROOT) + (wall == Face.FLOOR || wall == Face.ROOF ? "" : " wall");
    }
}
