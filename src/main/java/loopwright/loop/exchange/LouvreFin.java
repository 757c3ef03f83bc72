package loopwright.loop.exchange;

/**
 * Heat transfer and friction of air in a corrugated louvred fin between flat tubes.
 *
 * <p><b>Units.</b> Lengths in m, angle in degrees; Reynolds numbers on the louvre pitch and the speed in the smallest free
 * section.
 *
 * <p><b>Valid for</b> Re 100 to 3000 (heat) and 5000 (friction); down to Re 30 the heat is extrapolated. Below Re 30 the
 * transfer coefficient stays what it is at 30, as in developed laminar flow. The friction's branch for low Re has a pole at Re 2;
 * it ends where its slope reaches the laminar −1 (about Re 60 for such fins) and goes on with f·Re constant, without a
 * bend. Fin thickness over fin pitch is not taken below 0.013, where the correlation runs away.
 *
 * <p><b>Accuracy.</b> As published: heat ±15 % for 89 %, friction ±15 % for 83 % of the data. The two friction branches differ by
 * some 30 % at Re 150; the published blend joins them between 130 and 230.
 *
 * <p><b>Source.</b> Heat: [ChangWang1997] eq. 9. Friction: [Chang2000], blend: [Chang2006].
 */
public record LouvreFin(Louvre louvre, Fin fin, Tubes tubes) {

    /** Reynolds number below which the transfer coefficient is held, dimensionless; ASSUMED, see assumptions.md. */
    static final double RE_HEAT_MIN = 30;

    /** Where the friction's blend begins, dimensionless, [Chang2006]. */
    static final double RE_BLEND_MIN = 130;

    /** Where the friction's blend ends, dimensionless, [Chang2006]. */
    static final double RE_BLEND_MAX = 230;

    /** Exponents of the low branch that make its slope, dimensionless, [Chang2000]. */
    private static final double LOW_SLOPE = 0.805;

    private static final double LOW_LOG_EXPONENT = -3.01;

    /** Least fin thickness over fin pitch, dimensionless: below, ln((δ/Fp)^0.48 + 0.9) nears 0; ASSUMED. */
    private static final double THICKNESS_SHARE_MIN = 0.013;

    private static final double RIGHT_ANGLE_DEG = 90;

    /**
     * The louvres.
     *
     * @param angleDeg above 0, below 90
     * @param pitchM along the air's way
     * @param lengthM along the fin's height
     */
    public record Louvre(double angleDeg, double pitchM, double lengthM) {}

    /**
     * The fin.
     *
     * @param pitchM from fin to fin
     * @param heightM from tube to tube
     * @param depthM along the air's way
     */
    public record Fin(double pitchM, double heightM, double thicknessM, double depthM) {}

    /**
     * The tubes.
     *
     * @param pitchM from tube to tube
     * @param thicknessM outer, along the pitch: the short side
     */
    public record Tubes(double pitchM, double thicknessM) {}

    /** Refuses what is no fin. */
    public LouvreFin {
        boolean sound = louvre.angleDeg > 0
                && louvre.angleDeg < RIGHT_ANGLE_DEG
                && louvre.pitchM > 0
                && louvre.lengthM > 0
                && fin.thicknessM > 0
                && fin.depthM > 0
                && fin.pitchM > fin.thicknessM
                && fin.heightM > fin.thicknessM
                && tubes.thicknessM > 0
                && tubes.pitchM > tubes.thicknessM;
        if (!sound) {
            throw new IllegalArgumentException("no louvred fin has the measures " + louvre + ", " + fin + ", " + tubes);
        }
    }

    /**
     * Returns Colburn's j = h/(ρ·V·cp)·Pr^(2/3), [ChangWang1997] eq. 9.
     *
     * @param reynolds above 0
     * @throws IllegalArgumentException if it is not, or NaN
     */
    public double colburnJ(double reynolds) {
        check(reynolds);
        double re = Math.max(reynolds, RE_HEAT_MIN);
        double perLouvre = 1 / louvre.pitchM;
        double j = pow(re, -0.49)
                * pow(louvre.angleDeg / RIGHT_ANGLE_DEG, 0.27)
                * pow(fin.pitchM * perLouvre, -0.14)
                * pow(fin.heightM * perLouvre, -0.29)
                * pow(fin.depthM * perLouvre, -0.23)
                * pow(louvre.lengthM * perLouvre, 0.68)
                * pow(tubes.pitchM * perLouvre, -0.28)
                * pow(fin.thicknessM * perLouvre, -0.05);
        return j * re / reynolds;
    }

    /**
     * Returns Fanning's friction factor on the smallest free section.
     *
     * @param reynolds above 0
     * @throws IllegalArgumentException if it is not, or NaN
     */
    public double frictionF(double reynolds) {
        check(reynolds);
        double laminarEnd = laminarEnd();
        if (reynolds <= laminarEnd) {
            return frictionLow(laminarEnd) * laminarEnd / reynolds;
        }
        if (reynolds <= RE_BLEND_MIN) {
            return frictionLow(reynolds);
        }
        if (reynolds >= RE_BLEND_MAX) {
            return frictionHigh(reynolds);
        }
        double low = frictionLow(RE_BLEND_MIN);
        double high = frictionHigh(RE_BLEND_MAX);
        double w = 3.6 - 0.02 * reynolds;
        return Math.sqrt(((1 + w) * low * low + (1 - w) * high * high) / 2);
    }

    /** Where the low branch falls as steeply as laminar friction, d ln f/d ln Re = −1; at most 130. */
    double laminarEnd() {
        double rest = 1 - LOW_SLOPE * fin.pitchM / fin.heightM;
        return rest <= 0 ? RE_BLEND_MIN : Math.min(RE_BLEND_MIN, 2 * StrictMath.exp(-LOW_LOG_EXPONENT / rest));
    }

    /** [Chang2000], the branch for Re below 150. */
    double frictionLow(double re) {
        double f1 = 14.39
                * pow(re, -LOW_SLOPE * fin.pitchM / fin.heightM)
                * pow(StrictMath.log(1 + fin.pitchM / louvre.pitchM), 3.04);
        double f2 = pow(StrictMath.log(pow(thicknessShare(), 0.48) + 0.9), -1.435)
                * pow(hydraulicDiameterM() / louvre.pitchM, -3.01)
                * pow(StrictMath.log(0.5 * re), LOW_LOG_EXPONENT);
        double f3 = pow(fin.pitchM / louvre.lengthM, -0.308)
                * pow(fin.depthM / louvre.lengthM, -0.308)
                * StrictMath.exp(-0.1167 * tubes.pitchM / tubes.thicknessM)
                * pow(louvre.angleDeg, 0.35);
        return f1 * f2 * f3;
    }

    /** [Chang2000], the branch for Re above 150. */
    double frictionHigh(double re) {
        double f1 = 4.97
                * pow(re, 0.6049 - 1.064 / pow(louvre.angleDeg, 0.2))
                * pow(StrictMath.log(pow(thicknessShare(), 0.5) + 0.9), -0.527);
        double between = tubes.pitchM - tubes.thicknessM;
        double f2 = pow(hydraulicDiameterM() / louvre.pitchM * StrictMath.log(0.3 * re), -2.966)
                * pow(fin.pitchM / louvre.lengthM, -0.7931 * tubes.pitchM / between);
        double f3 = pow(tubes.pitchM / tubes.thicknessM, -0.0446)
                * pow(StrictMath.log(1.2 + pow(louvre.pitchM / fin.pitchM, 1.4)), -3.553)
                * pow(louvre.angleDeg, -0.477);
        return f1 * f2 * f3;
    }

    private double hydraulicDiameterM() {
        double wide = fin.pitchM - fin.thicknessM;
        double high = fin.heightM - fin.thicknessM;
        return 2 * wide * high / (wide + high);
    }

    private double thicknessShare() {
        return Math.max(THICKNESS_SHARE_MIN, fin.thicknessM / fin.pitchM);
    }

    private static double pow(double base, double exponent) {
        return StrictMath.pow(base, exponent);
    }

    private static void check(double reynolds) {
        if (!(reynolds > 0)) {
            throw new IllegalArgumentException("reynolds must be above 0 but was " + reynolds);
        }
    }
}
