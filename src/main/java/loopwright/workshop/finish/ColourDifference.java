package loopwright.workshop.finish;

import loopwright.catalog.brief.Look.Lab;

/**
 * How different two colours look: CIEDE2000, with all three weights 1.
 *
 * <p><b>Units.</b> None; about 1 is just visible side by side. Angles are in degrees, as published.
 *
 * <p><b>Valid for</b> any L*a*b* of one illuminant and observer; made for small differences (below about 5). Light, texture
 * and gloss are not in it.
 *
 * <p><b>Accuracy.</b> The 34 published pairs to 1e-4 (checked in ColourDifferenceTest).
 *
 * <p><b>Source.</b> ISO/CIE 11664-6; steps and equation numbers: G. Sharma, W. Wu, E. N. Dalal, "The CIEDE2000 Color-Difference
 * Formula: Implementation Notes, Supplementary Test Data, and Mathematical Observations", Color Research and Application
 * 30(1), 21-30, 2005.
 */
public final class ColourDifference {

    /** 25 to the seventh power, of equations 4 and 17. */
    private static final double POW7_25 = 6_103_515_625.0;

    private static final double FULL_TURN_DEG = 360;
    private static final double HALF_TURN_DEG = 180;

    private ColourDifference() {}

    /** A colour with a* stretched for greys: equations 2 to 7. */
    private record Stretched(double lightness, double chroma, double hueDeg) {

        static Stretched of(Lab lab, double stretch) {
            double a = stretch * lab.greenRed();
            double b = lab.blueYellow();
            return new Stretched(lab.lightness(), StrictMath.hypot(a, b), hueDeg(a, b));
        }

        /** In [0, 360); 0 for a grey. */
        private static double hueDeg(double a, double b) {
            double deg = StrictMath.toDegrees(StrictMath.atan2(b, a));
            return deg < 0 ? deg + FULL_TURN_DEG : deg;
        }
    }

    /** CIEDE2000 of two colours, 0 or more. */
    public static double of(Lab first, Lab second) {
        double meanChroma = (StrictMath.hypot(first.greenRed(), first.blueYellow())
                        + StrictMath.hypot(second.greenRed(), second.blueYellow()))
                / 2;
        double stretch = 1 + 0.5 * (1 - chromaShare(meanChroma)); // equation 4
        Stretched one = Stretched.of(first, stretch);
        Stretched other = Stretched.of(second, stretch);
        double lightness = other.lightness() - one.lightness(); // equation 8
        double chroma = other.chroma() - one.chroma(); // equation 9
        double hue = 2 * StrictMath.sqrt(one.chroma() * other.chroma()) * sin(turnDeg(one, other) / 2); // equation 11
        double meanLightness = (one.lightness() + other.lightness()) / 2; // equation 12
        double meanPrime = (one.chroma() + other.chroma()) / 2; // equation 13
        double meanHueDeg = meanHueDeg(one, other);
        double weightL =
                1 + 0.015 * sq(meanLightness - 50) / StrictMath.sqrt(20 + sq(meanLightness - 50)); // equation 18
        double weightC = 1 + 0.045 * meanPrime; // equation 19
        double weightH = 1 + 0.015 * meanPrime * hueFactor(meanHueDeg); // equation 20
        double partL = lightness / weightL;
        double partC = chroma / weightC;
        double partH = hue / weightH;
        double sum = sq(partL) + sq(partC) + sq(partH) + rotation(meanPrime, meanHueDeg) * partC * partH;
        return StrictMath.sqrt(Math.max(0, sum)); // equation 22
    }

    /** Square root of C^7/(C^7 + 25^7). */
    private static double chromaShare(double chroma) {
        double pow7 = StrictMath.pow(chroma, 7);
        return StrictMath.sqrt(pow7 / (pow7 + POW7_25));
    }

    /** Equation 10: from one hue to the other the short way round; 0 where one is grey. */
    private static double turnDeg(Stretched one, Stretched other) {
        if (isGrey(one, other)) {
            return 0;
        }
        double turn = other.hueDeg() - one.hueDeg();
        if (turn > HALF_TURN_DEG) {
            return turn - FULL_TURN_DEG;
        }
        return turn < -HALF_TURN_DEG ? turn + FULL_TURN_DEG : turn;
    }

    /** Equation 14: the middle of the short way round; the sum where one is grey. */
    private static double meanHueDeg(Stretched one, Stretched other) {
        double sum = one.hueDeg() + other.hueDeg();
        if (isGrey(one, other)) {
            return sum;
        }
        if (Math.abs(one.hueDeg() - other.hueDeg()) <= HALF_TURN_DEG) {
            return sum / 2;
        }
        return sum < FULL_TURN_DEG ? (sum + FULL_TURN_DEG) / 2 : (sum - FULL_TURN_DEG) / 2;
    }

    /** Whether a colour has no hue: exactly, as the formula has it. */
    private static boolean isGrey(Stretched one, Stretched other) {
        return !(one.chroma() * other.chroma() > 0);
    }

    /** Equation 15. */
    private static double hueFactor(double hueDeg) {
        return 1
                - 0.17 * cos(hueDeg - 30)
                + 0.24 * cos(2 * hueDeg)
                + 0.32 * cos(3 * hueDeg + 6)
                - 0.20 * cos(4 * hueDeg - 63);
    }

    /** Equations 16, 17 and 21. */
    private static double rotation(double meanChroma, double hueDeg) {
        double thetaDeg = 30 * StrictMath.exp(-sq((hueDeg - 275) / 25));
        return -2 * chromaShare(meanChroma) * sin(2 * thetaDeg);
    }

    private static double sq(double x) {
        return x * x;
    }

    private static double sin(double deg) {
        return StrictMath.sin(StrictMath.toRadians(deg));
    }

    private static double cos(double deg) {
        return StrictMath.cos(StrictMath.toRadians(deg));
    }
}
