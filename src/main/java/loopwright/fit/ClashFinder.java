package loopwright.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.fit.ModModel.ModWorld;
import loopwright.fit.Scene.Setting;

/**
 * Why a layout does not fit with a mod set: over all placings of the parts and positions of the stacks, the one in which
 * least is lacking, and the two things that meet in it.
 *
 * <p>Unit: hundredths of a millimetre.
 */
public final class ClashFinder {

    /** Nothing in a machine overlaps by more. */
    private static final int LOWEST = -PairTable.NO_LIMIT;

    private final FitSearch search;
    private final Map<ModSet, List<Setting>> settings = new HashMap<>();
    private final Map<Long, Integer> pairMargins = new HashMap<>();
    private final Map<Integer, Integer> wallMargins = new HashMap<>();

    /** A finder that shares what a search has already made. */
    public ClashFinder(FitSearch search) {
        this.search = search;
    }

    /**
     * What is in the way.
     *
     * @param gap the two things, with a negative margin; empty where it cannot even hang there
     * @param why in that case
     */
    public record Clash(Optional<Gap> gap, String why) {}

    /** The best way so far. */
    private record Best(List<Hang> hangs, Setting setting, int marginHmm) {}

    /** Why these stacks, in the order of their mounts, do not fit with a valid mod set. */
    public Clash clash(List<Layout.Stack> stacks, ModSet mods) {
        Optional<ModWorld> world =
                search.worlds().stream().filter(w -> w.mods().equals(mods)).findFirst();
        if (world.isEmpty()) {
            return new Clash(Optional.empty(), "its mods do not go together");
        }
        List<List<Hang>> hangs = new ArrayList<>();
        for (Layout.Stack stack : stacks) {
            ModSet about = mods.and(ModRules.aboutMount(
                    search.fitCase().chassis(), stack.frame().mount().id()));
            Seating.Hindrance hindrance = search.fitCase().seating().hindrance(stack.frame(), stack.shape(), about);
            List<Hang> known = search.maker().hangs(stack.frame(), stack.shape(), about).stream()
                    .filter(h -> !h.occupant().isUnknown())
                    .toList();
            if (hindrance != Seating.Hindrance.NONE || known.isEmpty()) {
                String why = hindrance == Seating.Hindrance.NONE ? "no position that is known" : hindrance.text();
                return new Clash(Optional.empty(), stack.frame().mount().id() + ": " + why);
            }
            hangs.add(known);
        }
        Optional<Best> best = Optional.empty();
        List<Integer> builtIn = search.maker().bodies().builtIn(mods);
        for (Setting setting : settings(world.get())) {
            best = improve(best, setting, builtIn, hangs, List.of());
        }
        return best.map(b -> told(b, builtIn))
                .orElseGet(() -> new Clash(Optional.empty(), "the parts find no places that are known"));
    }

    /** Placings with the most room in themselves first. */
    private List<Setting> settings(ModWorld world) {
        return settings.computeIfAbsent(world.mods(), m -> {
            List<Setting> out = new ArrayList<>(search.maker().placed(world));
            out.sort(Comparator.comparingInt(s -> -s.marginHmm()));
            return List.copyOf(out);
        });
    }

    private Optional<Best> improve(
            Optional<Best> soFar, Setting setting, List<Integer> builtIn, List<List<Hang>> hangs, List<Hang> picked) {
        Optional<Best> best = soFar;
        int floor = best.map(Best::marginHmm).orElse(LOWEST);
        int bound = bound(setting, builtIn, picked);
        if (bound <= floor) {
            return best;
        }
        if (picked.size() < hangs.size()) {
            for (Hang hang : hangs.get(picked.size())) {
                List<Hang> more = new ArrayList<>(picked);
                more.add(hang);
                best = improve(best, setting, builtIn, hangs, List.copyOf(more));
            }
            return best;
        }
        Positions positions = positions(picked, setting, builtIn);
        if (!positions.feasible(floor + 1)) {
            return best;
        }
        return Optional.of(new Best(picked, setting, positions.largestMargin(floor + 1, bound)));
    }

    /** No margin beyond this is possible: what single pairs allow. */
    private int bound(Setting setting, List<Integer> builtIn, List<Hang> picked) {
        int least = setting.marginHmm();
        for (Hang hang : picked) {
            least = Math.min(
                    least,
                    wallMargins.computeIfAbsent(
                            hang.id(), k -> largest(hang, search.maker().pairs().wallSides(hang, Strictness.NOMINAL))));
            for (int body : builtIn) {
                least = Math.min(least, pairMargin(hang, body));
            }
            for (int body : setting.bodies()) {
                least = Math.min(least, pairMargin(hang, body));
            }
        }
        return least;
    }

    private int pairMargin(Hang hang, int body) {
        return pairMargins.computeIfAbsent(
                (long) hang.id() << 32 | body,
                k -> largest(hang, search.maker().pairs().sides(hang, body, Strictness.NOMINAL)));
    }

    private int largest(Hang hang, List<int[]> sides) {
        return new Positions(search.maker().pairs().domains(List.of(hang)), sides)
                .largestMargin(LOWEST, PairTable.NO_LIMIT);
    }

    private Positions positions(List<Hang> hangs, Setting setting, List<Integer> builtIn) {
        PairTable pairs = search.maker().pairs();
        List<int[]> sides = new ArrayList<>();
        for (int i = 0; i < hangs.size(); i++) {
            Hang hang = hangs.get(i);
            sides.addAll(pairs.wallSides(hang, Strictness.NOMINAL));
            setting.bodies().forEach(b -> sides.addAll(pairs.sides(hang, b, Strictness.NOMINAL)));
            builtIn.forEach(b -> sides.addAll(pairs.sides(hang, b, Strictness.NOMINAL)));
            for (int j = 0; j < i; j++) {
                sides.addAll(pairs.sides(hangs.get(j), hang, Strictness.NOMINAL));
            }
        }
        return new Positions(pairs.domains(hangs), sides);
    }

    private Clash told(Best best, List<Integer> builtIn) {
        int[] at = positions(best.hangs(), best.setting(), builtIn)
                .least(best.marginHmm())
                .orElseThrow();
        List<Standing> standing = new ArrayList<>();
        Bodies bodies = search.maker().bodies();
        builtIn.forEach(b -> standing.add(Standing.still(bodies.get(b))));
        best.setting().bodies().forEach(b -> standing.add(Standing.still(bodies.get(b))));
        for (Hang hang : best.hangs()) {
            int variable = 2 * hang.frame().index();
            standing.add(Standing.at(hang, at[variable], at[variable + 1]));
        }
        Gap worst = new Recheck(search.fitCase().chassis())
                .gaps(standing).stream()
                        .min(Comparator.comparingInt(Gap::marginHmm))
                        .orElseThrow();
        return new Clash(Optional.of(worst), "");
    }
}
