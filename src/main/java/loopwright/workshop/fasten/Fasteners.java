package loopwright.workshop.fasten;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import loopwright.answer.Inspection;
import loopwright.catalog.Catalog;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Screw;
import loopwright.catalog.standard.Standards.ThreadRow;
import loopwright.fit.Layout.Stack;
import loopwright.rank.Build;
import loopwright.workshop.finish.PaintedParts;

/**
 * Every screw of a build.
 *
 * @param sets of the stacks, mount by mount
 * @param fixed of what the trade screws in one length
 * @param mixUps threads of this build that can be taken for one another
 * @param bag how many of each screw, by id; what is refused is not in it
 */
public record Fasteners(List<ScrewSet> sets, List<FixedSet> fixed, List<MixUp> mixUps, Map<String, Integer> bag) {

    /** Copies. */
    public Fasteners {
        sets = List.copyOf(sets);
        fixed = List.copyOf(fixed);
        mixUps = List.copyOf(mixUps);
        bag = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(bag));
    }

    /** A screw that gets into a hole that is not its own. */
    public record MixUp(ThreadRow screw, ThreadRow hole, ThreadMix mix) {}

    /** The screws of a build. */
    public static Fasteners of(Inspection in) {
        Build build = in.build();
        Catalog catalog = in.fitCase().catalog();
        PaintedParts painted = PaintedParts.of(in.fitCase(), build.mods());
        Stock stock = new Stock(catalog.all(Screw.class), catalog.practice().fastening());
        ScrewSets maker = new ScrewSets(catalog, stock);
        List<ScrewSet> sets = new ArrayList<>();
        for (Stack stack : build.stacks()) {
            String mount = stack.frame().mount().id();
            Optional<Radiator> radiator =
                    findFirst(build, "radiator " + mount).map(id -> catalog.part(Radiator.class, id));
            Fan fan = catalog.part(Fan.class, findFirst(build, "fans " + mount).orElseThrow());
            new StackJoints(in.fitCase(), stack, build.mods(), radiator, fan)
                    .all(painted)
                    .forEach(noted -> sets.add(maker.of(noted.joint(), noted.warnings())));
        }
        List<FixedSet> fixed = FixedScrewSets.of(in, stock);
        return new Fasteners(sets, fixed, MixUps.of(catalog.standards(), sets, fixed), bag(sets, fixed));
    }

    private static Optional<String> findFirst(Build build, String role) {
        return build.parts().getOrDefault(role, List.of()).stream().findFirst();
    }

    private static Map<String, Integer> bag(List<ScrewSet> sets, List<FixedSet> fixed) {
        Map<String, Integer> out = new TreeMap<>();
        sets.forEach(s -> s.findScrew()
                .ifPresent(screw -> out.merge(screw.id(), s.joint().count().holes(), Integer::sum)));
        fixed.forEach(f -> f.screw().ifPresent(screw -> out.merge(screw.id(), f.count(), Integer::sum)));
        return out;
    }

    /** The sets for which stock has no screw. */
    public List<ScrewSet> refused() {
        return sets.stream().filter(s -> s.findScrew().isEmpty()).toList();
    }

    /** Screws in all, those that stock lacks too. */
    public int screws() {
        return sets.stream().mapToInt(s -> s.joint().count().holes()).sum()
                + fixed.stream().mapToInt(FixedSet::count).sum();
    }
}
