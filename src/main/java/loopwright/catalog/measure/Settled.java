package loopwright.catalog.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;
import loopwright.quantity.Known;

/**
 * What readings make of a catalogue: of those that agree the one with the smallest ± holds, those that contradict each
 * other are said and not used. Nothing is averaged.
 *
 * <p>A reading beats a data sheet and an assumption. Against a value of the catalogue that was measured too and agrees,
 * the smaller ± holds; against one that does not agree the reading holds, and that is said.
 *
 * @param used by address
 * @param contradictions by address
 * @param notes sentences about readings that did not simply replace a value
 */
public record Settled(List<Replacement> used, List<Contradiction> contradictions, List<String> notes) {

    /** Among readings that agree the surest, then the latest, then the first of the files. */
    private static final Comparator<Taken> SUREST = Comparator.comparingInt(Taken::plusMinusHmm)
            .thenComparing(Comparator.comparing(Taken::date).reversed());

    /** Copies. */
    public Settled {
        used = List.copyOf(used);
        contradictions = List.copyOf(contradictions);
        notes = List.copyOf(notes);
    }

    /** Settles what readings say, in the order of their files. */
    public static Settled of(List<Taken> readings) {
        Map<String, List<Taken>> byAddress = new TreeMap<>();
        readings.forEach(t -> byAddress
                .computeIfAbsent(t.length().address(), a -> new ArrayList<>())
                .add(t));
        Settled out = new Settled(List.of(), List.of(), List.of());
        for (List<Taken> same : byAddress.values()) {
            Optional<Contradiction> contradiction = contradiction(same);
            out = contradiction.isPresent() ? out.with(contradiction.get()) : out.with(surest(same));
        }
        return out;
    }

    private static Taken surest(List<Taken> same) {
        return same.stream().min(SUREST).orElseThrow();
    }

    /** The two that contradict each other most. */
    private static Optional<Contradiction> contradiction(List<Taken> same) {
        Optional<Contradiction> worst = Optional.empty();
        int most = 0;
        for (int i = 0; i < same.size(); i++) {
            for (int j = i + 1; j < same.size(); j++) {
                Taken a = same.get(i);
                Taken b = same.get(j);
                if (a.beyond(b) > most) {
                    most = a.beyond(b);
                    boolean inOrder = !a.date().isAfter(b.date());
                    worst = Optional.of(new Contradiction(a.length(), inOrder ? a : b, inOrder ? b : a));
                }
            }
        }
        return worst;
    }

    private Settled with(Contradiction more) {
        return new Settled(used, plus(contradictions, more), notes);
    }

    private Settled with(Taken taken) {
        Dimension was = taken.length().dimension();
        boolean measured = was.known() == Known.MEASURED;
        boolean agree = Math.abs(was.valueHmm() - taken.valueHmm()) <= was.plusMinusHmm() + taken.plusMinusHmm();
        String about = taken.length().address() + ": the reading " + taken.text();
        String catalogue = "the catalogue's measured " + Hundredths.text(was.valueHmm()) + " +-"
                + Hundredths.text(was.plusMinusHmm()) + " mm";
        if (measured && agree && was.plusMinusHmm() < taken.plusMinusHmm()) {
            return new Settled(
                    used,
                    contradictions,
                    plus(notes, about + " agrees with " + catalogue + ", which is surer and stays."));
        }
        Replacement more = new Replacement(
                taken.length().id(),
                taken.length().path(),
                was,
                taken.dimension(),
                "the reading at " + taken.place() + " (" + taken.instrument() + ", " + taken.date() + ")");
        List<String> said = measured && !agree
                ? plus(notes, about + " is used, but contradicts " + catalogue + ": measure again.")
                : notes;
        return new Settled(plus(used, more), contradictions, said);
    }

    private static <T> List<T> plus(List<T> list, T more) {
        List<T> out = new ArrayList<>(list);
        out.add(more);
        return out;
    }
}
