package loopwright.oracle.brute;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Reservoir;
import loopwright.catalog.part.Supply;
import loopwright.oracle.OracleCase;

/** Everything but stacks that stands in a case, by id, and what it breaks. */
final class WhyBodies {
    private final OracleCase question;
    private final int[] insideHmm;
    private final WhyFacts facts;
    private final WhyFault fault;
    private final BruteParts parts;
    private final Map<String, Named> byKey = new HashMap<>();
    private final Map<Long, Broken> pairs = new HashMap<>();

    /**
     * A body by its id.
     *
     * @param broken what it breaks by itself: walls, and that it is measured
     */
    record Named(int number, String id, BruteBody body, Broken broken) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Named named && named.number == number;
        }

        @Override
        public int hashCode() {
            return number;
        }
    }

    /** Parts in places and on the board: bodies, and what they break by themselves, not yet with each other. */
    record Placed(List<Named> bodies, Broken broken) {}

    /**
     * A part that wants a place.
     *
     * @param measures for a drive all that it measures; empty for others
     */
    private record ToPlace(String id, String measures, Place.Holds form, Function<Place, BruteBody> at) {
        boolean isAlike(ToPlace other) {
            return !measures.isEmpty() && measures.equals(other.measures) && form == other.form;
        }
    }

    WhyBodies(OracleCase question, int[] insideHmm, WhyFacts facts, WhyFault fault) {
        this.question = question;
        this.insideHmm = insideHmm;
        this.facts = facts;
        this.fault = fault;
        this.parts = new BruteParts(question.catalog(), question.chassis());
    }

    private Named named(String key, String id, Supplier<BruteBody> make) {
        Named known = byKey.get(key);
        if (known != null) {
            return known;
        }
        BruteBody body = make.get();
        Broken broken = body.unknown() && fault != WhyFault.KNOWN_IGNORED ? facts.fact("known:" + id) : Broken.NOTHING;
        for (Face wall : Face.values()) {
            if (body.marginHmm(wall, insideHmm) < 0) {
                broken = broken.or(facts.clear(id, wall(wall)));
            }
        }
        Named made = new Named(byKey.size(), id, body, broken);
        byKey.put(key, made);
        return made;
    }

    static String wall(Face face) {
        return "wall:" + face.name().toLowerCase(java.util.Locale.ROOT);
    }

    /** What comes with the chassis and the mods. */
    List<Named> ofChassis(List<Mod> mods) {
        List<Named> out = new ArrayList<>();
        Inside inside = question.chassis().inside();
        inside.obstructions()
                .forEach(o -> out.add(named(
                        "obstruction:" + o.id(),
                        "obstruction:" + o.id(),
                        () -> BruteParts.asBuilt(o.id(), o.boxes()))));
        inside.removables().stream()
                .filter(r -> mods.stream().noneMatch(m -> m.effect().removes().contains(r.id())))
                .forEach(r -> out.add(named(
                        "removable:" + r.id(), "removable:" + r.id(), () -> BruteParts.asBuilt(r.id(), r.boxes()))));
        for (Mod mod : mods) {
            mod.effect()
                    .adds()
                    .forEach(o -> out.add(named(
                            "added:" + o.id() + " by " + mod.id(),
                            "added:" + o.id(),
                            () -> BruteParts.asBuilt(o.id(), o.boxes()))));
        }
        return out;
    }

    /** Every placing of a choice in which as few parts as can be have no place. */
    List<Placed> placings(WhyChoices.Filled f, List<Drive> drives, List<Place> usable) {
        List<Named> onBoard = onBoard(f);
        List<ToPlace> todo = new ArrayList<>();
        Supply supply = f.the("supply", Supply.class);
        todo.add(new ToPlace(
                "supply",
                "",
                Place.Holds.valueOf(supply.form().name()),
                p -> BruteParts.placed(p, supply.body(), supply.plugRoomMm())));
        for (int i = 0; i < drives.size(); i++) {
            Drive d = drives.get(i);
            todo.add(new ToPlace(
                    "drive:" + (i + 1),
                    d.body() + " " + d.plugRoomMm(),
                    Place.Holds.valueOf(d.form().name()),
                    p -> BruteParts.placed(p, d.body(), d.plugRoomMm())));
        }
        Pump pump = f.the("pump", Pump.class);
        todo.add(new ToPlace(
                "pump",
                "",
                Place.Holds.valueOf(pump.kind().name()),
                p -> BruteParts.placed(p, pump.body(), pump.water().portRoomMm())));
        if (f.parts().containsKey("reservoir")) {
            Reservoir r = f.the("reservoir", Reservoir.class);
            todo.add(new ToPlace(
                    "reservoir", "", Place.Holds.RESERVOIR, p -> BruteParts.placed(p, r.body(), r.portRoomMm())));
        }
        List<Placed> out = new ArrayList<>();
        for (int leftOut = 0; out.isEmpty(); leftOut++) {
            place(new Walk(text(f), todo, usable, out), leftOut, List.of(), new Placed(onBoard, Broken.NOTHING));
        }
        return out;
    }

    private static String text(WhyChoices.Filled f) {
        return f.the("supply", Supply.class).id() + " "
                + f.the("pump", Pump.class).id() + " "
                + (f.parts().containsKey("reservoir")
                        ? f.the("reservoir", Reservoir.class).id()
                        : "") + " ";
    }

    private List<Named> onBoard(WhyChoices.Filled f) {
        Board board = f.the("board", Board.class);
        Memory memory = f.the("memory", Memory.class);
        Block block = f.the("block", Block.class);
        GraphicsCard card = f.the("card", GraphicsCard.class);
        List<BruteBody> made = parts.boardBodies(board, memory, block, card);
        return List.of(
                named("board " + board.id(), "board", () -> made.get(0)),
                named("memory " + memory.id() + board.id(), "memory", () -> made.get(1)),
                named("block " + block.id() + board.id(), "block", () -> made.get(2)),
                named("card " + card.id() + board.id(), "card", () -> made.get(3)));
    }

    private record Walk(String parts, List<ToPlace> todo, List<Place> usable, List<Placed> out) {}

    /** Goes on from the places of the first parts; no place is -1. */
    private void place(Walk walk, int leftOut, List<Integer> at, Placed soFar) {
        int next = at.size();
        if (next == walk.todo().size()) {
            if (leftOut == 0) {
                walk.out().add(soFar);
            }
            return;
        }
        ToPlace part = walk.todo().get(next);
        for (int p = 0; p < walk.usable().size(); p++) {
            Place place = walk.usable().get(p);
            if (!at.contains(p) && place.holds().contains(part.form()) && isInOrder(walk, at, part, p)) {
                List<Named> bodies = new ArrayList<>(soFar.bodies());
                bodies.add(named(
                        walk.parts() + part.id() + "@" + place.id(),
                        part.id(),
                        () -> part.at().apply(place)));
                place(walk, leftOut, with(at, p), new Placed(bodies, soFar.broken()));
            }
        }
        if (leftOut > 0) {
            Broken none = fault == WhyFault.PLACE_IGNORED ? Broken.NOTHING : facts.fact("place:" + part.id());
            place(
                    walk,
                    leftOut - 1,
                    with(at, -1),
                    new Placed(soFar.bodies(), soFar.broken().or(none)));
        }
    }

    /** Of drives that measure the same, those with places stand in the brief's order. */
    private static boolean isInOrder(Walk walk, List<Integer> at, ToPlace part, int place) {
        for (int i = 0; i < at.size(); i++) {
            if (walk.todo().get(i).isAlike(part) && at.get(i) > place) {
                return false;
            }
        }
        return true;
    }

    private static List<Integer> with(List<Integer> at, int place) {
        List<Integer> out = new ArrayList<>(at);
        out.add(place);
        return out;
    }

    /** What some bodies break by themselves and with each other. */
    Broken broken(List<Named> bodies) {
        Broken out = Broken.NOTHING;
        for (int i = 0; i < bodies.size(); i++) {
            out = out.or(bodies.get(i).broken());
            for (int j = 0; j < i; j++) {
                Named a = bodies.get(i);
                Named b = bodies.get(j);
                out = out.or(pairs.computeIfAbsent(
                        (long) a.number() << 32 | b.number(),
                        k -> a.body().marginHmm(b.body()) < 0 ? facts.clear(a.id(), b.id()) : Broken.NOTHING));
            }
        }
        return out;
    }
}
