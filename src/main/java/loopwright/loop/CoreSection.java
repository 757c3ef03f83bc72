package loopwright.loop;

import loopwright.catalog.part.Radiator;
import loopwright.loop.exchange.SectionFace;

/**
 * One fan's section of a radiator's core: what it resists and what it conducts, against the speed of the air on its face.
 *
 * <p><b>Units.</b> Core depth in mm, fins per inch, face speed in m/s, flow in m³/h.
 *
 * <p><b>Valid for</b> cores 10 to 70 mm deep, 8 to 22 fins per inch, face speeds to about 3 m/s, coolant at 2 L/min and
 * more (at 1 L/min some 7 % less). The temperature difference is coolant mean minus incoming air.
 *
 * <p><b>Accuracy.</b> Correlations of such cores scatter by ±15 %; this one is no better.
 *
 * <p><b>Source.</b> Trade practice; constants from memory, tuned to usual bench values.
 */
final class CoreSection {

    /** Fin density the constants are for, per inch; trade practice. */
    private static final double FINS_PER_INCH_REF = 12;

    /** Resistance a mm of core: linear part, Pa/mm at 1 m/s; trade practice, from memory. */
    private static final double LINEAR_PA_PER_MM = 0.22;

    /** Resistance a mm of core: quadratic part, Pa/mm at 1 m/s; trade practice, from memory. */
    private static final double QUADRATIC_PA_PER_MM = 0.16;

    /** Exponent of fin density in the resistance, dimensionless; trade practice, from memory. */
    private static final double RESISTANCE_FIN_EXPONENT = 1.5;

    /** Transfer units of a 20 mm core with 12 fins per inch at 1 m/s, dimensionless; trade practice, from memory. */
    private static final double TRANSFER_UNITS_REF = 0.66;

    /** Depth those transfer units are for, mm. */
    private static final double DEPTH_REF_MM = 20;

    /** Exponent of depth and of fin density in the transfer units, dimensionless; trade practice, from memory. */
    private static final double TRANSFER_EXPONENT = 0.8;

    /** Heat capacity of air flow, W/K for each m³/h: 1.2 kg/m³ × 1005 J/(kg·K) / 3600 s/h. */
    private static final double AIR_W_PER_K_PER_M3_PER_H = 0.335;

    private static final double SECONDS_PER_H = 3600;

    private final double faceAreaM2;
    private final double resistanceScaleMm;
    private final double transferUnitsAt1MPerS;

    CoreSection(Radiator radiator) {
        double depthMm = radiator.core().depthMm();
        double fins = radiator.core().finsPerInch() / FINS_PER_INCH_REF;
        faceAreaM2 = SectionFace.areaM2(radiator.pattern().sizeMm());
        resistanceScaleMm = depthMm * StrictMath.pow(fins, RESISTANCE_FIN_EXPONENT);
        transferUnitsAt1MPerS = TRANSFER_UNITS_REF * StrictMath.pow(depthMm / DEPTH_REF_MM * fins, TRANSFER_EXPONENT);
    }

    /** Speed of the air on the face, m/s. */
    double faceSpeedMPerS(double flowM3PerH) {
        return flowM3PerH / (SECONDS_PER_H * faceAreaM2);
    }

    /** Pressure it takes to drive air through the core, Pa. */
    double resistancePa(double faceSpeedMPerS) {
        return resistanceScaleMm * faceSpeedMPerS * (LINEAR_PA_PER_MM + QUADRATIC_PA_PER_MM * faceSpeedMPerS);
    }

    /**
     * What the section conducts at a flow, W/K: effectiveness × heat capacity of the flow.
     *
     * <p>It rises with flow: with NTU = c·v^−½ its slope has the sign of e^NTU − 1 − NTU/2, which is never negative.
     *
     * @param flowM3PerH at least 0
     */
    double conductanceWPerK(double flowM3PerH) {
        if (flowM3PerH <= 0) {
            return 0;
        }
        double transferUnits = transferUnitsAt1MPerS / Math.sqrt(faceSpeedMPerS(flowM3PerH));
        double effectiveness = -StrictMath.expm1(-transferUnits);
        return AIR_W_PER_K_PER_M3_PER_H * effectiveness * flowM3PerH;
    }
}
