package loopwright.tolerance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import loopwright.geometry.Sum;
import loopwright.quantity.Dimension;
import loopwright.quantity.Distribution;

/**
 * A margin along one axis: its nominal value, and every named dimension that may be off in it.
 *
 * <p>Units: hundredths of a millimetre. What two faces have in common has cancelled.
 *
 * <p>Worst case is the sum of all ±, root sum square the root of the sum of their squares. Neither is taken below ±0.5 mm:
 * what is missing is one more normal deviation, of these two things along this axis alone (it stands for bow, paint, and how
 * well a thing is put in its place). Common practice, no source.
 */
public final class AxisMargin {

    /** The least that a clearance is taken to be off by, hundredths of a millimetre; common practice, no source. */
    public static final int FLOOR_HMM = 50;

    /** A normal dimension's ± in standard deviations. */
    private static final double SIGMAS = 2;

    private final int nominalHmm;
    private final List<Sum.Term> terms;
    private final String floorName;
    private final double worstHmm;
    private final double rssHmm;
    private final double sigmaHmm;
    private final List<Double> halfWidthsHmm;

    private AxisMargin(int nominalHmm, List<Sum.Term> terms, String floorName) {
        this.nominalHmm = nominalHmm;
        this.terms = terms;
        this.floorName = floorName;
        double worst = 0;
        double squares = 0;
        for (Sum.Term term : terms) {
            worst += plusMinus(term);
            squares += plusMinus(term) * plusMinus(term);
        }
        this.worstHmm = worst;
        this.rssHmm = Math.sqrt(squares);
        this.sigmaHmm = sigma();
        this.halfWidthsHmm = terms.stream()
                .filter(t -> isRectangular(t.dimension()))
                .map(AxisMargin::plusMinus)
                .toList();
    }

    private double sigma() {
        double squares = floorSigmaHmm() * floorSigmaHmm();
        for (Sum.Term term : terms) {
            if (!isRectangular(term.dimension())) {
                squares += scale(term) * scale(term);
            }
        }
        return Math.sqrt(squares);
    }

    /**
     * The margin between two faces.
     *
     * @param nominalHmm as the faces stand, needs taken off
     * @param upper the face at the larger coordinate
     * @param lower the face at the smaller one
     * @param pairAxis tells the two bodies and the axis from all others
     */
    public static AxisMargin between(int nominalHmm, Sum upper, Sum lower, String pairAxis) {
        Map<Sum.Term, Integer> halves = new LinkedHashMap<>();
        for (Sum.Term term : upper.plus(-1, lower).terms()) {
            halves.merge(new Sum.Term(1, term.name(), term.dimension()), term.halves(), Integer::sum);
        }
        List<Sum.Term> left = new ArrayList<>();
        halves.forEach((term, count) -> {
            boolean counts = term.dimension().isUnknown() || term.dimension().plusMinusHmm() > 0;
            if (count != 0 && counts) {
                left.add(new Sum.Term(count, term.name(), term.dimension()));
            }
        });
        left.sort(Comparator.comparing(Sum.Term::name)
                .thenComparing(t -> t.dimension().valueHmm())
                .thenComparing(t -> t.dimension().plusMinusHmm())
                .thenComparing(t -> t.dimension().distribution()));
        return new AxisMargin(nominalHmm, List.copyOf(left), pairAxis);
    }

    private static double plusMinus(Sum.Term term) {
        return Math.abs(term.halves()) / 2.0 * term.dimension().plusMinusHmm();
    }

    /** The margin when nothing is off. */
    public int nominalHmm() {
        return nominalHmm;
    }

    /** What may be off in it: dimensions with a ±, by name, each once. */
    public List<Sum.Term> terms() {
        return terms;
    }

    /** How far it may be off at worst: the sum of all ±, at least 0.5 mm; a half hundredth is rounded up. */
    public int worstCaseHmm() {
        return (int) Math.max(FLOOR_HMM, Math.ceil(worstHmm));
    }

    /** How far it is off by root sum square, at least 0.5 mm; rounded to a hundredth. */
    public int rssHmm() {
        return (int) Math.max(FLOOR_HMM, Math.round(rssHmm));
    }

    /** Whether every dimension in it is known. */
    public boolean isKnown() {
        return terms.stream().noneMatch(t -> t.dimension().isUnknown());
    }

    /** The name of the deviation that makes up for what is missing to the least spread. */
    String floorName() {
        return floorName;
    }

    /** Its standard deviation; 0 where the dimensions' spread is enough. */
    double floorSigmaHmm() {
        double missing = (double) FLOOR_HMM * FLOOR_HMM - rssHmm * rssHmm;
        return missing > 0 ? Math.sqrt(missing) / SIGMAS : 0;
    }

    /** Standard deviation of the normal deviations together, the floor's among them. */
    double sigmaHmm() {
        return sigmaHmm;
    }

    /** Half widths of the rectangular deviations. */
    List<Double> halfWidthsHmm() {
        return halfWidthsHmm;
    }

    /** How much of the margin a unit of the term's deviation is, with its sign. */
    static double scale(Sum.Term term) {
        double whole = term.halves() / 2.0 * term.dimension().plusMinusHmm();
        return isRectangular(term.dimension()) ? whole : whole / SIGMAS;
    }

    static boolean isRectangular(Dimension dimension) {
        return dimension.distribution() == Distribution.RECTANGULAR;
    }

    /** The probability that it is not missing; only for what is known. */
    double probability() {
        return SingleMargin.probability(nominalHmm, sigmaHmm(), halfWidthsHmm());
    }

    /** The probability that it is not missing after a dimension was read; the least spread is kept. */
    double probability(ReadOff reading) {
        double limit = nominalHmm;
        double squares = rssHmm * rssHmm;
        double floor = floorSigmaHmm();
        double normal = sigmaHmm * sigmaHmm - floor * floor;
        List<Double> halfWidths = halfWidthsHmm;
        for (Sum.Term term : terms) {
            if (!term.name().equals(reading.name())) {
                continue;
            }
            double its = Math.abs(term.halves()) / 2.0 * reading.plusMinusHmm();
            limit += term.halves() / 2.0 * reading.offHmm();
            squares += its * its - plusMinus(term) * plusMinus(term);
            normal += its * its / (SIGMAS * SIGMAS);
            if (isRectangular(term.dimension())) {
                halfWidths = new ArrayList<>(halfWidths);
                halfWidths.remove(plusMinus(term));
            } else {
                normal -= scale(term) * scale(term);
            }
        }
        double missing = Math.max(0, (double) FLOOR_HMM * FLOOR_HMM - squares) / (SIGMAS * SIGMAS);
        return SingleMargin.probability(limit, Math.sqrt(Math.max(0, normal) + missing), halfWidths);
    }

    /** Whether one of these dimensions is in it. */
    boolean isAbout(Set<String> names) {
        return terms.stream().anyMatch(t -> names.contains(t.name()));
    }

    /** Its nominal value when some dimensions are all so much more. */
    double nominalWith(Set<String> names, int moreHmm) {
        double out = nominalHmm;
        for (Sum.Term term : terms) {
            if (names.contains(term.name())) {
                out += term.halves() / 2.0 * moreHmm;
            }
        }
        return out;
    }

    /** What may be off in it and how much: margins that share it differ by a length only. */
    String direction() {
        StringBuilder out = new StringBuilder(floorSigmaHmm() > 0 ? floorName : "");
        for (Sum.Term term : terms) {
            out.append(' ').append(term.name()).append('*').append(term.halves());
            out.append('~').append(term.dimension().plusMinusHmm());
            out.append(isRectangular(term.dimension()) ? "r" : "");
        }
        return out.toString();
    }
}
