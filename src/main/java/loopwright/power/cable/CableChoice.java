package loopwright.power.cable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import loopwright.catalog.part.Supply;

/**
 * Which cable feeds what, for plugs of one kind: exact.
 *
 * <p>Of all ways to share what is wanted among the cables, the one with the fewest plugs left without any, then the fewest
 * that are not reached, then the least lacking, then the least left over (of a fixed cable that is not used, all of it), then
 * the fewest cables; ties to the cables that come first. Found cable by cable over sets of what is fed. Unit: whole millimetres.
 *
 * @param runs a run a cable, in the supply's order; empty where a cable is not used
 */
public record CableChoice(List<Optional<Run>> runs) {

    /** Sets are bits of an int, and each cable tries each part of each set. */
    private static final int WANTS_MAX = 12;

    /** Copies. */
    public CableChoice {
        runs = List.copyOf(runs);
    }

    /** What a choice comes to; smaller is better. */
    record Score(int without, int missed, int lacksMm, int overMm, int cables) implements Comparable<Score> {
        static final Score ZERO = new Score(0, 0, 0, 0, 0);

        Score plus(Run run) {
            return new Score(
                    without, missed + run.shortLinks(), lacksMm + run.lacksMm(), overMm + run.overMm(), cables + 1);
        }

        /** A cable that is not used: a fixed one is there all the same. */
        Score leaving(Supply.Cable cable) {
            double wholeMm =
                    cable.lengthMm() + (cable.plugs() - 1) * cable.toNextMm().orElse(0.0);
            int leftMm = cable.fixed() ? (int) Math.floor(wholeMm) : 0;
            return new Score(without, missed, lacksMm, overMm + leftMm, cables);
        }

        @Override
        public int compareTo(Score other) {
            return Comparator.comparingInt(Score::without)
                    .thenComparingInt(Score::missed)
                    .thenComparingInt(Score::lacksMm)
                    .thenComparingInt(Score::overMm)
                    .thenComparingInt(Score::cables)
                    .compare(this, other);
        }
    }

    /**
     * A choice for the first cables.
     *
     * @param parts what each of them feeds, as a set of bits
     */
    private record Partial(Score score, List<Optional<Run>> runs, List<Integer> parts) {

        /** Better, or as good with more on the cables that come first. */
        boolean beats(Partial other) {
            int byScore = score.compareTo(other.score);
            for (int i = 0; byScore == 0 && i < parts.size(); i++) {
                byScore = Integer.compare(other.parts.get(i), parts.get(i));
            }
            return byScore < 0;
        }
    }

    /**
     * The best choice.
     *
     * @param cables of the supply, all with plugs of that kind
     * @throws IllegalArgumentException when more is wanted than can be tried
     */
    public static CableChoice of(List<Supply.Cable> cables, Wants wants) {
        if (wants.count() > WANTS_MAX) {
            throw new IllegalArgumentException("at most " + WANTS_MAX + " plugs of a kind, not " + wants.count());
        }
        TreeMap<Integer, Partial> best = new TreeMap<>();
        best.put(0, new Partial(Score.ZERO, List.of(), List.of()));
        for (Supply.Cable cable : cables) {
            TreeMap<Integer, Partial> next = new TreeMap<>();
            best.forEach((fed, partial) -> extend(next, cable, wants, fed, partial));
            best = next;
        }
        Optional<Partial> chosen = Optional.empty();
        for (var entry : best.entrySet()) {
            Score found = entry.getValue().score();
            int without = wants.count() - Integer.bitCount(entry.getKey());
            Score whole = new Score(without, found.missed(), found.lacksMm(), found.overMm(), found.cables());
            Partial candidate =
                    new Partial(whole, entry.getValue().runs(), entry.getValue().parts());
            if (chosen.isEmpty() || candidate.beats(chosen.get())) {
                chosen = Optional.of(candidate);
            }
        }
        return new CableChoice(chosen.map(Partial::runs).orElse(List.of()));
    }

    private static void extend(
            TreeMap<Integer, Partial> next, Supply.Cable cable, Wants wants, int fed, Partial partial) {
        int all = (1 << wants.count()) - 1;
        int free = all & ~fed;
        for (int part = free; ; part = (part - 1) & free) {
            if (Integer.bitCount(part) <= cable.plugs()) {
                Optional<Run> run = part == 0 ? Optional.empty() : Optional.of(Run.of(cable, wants, numbers(part)));
                List<Optional<Run>> runs = new ArrayList<>(partial.runs());
                runs.add(run);
                List<Integer> parts = new ArrayList<>(partial.parts());
                parts.add(part);
                Score score = run.map(partial.score()::plus)
                        .orElseGet(() -> partial.score().leaving(cable));
                Partial candidate = new Partial(score, runs, parts);
                Partial known = next.get(fed | part);
                if (known == null || candidate.beats(known)) {
                    next.put(fed | part, candidate);
                }
            }
            if (part == 0) {
                return;
            }
        }
    }

    private static List<Integer> numbers(int set) {
        List<Integer> out = new ArrayList<>();
        for (int i = 0; i < WANTS_MAX; i++) {
            if ((set >> i & 1) == 1) {
                out.add(i);
            }
        }
        return out;
    }
}
