package loopwright.loop.water;

/**
 * Loss of fittings of one kind by the 3-K method: Δp = K·ρV²/2 with K = K1/Re + Ki·(1 + Kd/D^0.3), D in inches.
 *
 * <p><b>Valid for</b> any Reynolds number; the bore stands for the nominal size in inches, which the method asks for.
 *
 * <p><b>Accuracy.</b> ±25 %: so far it and the 2-K method of [Hooper1981] lie from their mean at 10 mm bore.
 *
 * <p><b>Source.</b> [SilverbergDarby1999], coefficients read in a secondary text.
 *
 * @param kind of the fittings
 * @param boreM inner diameter the speed is taken in, above 0 to 1 m
 * @param count how many one behind the other, at least 1
 */
public record FittingLoss(Kind kind, double boreM, int count) implements Passage {

    /** Metres in an inch, exact. */
    private static final double M_PER_INCH = 0.0254;

    /** Exponent of the bore, dimensionless, [SilverbergDarby1999]. */
    private static final double BORE_EXPONENT = 0.3;

    /** What turns or joins the flow. */
    public enum Kind {
        // ASSUMED: a straight fitting takes what the run of a flanged tee takes, see
        // src/site/markdown/physics/assumptions.md.
        /** A straight fitting: the bore goes on. */
        STRAIGHT(150, 0.05, 4.0),
        /** 45° elbow, r/D = 1. */
        ELBOW_45(500, 0.071, 4.2),
        /** 90° elbow, r/D = 1. */
        ELBOW_90(800, 0.14, 4.0),
        /** 90° elbow of long radius, r/D = 1.5. */
        ELBOW_90_LONG(800, 0.071, 4.2),
        /** Straight through a tee. */
        TEE_RUN(200, 0.091, 4.0),
        /** Into or out of a tee's branch. */
        TEE_BRANCH(500, 0.274, 4.0);

        private final double laminar;
        private final double turbulent;
        private final double sizeInch03;

        /** Coefficients K1, Ki (dimensionless) and Kd (inch^0.3), threaded where [SilverbergDarby1999] tells them apart. */
        Kind(double laminar, double turbulent, double sizeInch03) {
            this.laminar = laminar;
            this.turbulent = turbulent;
            this.sizeInch03 = sizeInch03;
        }
    }

    /** Checks the ranges. */
    public FittingLoss {
        Bore.checked("boreM", boreM);
        if (!(count >= 1)) {
            throw new IllegalArgumentException("count of fittings must be at least 1 but was " + count);
        }
    }

    @Override
    public double lossPa(double flowM3PerS, LiquidState liquid) {
        return in(liquid).lossPa(flowM3PerS);
    }

    /** K1/Re is linear in the flow: K1·μ·V/(2D); the rest is quadratic. */
    @Override
    public LossCurve in(LiquidState liquid) {
        double linear = count * kind.laminar * liquid.viscosityPaS() / (2 * boreM * Bore.areaM2(boreM));
        double sizePower = StrictMath.pow(boreM / M_PER_INCH, BORE_EXPONENT);
        double quadratic =
                count * kind.turbulent * (1 + kind.sizeInch03 / sizePower) * Bore.dynamicPaPerFlow2(boreM, liquid);
        return flowM3PerS -> FlowRange.checked(flowM3PerS) * (linear + quadratic * flowM3PerS);
    }
}
