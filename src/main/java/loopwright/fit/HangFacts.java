package loopwright.fit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import loopwright.catalog.basis.Face;
import loopwright.fit.PairTable.Link;
import loopwright.fit.PairTable.Status;
import loopwright.fit.conflict.FactSet;

/** What may hang on a mount for a wish, with the facts that it breaks wherever it hangs, and what is left to its position. */
final class HangFacts {

    private final WishedCase wished;
    private final FactBook book;
    private final SceneMaker maker;
    private final Map<Integer, Map<Face, Link>> walls = new HashMap<>();
    private final Map<Wall, List<Option>> known = new HashMap<>();

    HangFacts(WishedCase wished, FactBook book, SceneMaker maker) {
        this.wished = wished;
        this.book = book;
        this.maker = maker;
    }

    /**
     * A fact that depends on positions.
     *
     * @param fact its number
     * @param sides what must hold, as {@link Sides} writes it
     */
    record Open(int fact, List<int[]> sides) {}

    /**
     * A stack that may hang on a mount.
     *
     * @param hang absent where there is no seat: it takes no room then
     * @param meets the wishes it meets
     * @param facts what it breaks wherever it hangs
     * @param open what depends on where it hangs
     */
    record Option(int mount, Shape shape, Optional<Hang> hang, FactSet meets, FactSet facts, List<Open> open) {}

    static String wall(Face face) {
        return "wall:" + face.name().toLowerCase(Locale.ROOT);
    }

    private record Wall(int mount, ModSet about, List<Integer> builtIn, boolean otherFans) {}

    /** Every stack that meets a wish about the mount, with some mods about that mount and some bodies built in. */
    List<Option> options(MountFrame frame, Attempts.Group group, Beyond beyond) {
        ModSet mods = group.about();
        ModSet about = mods.and(
                ModRules.aboutMount(wished.asked().chassis(), frame.mount().id()));
        return known.computeIfAbsent(
                new Wall(frame.index(), about, group.builtIn(), beyond.fans()), w -> make(frame, w));
    }

    private List<Option> make(MountFrame frame, Wall wall) {
        ModSet about = wall.about();
        List<Integer> builtIn = wall.builtIn();
        List<Option> out = new ArrayList<>();
        for (Shape shape : wished.widened().shapes().all()) {
            FactSet meets = meets(frame, shape);
            if (meets.isEmpty() || !(wall.otherFans() || wished.hasOwnFans(shape))) {
                continue;
            }
            FactSet facts = ofMount(frame, shape, about);
            if (facts.has(book.number(Fact.Kind.SEAT, frame.mount().id()))) {
                if (!shape.arrangement().needsCover()) {
                    out.add(new Option(frame.index(), shape, Optional.empty(), meets, facts, List.of()));
                }
            } else {
                for (Hang hang : maker.hangs(frame, shape, about)) {
                    out.add(withBuiltIn(
                            new Option(frame.index(), shape, Optional.of(hang), meets, facts, List.of()),
                            hang,
                            builtIn));
                }
            }
        }
        return List.copyOf(out);
    }

    private FactSet meets(MountFrame frame, Shape shape) {
        FactSet out = FactSet.NONE;
        for (Wish.RadiatorAt wish : wished.wishes(Wish.RadiatorAt.class)) {
            if (wish.mounts().contains(frame.mount().id()) && wished.meets(shape, wish)) {
                out = out.with(book.number(Fact.Kind.WISH, wish.text()));
            }
        }
        return out;
    }

    private FactSet ofMount(MountFrame frame, Shape shape, ModSet about) {
        Seating seating = wished.widened().seating();
        String mount = frame.mount().id();
        FactSet out = FactSet.NONE;
        if (!seating.hasSeat(frame.mount(), shape.pattern(), about)) {
            out = out.with(book.number(Fact.Kind.SEAT, mount));
        }
        if (!seating.isOpenEnough(frame.mount(), shape.pattern(), about)) {
            out = out.with(book.number(Fact.Kind.OPEN, mount));
        }
        if (!seating.hasAirOutside(frame.mount(), shape, about)) {
            out = out.with(book.number(Fact.Kind.OUTSIDE, mount));
        }
        if (!wished.hasOwnFans(shape)) {
            out = out.with(book.number(Fact.Kind.CHOICE, "fans"));
        }
        for (Wish.NothingAt wish : wished.wishes(Wish.NothingAt.class)) {
            out = wish.mount().equals(mount) ? out.with(book.number(Fact.Kind.WISH, wish.text())) : out;
        }
        return out;
    }

    private Option withBuiltIn(Option option, Hang hang, List<Integer> builtIn) {
        FactSet facts = option.facts();
        List<Open> open = new ArrayList<>();
        String stack = hang.occupant().body().id();
        if (hang.occupant().isUnknown()) {
            facts = facts.with(book.number(Fact.Kind.KNOWN, stack));
        }
        Map<Face, Link> links = walls.computeIfAbsent(hang.id(), h -> walls(hang));
        for (Map.Entry<Face, Link> link : links.entrySet()) {
            facts = add(link.getValue(), () -> book.clear(stack, wall(link.getKey())), facts, open);
        }
        for (int body : builtIn) {
            facts = add(maker.pairs().link(hang, body), () -> book.clear(hang, maker.bodies(), body), facts, open);
        }
        return new Option(option.mount(), option.shape(), option.hang(), option.meets(), facts, List.copyOf(open));
    }

    private Map<Face, Link> walls(Hang hang) {
        Map<Face, Link> out = new EnumMap<>(Face.class);
        for (Face face : Face.values()) {
            out.put(face, maker.pairs().wall(hang, face));
        }
        return out;
    }

    /** Adds what a link says to what is broken anyway, or to what depends. */
    static FactSet add(Link link, java.util.function.IntSupplier fact, FactSet facts, List<Open> open) {
        if (link.status() == Status.NEVER) {
            return facts.with(fact.getAsInt());
        }
        if (link.status() == Status.DEPENDS) {
            open.add(new Open(fact.getAsInt(), link.open()));
        }
        return facts;
    }
}
