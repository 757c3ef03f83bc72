package loopwright.catalog.standard;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.quantity.Dimension;

/**
 * Paint: how it is built up, what it covers, when it is dry; common practice, no published source. The label of the paint that
 * is used rules.
 *
 * @param film what one painted face grows by
 * @param systems one for each surface
 */
public record Finishing(Film film, Can can, List<PaintSystem> systems, Cure cure, Climate climate, ColourSteps colour) {

    /** Nothing is said: nothing can be planned. */
    public static final Finishing NOTHING = new Finishing(
            new Film(Dimension.UNKNOWN, Dimension.UNKNOWN),
            new Can(400, 1, 0),
            List.of(),
            new Cure(0, 0, 0, 0),
            new Climate(0, 0, 0, 0),
            new ColourSteps(0, 0));

    /** Copies. */
    public Finishing {
        systems = List.copyOf(systems);
    }

    /** Growth of one painted face: what is reckoned with, and the most. */
    public record Film(
            @Limits(min = 0, max = 1) Dimension faceMm,
            @Limits(min = 0, max = 1) Dimension faceMostMm) {}

    /**
     * A spray can.
     *
     * @param coversM2 one coat on small open parts, overspray included
     * @param spareColour cans of colour that are bought besides
     */
    public record Can(
            @Limits(min = 50, max = 1000) double volumeML,
            @Limits(min = 0.1, max = 10) double coversM2,
            @Limits(min = 0, max = 10) int spareColour) {

        /** Square hundredths of a millimetre in a square metre. */
        private static final BigDecimal HMM2_PER_M2 = BigDecimal.TEN.pow(10);

        /** One coat of it, in square hundredths of a millimetre. */
        public long coversHmm2() {
            return BigDecimal.valueOf(coversM2).multiply(HMM2_PER_M2).longValue();
        }
    }

    /** How a surface is painted, step by step. */
    public record PaintSystem(Surface surface, List<Step> steps) {
        /** Copies. */
        public PaintSystem {
            steps = List.copyOf(steps);
        }
    }

    /** What is painted. */
    public enum Surface {
        /** Bare or coated metal. */
        METAL,
        /** Hard plastic. */
        PLASTIC,
        /** Plastic under a soft, rubbery coat. */
        SOFT_TOUCH,
        /** Clear acrylic, painted from behind. */
        ACRYLIC_BEHIND
    }

    /**
     * One step.
     *
     * @param product what is sprayed, where something is
     * @param flash from one of its coats to the next coat, of the same product or of one sprayed over it unsanded
     * @param pause after the step, before what comes next
     */
    public record Step(
            String what,
            Optional<Product> product,
            Optional<Coats> coats,
            Optional<Minutes> flash,
            Optional<Minutes> pause) {
        /** Refuses coats of nothing, a product in no coats, and a flash of nothing. */
        public Step {
            if (product.isPresent() != coats.isPresent()) {
                throw new IllegalArgumentException("product and coats together, or neither");
            }
            if (product.isEmpty() && flash.isPresent()) {
                throw new IllegalArgumentException("a flash only where a product is sprayed");
            }
        }
    }

    /** What comes out of a can. */
    public enum Product {
        /** Etch or epoxy primer. */
        METAL_PRIMER,
        /** Adhesion promoter. */
        PROMOTER,
        /** Filler primer. */
        FILLER,
        /** Colour. */
        COLOUR,
        /** Clear. */
        CLEAR,
        /** Backing behind colour that is seen through acrylic. */
        BACKING
    }

    /**
     * Coats of one product.
     *
     * @param planned what cans and hours are reckoned with
     */
    public record Coats(
            @Limits(min = 1, max = 10) int least,
            @Limits(min = 1, max = 10) int planned,
            @Limits(min = 1, max = 10) int most) {
        /** Refuses numbers that do not rise. */
        public Coats {
            if (!(least <= planned && planned <= most)) {
                throw new IllegalArgumentException("least at most planned, planned at most most");
            }
        }
    }

    /** A flash or a pause. */
    public record Minutes(
            @Limits(min = 0, max = 20_000) int lowMin,
            @Limits(min = 0, max = 20_000) int highMin) {
        /** Refuses a band that runs backwards. */
        public Minutes {
            if (!(lowMin <= highMin)) {
                throw new IllegalArgumentException("low_min at most high_min");
            }
        }
    }

    /**
     * When it is dry, hours after the last coat; and the window between coats that are not sanded between, of many cans.
     *
     * @param recoatWithinH the next coat at the latest
     * @param recoatAfterH or not before: between the two the solvent lifts the film; a sanded film has no window
     * @param assembleH until parts may be put together
     * @param fullH until it is as hard as it gets
     */
    public record Cure(
            @Limits(min = 0, max = 100) double recoatWithinH,
            @Limits(min = 0, max = 400) double recoatAfterH,
            @Limits(min = 0, max = 400) double assembleH,
            @Limits(min = 0, max = 1000) double fullH) {}

    /**
     * Air that paint wants.
     *
     * @param overDewPointK how much warmer the part must be than the dew point
     */
    public record Climate(
            @Limits(min = 0, max = 50) double leastC,
            @Limits(min = 0, max = 50) double mostC,
            @Limits(min = 0, max = 100) double humidityMaxPercent,
            @Limits(min = 0, max = 20) double overDewPointK) {}

    /** Differences of colour, CIEDE2000: the least that some see side by side, and the least that anybody sees. */
    public record ColourSteps(
            @Limits(min = 0, max = 20) double justVisible,
            @Limits(min = 0, max = 20) double visible) {}
}
