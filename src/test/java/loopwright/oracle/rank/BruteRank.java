package loopwright.oracle.rank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.function.Function;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.part.Part;
import loopwright.oracle.LayoutText;
import loopwright.oracle.OracleCase;
import loopwright.oracle.brute.BruteFits;
import loopwright.oracle.brute.BruteForce;
import loopwright.oracle.brute.BruteHung;
import loopwright.oracle.brute.Fault;

/** Walks every build there is: mod sets, layouts, bare rows, who blows out, parts, duties. Nothing is left out early. */
final class BruteRank implements Function<OracleCase, RankAnswer> {
    private final RankFault fault;

    BruteRank(RankFault fault) {
        this.fault = fault;
    }

    @Override
    public RankAnswer apply(OracleCase question) {
        return new Walk(question, fault).run();
    }

    /** One walk through one case. */
    private static final class Walk {
        private final OracleCase question;
        private final RankFault fault;
        private final BruteKept kept;
        private final BruteThermal thermal;
        private final Map<List<Part>, BruteCore> cores = new HashMap<>();
        private final Map<String, List<SortedSet<String>>> fitWith = new HashMap<>();

        Walk(OracleCase question, RankFault fault) {
            this.question = question;
            this.fault = fault;
            this.kept = new BruteKept(fault);
            this.thermal = new BruteThermal(question, fault);
        }

        RankAnswer run() {
            List<SortedSet<String>> sets = new ArrayList<>(BruteForce.validSets(question));
            sets.sort((a, b) -> Integer.compare(a.size(), b.size()));
            for (SortedSet<String> set : sets) {
                BruteFits fits = new BruteFits(
                        question, set, fault == RankFault.TIGHT_ALLOWED ? Fault.TIGHT_ALLOWED : Fault.NONE);
                if (isDrawn(fits.mods())) {
                    BruteBuilds builds = new BruteBuilds(question, fits, thermal, kept, fault);
                    List<BruteCore> choices = fits.choices().stream()
                            .map(parts -> cores.computeIfAbsent(parts, p -> BruteCore.of(question, p, fault)))
                            .toList();
                    layouts(set, fits, choices, builds, 0, List.of());
                }
            }
            return kept.answer(thermal.solved());
        }

        /** No mod of the set is there for nothing: each changes room, seats or air, or another of the set requires it. */
        private static boolean isDrawn(List<Mod> mods) {
            return mods.stream()
                    .allMatch(mod -> changes(mod.effect())
                            || mods.stream().anyMatch(m -> m.rules().requires().contains(mod.id())));
        }

        private static boolean changes(Mod.Effect e) {
            return !(e.removes().isEmpty()
                    && e.adds().isEmpty()
                    && e.opensPlaces().isEmpty()
                    && e.closesPlaces().isEmpty()
                    && e.seats().isEmpty()
                    && e.covers().isEmpty()
                    && e.airways().isEmpty());
        }

        private void layouts(
                SortedSet<String> set,
                BruteFits fits,
                List<BruteCore> choices,
                BruteBuilds builds,
                int mount,
                List<BruteHung> stacks) {
            if (choices.isEmpty()) {
                return;
            }
            if (mount < fits.stacks().size()) {
                layouts(set, fits, choices, builds, mount + 1, stacks);
                for (BruteHung hung : fits.stacks().get(mount)) {
                    List<BruteHung> more = new ArrayList<>(stacks);
                    more.add(hung);
                    layouts(set, fits, fitting(fits, choices, more), builds, mount + 1, more);
                }
            } else if (!stacks.isEmpty()) {
                layout(set, fits, choices, builds, stacks);
            }
        }

        private void layout(
                SortedSet<String> set,
                BruteFits fits,
                List<BruteCore> choices,
                BruteBuilds builds,
                List<BruteHung> stacks) {
            String text = text(stacks);
            List<SortedSet<String>> smaller = fitWith.computeIfAbsent(text, t -> new ArrayList<>());
            if (fault == RankFault.LEAST_SETS_ONLY && smaller.stream().anyMatch(s -> set.containsAll(s))) {
                return;
            }
            smaller.add(set);
            builds.all(text, stacks, choices);
            for (int i = 0; i < fits.rows().size() && fault != RankFault.NO_BARE_ROWS; i++) {
                Mount mount = question.chassis().mounts().get(i);
                if (stacks.stream().noneMatch(s -> s.mount().equals(mount))) {
                    for (BruteHung row : fits.rows().get(i)) {
                        List<BruteHung> more = new ArrayList<>(stacks);
                        more.add(row);
                        builds.all(text, more, fitting(fits, choices, more));
                    }
                }
            }
        }

        private static List<BruteCore> fitting(BruteFits fits, List<BruteCore> choices, List<BruteHung> hung) {
            return choices.stream().filter(c -> fits.fits(c.parts(), hung)).toList();
        }

        private static String text(List<BruteHung> stacks) {
            String text = "";
            for (BruteHung stack : stacks) {
                text = LayoutText.with(text, stack.mount().id(), stack.text());
            }
            return text;
        }
    }
}
