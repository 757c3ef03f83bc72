package loopwright.answer.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.standard.Practice.Instrument;
import loopwright.catalog.standard.Practice.Takes;

/**
 * With what to measure.
 *
 * @param instrument the roughest that is good enough; absent where none of the practice's takes such a length
 * @param notGoodEnough rougher ones that would take it too
 * @param avoided what it avoids, 0 to 1
 */
public record InstrumentChoice(Optional<Instrument> instrument, List<Instrument> notGoodEnough, double avoided) {

    /** What an instrument has to avoid of what the best avoids, to be good enough. */
    static final double ENOUGH = 0.9;

    /** Copies. */
    public InstrumentChoice {
        notGoodEnough = List.copyOf(notGoodEnough);
    }

    /** The instruments that take such a length, roughest first. */
    static List<Instrument> suitable(List<Instrument> all, Takes takes, int lengthHmm) {
        return all.stream()
                .filter(i -> i.takes().contains(takes) && i.longestHmm() >= lengthHmm)
                .toList();
    }

    /**
     * The roughest that avoids nearly what the best avoids; where no reading changes a decision, the roughest that is surer
     * than what is believed, else the finest.
     *
     * @param suitable roughest first
     * @param avoided by each, in the same order
     * @param knownToHmm the ± of what is believed
     */
    static InstrumentChoice of(List<Instrument> suitable, List<Double> avoided, int knownToHmm) {
        double best = avoided.stream().mapToDouble(a -> a).max().orElse(0);
        List<Instrument> rougher = new ArrayList<>();
        for (int i = 0; i < suitable.size(); i++) {
            Instrument one = suitable.get(i);
            boolean enough = best > 0
                    ? avoided.get(i) >= ENOUGH * best
                    : one.plusMinusHmm() < knownToHmm || i == suitable.size() - 1;
            if (enough) {
                return new InstrumentChoice(Optional.of(one), rougher, avoided.get(i));
            }
            rougher.add(one);
        }
        return new InstrumentChoice(Optional.empty(), List.of(), 0);
    }
}
