package loopwright.answer.measure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import loopwright.catalog.standard.Practice.Instrument;
import loopwright.fit.FitCase;
import loopwright.fit.Gap;
import loopwright.fit.Layout;
import loopwright.fit.Witness;
import loopwright.tolerance.Unsure;

/**
 * Gathers layouts and ranks the dimensions in what is not sure of them. Layouts with the same unsure margins are taken together,
 * with the chance of the first: the others differ in what is sure only.
 */
final class Ranking {

    private final MeasuredNames names;
    private final Whereabouts whereabouts;
    private final double lateCents;
    private final ReadingWorth worth = new ReadingWorth();
    private final Map<String, Group> groups = new LinkedHashMap<>();
    private final List<Layout> layouts = new ArrayList<>();

    Ranking(FitCase fitCase, double lateCents) {
        this.names = new MeasuredNames(fitCase);
        this.whereabouts = new Whereabouts(fitCase.catalog());
        this.lateCents = lateCents;
    }

    /** Layouts with the same unsure margins, how many, and the chance of a clash of the first. */
    private record Group(
            Unsure unsure, SortedMap<Measurable, List<String>> measurables, double clash, AtomicInteger count) {}

    /** A layout as it stands, with what is not sure of it. */
    record Look(Layout layout, Witness witness, Unsure unsure) {

        static Look at(Layout layout, Witness witness) {
            return new Look(
                    layout,
                    witness,
                    Unsure.of(witness.gaps().stream().map(Gap::margin).toList()));
        }
    }

    /** Adds a layout. */
    void add(Look look) {
        layouts.add(look.layout());
        if (look.unsure().isNothing()) {
            return;
        }
        SortedMap<Measurable, List<String>> measurables = new TreeMap<>();
        look.unsure()
                .dimensions()
                .forEach((name, term) -> names.of(look.layout(), name, term.dimension())
                        .ifPresent(m -> measurables
                                .computeIfAbsent(m, k -> new ArrayList<>())
                                .add(name)));
        groups.computeIfAbsent(
                        look.unsure().text() + measurables.keySet(),
                        k -> new Group(
                                look.unsure(),
                                measurables,
                                1 - look.witness().probability().orElse(1),
                                new AtomicInteger()))
                .count()
                .incrementAndGet();
    }

    /** How many layouts were added. */
    int layouts() {
        return layouts.size();
    }

    /** The sums of one dimension. */
    private static final class Tally {
        private final Measurable measurable;
        private final List<Instrument> instruments;
        private final double[] avoided;
        private final int[] die = {0};

        private Tally(Measurable measurable, List<Instrument> instruments) {
            this.measurable = measurable;
            this.instruments = instruments;
            this.avoided = new double[instruments.size()];
        }
    }

    /** Every dimension that counts, what is worth most first; what hangs on them is no more than told. */
    List<Worth> ranked() {
        SortedMap<Measurable, Tally> tallies = new TreeMap<>();
        for (Group group : groups.values()) {
            group.measurables()
                    .forEach((m, all) ->
                            add(tallies.computeIfAbsent(m, k -> new Tally(k, whereabouts.instruments(k))), group, all));
        }
        List<Worth> out = new ArrayList<>();
        tallies.values().forEach(t -> out.add(worth(t)));
        out.sort(Worth.MOST_FIRST);
        return out;
    }

    private void add(Tally tally, Group group, List<String> all) {
        int count = group.count().get();
        int plusMinus = tally.measurable.now().plusMinusHmm();
        boolean stands = group.unsure().standsWith(new HashSet<>(all), plusMinus)
                && group.unsure().standsWith(new HashSet<>(all), -plusMinus);
        tally.die[0] += stands ? 0 : count;
        double[] most = new double[tally.instruments.size()];
        for (String name : all) {
            Unsure about = group.unsure().about(name);
            for (int i = 0; i < most.length; i++) {
                int reading = tally.instruments.get(i).plusMinusHmm();
                most[i] = Math.max(most[i], worth.avoided(group.clash(), about, name, tally.measurable.now(), reading));
            }
        }
        for (int i = 0; i < most.length; i++) {
            tally.avoided[i] += count * most[i] / layouts.size();
        }
    }

    private Worth worth(Tally tally) {
        List<Double> avoided = new ArrayList<>();
        for (double each : tally.avoided) {
            avoided.add(each);
        }
        InstrumentChoice choice = InstrumentChoice.of(
                tally.instruments, avoided, tally.measurable.now().plusMinusHmm());
        return new Worth(
                tally.measurable,
                new Hang(tally.die[0], 0, false),
                choice.avoided() * lateCents,
                choice,
                whereabouts.of(tally.measurable).words());
    }
}
