package loopwright.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import loopwright.catalog.basis.Face;
import loopwright.fit.PlaceModel.Placing;
import loopwright.fit.conflict.FactSet;
import loopwright.fit.conflict.Smallest;

/** Placings of the parts, clashing or not, with the facts and wishes that they break by themselves. */
final class PlacedFacts {

    private final WishedCase wished;
    private final FactBook book;
    private final List<PartFacts.Broken> parts;
    private final Bodies bodies;
    private final PairTable pairs;
    private final Map<Long, List<Placing>> placings = new HashMap<>();
    private final Map<Stage, List<Placed>> placed = new HashMap<>();
    private final Map<Placing, Placed> alone = new HashMap<>();
    private final Predicate<Integer> isNear;

    /**
     * Placings of some choices of parts.
     *
     * @param isNear whether a body can meet a wished stack at all; of placings alike in these only those are kept that break least
     */
    PlacedFacts(
            WishedCase wished,
            FactBook book,
            SceneMaker maker,
            List<PartFacts.Broken> parts,
            Predicate<Integer> isNear) {
        this.isNear = isNear;
        this.wished = wished;
        this.book = book;
        this.parts = parts;
        this.bodies = maker.bodies();
        this.pairs = maker.pairs();
    }

    /** What placings depend on. */
    private record Stage(List<Integer> builtIn, long usable) {}

    /**
     * Parts in places.
     *
     * @param bodies numbers of their bodies
     * @param facts what they break
     */
    record Placed(PartSet set, Placing placing, List<Integer> bodies, FactSet facts) {}

    /** The placings among built-in bodies, with the places that can be used. */
    List<Placed> of(List<Integer> builtIn, long usable) {
        return placed.computeIfAbsent(new Stage(builtIn, usable), this::make);
    }

    private List<Placed> make(Stage stage) {
        FactSet known = FactSet.NONE;
        for (int body : stage.builtIn()) {
            known = known.or(known(body));
        }
        Map<Integer, FactSet> withBuiltIn = new HashMap<>();
        Map<List<Integer>, Smallest<Placed>> byNear = new LinkedHashMap<>();
        for (Placing placing : placings.computeIfAbsent(stage.usable(), this::placings)) {
            Placed alone = byItself(placing);
            FactSet facts = alone.facts().or(known);
            for (int body : alone.bodies()) {
                facts = facts.or(withBuiltIn.computeIfAbsent(body, b -> clashes(b, stage.builtIn())));
            }
            List<Integer> nearOnes = alone.bodies().stream().filter(isNear).toList();
            byNear.computeIfAbsent(nearOnes, n -> new Smallest<>())
                    .offer(facts, new Placed(alone.set(), placing, alone.bodies(), facts));
        }
        List<Placed> out = new ArrayList<>();
        byNear.values().forEach(s -> s.all().forEach(k -> out.add(k.with())));
        return List.copyOf(out);
    }

    /** What a placing breaks whatever is built in. */
    private Placed byItself(Placing placing) {
        return alone.computeIfAbsent(placing, p -> {
            PartFacts.Broken choice = parts.get(p.parts());
            List<Integer> numbers = bodies.parts(choice.set(), p);
            FactSet facts = choice.facts().or(withoutPlace(choice.set(), p)).or(clashes(numbers));
            return new Placed(choice.set(), p, numbers, facts);
        });
    }

    /** Placings in which as few parts as can be are left out, choice by choice. */
    private List<Placing> placings(long usable) {
        List<PartSet> sets = parts.stream().map(PartFacts.Broken::set).toList();
        Map<Integer, List<Integer>> leftOutBySet = new HashMap<>();
        List<Placing> out = new ArrayList<>();
        for (int leftOut : smallestFirst(1 << PlaceModel.parts(wished.asked()))) {
            List<PartSet> open = sets.stream()
                    .filter(s -> leftOutBySet.getOrDefault(s.id(), List.of()).stream()
                            .noneMatch(l -> (l & ~leftOut) == 0))
                    .toList();
            if (open.isEmpty()) {
                break;
            }
            for (Placing one : new PlaceModel(wished.asked(), open, leftOut).all(usable)) {
                int set = open.get(one.parts()).id();
                leftOutBySet.computeIfAbsent(set, s -> new ArrayList<>()).add(leftOut);
                out.add(new Placing(set, one.supply(), one.pump(), one.reservoir(), one.drives()));
            }
        }
        return List.copyOf(out);
    }

    private static List<Integer> smallestFirst(int count) {
        List<Integer> out = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            out.add(i);
        }
        out.sort((a, b) -> {
            int bySize = Integer.compare(Integer.bitCount(a), Integer.bitCount(b));
            return bySize != 0 ? bySize : Integer.compare(a, b);
        });
        return out;
    }

    private FactSet withoutPlace(PartSet set, Placing placing) {
        FactSet out = FactSet.NONE;
        if (placing.supply() == PlaceModel.NOWHERE) {
            out = out.with(book.number(Fact.Kind.PLACE, "supply"));
        }
        if (placing.pump() == PlaceModel.NOWHERE) {
            out = out.with(book.number(Fact.Kind.PLACE, "pump"));
        }
        boolean wantsReservoir = set.example().parts().containsKey(loopwright.fit.rules.Role.RESERVOIR);
        if (wantsReservoir && placing.reservoir() == PlaceModel.NOWHERE) {
            out = out.with(book.number(Fact.Kind.PLACE, "reservoir"));
        }
        for (int k = 0; k < placing.drives().size(); k++) {
            if (placing.drives().get(k) == PlaceModel.NOWHERE) {
                out = out.with(book.number(Fact.Kind.PLACE, "drive:" + (k + 1)));
            }
        }
        return out;
    }

    private FactSet known(int body) {
        return bodies.get(body).isUnknown()
                ? FactSet.of(
                        book.number(Fact.Kind.KNOWN, bodies.get(body).body().id()))
                : FactSet.NONE;
    }

    private FactSet clashes(List<Integer> parts) {
        List<Integer> out = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            int part = parts.get(i);
            out.addAll(known(part).numbers());
            for (Face wall : Face.values()) {
                if (pairs.wallMargin(part, wall) < 0) {
                    out.add(book.clear(bodies.get(part).body().id(), HangFacts.wall(wall)));
                }
            }
            for (int j = i + 1; j < parts.size(); j++) {
                addIfClash(out, part, parts.get(j));
            }
        }
        return FactSet.of(out);
    }

    private FactSet clashes(int part, List<Integer> builtIn) {
        List<Integer> out = new ArrayList<>();
        builtIn.forEach(other -> addIfClash(out, part, other));
        return FactSet.of(out);
    }

    private void addIfClash(List<Integer> out, int one, int other) {
        if (pairs.margin(one, other) < 0) {
            out.add(book.clear(bodies, one, other));
        }
    }
}
