package loopwright.loop.air;

/**
 * A radiator's core as a branch's air meets it, and the air that gets round it.
 *
 * @param areaM2 face that air passes, without what a frame or panel masks
 * @param leakM3PerSPerSqrtPa flow round the radiator at 1 Pa across it, m³/(s·√Pa); 0 where a gasket seals it
 */
public record CoreFace(Core core, double areaM2, double leakM3PerSPerSqrtPa) {

    /** Share of an opening's area that its jet fills, dimensionless: sharp edges, any text on orifices. */
    public static final double DISCHARGE = 0.6;

    /** Checks the ranges. */
    public CoreFace {
        if (!(areaM2 > 0 && leakM3PerSPerSqrtPa >= 0)) {
            throw new IllegalArgumentException("a core's face must be above 0 m² and its leak at least 0 but were "
                    + areaM2 + " and " + leakM3PerSPerSqrtPa);
        }
    }

    /** The leak of a gap of some area: orifice flow, q = 0.6·A·√(2Δp/ρ). */
    public static double leakOf(double gapAreaM2, double densityKgPerM3) {
        return DISCHARGE * gapAreaM2 * Math.sqrt(2 / densityKgPerM3);
    }

    double lossPa(double coreFlowM3PerS) {
        return core.lossPa(coreFlowM3PerS / areaM2);
    }

    double slopePaSPerM3(double coreFlowM3PerS) {
        return core.slopePaSPerM(coreFlowM3PerS / areaM2) / areaM2;
    }

    /** Air through the core and round it, m³/s. */
    double wholeM3PerS(double coreFlowM3PerS) {
        return wholeM3PerS(coreFlowM3PerS, lossPa(coreFlowM3PerS));
    }

    /** The same where the core's loss at that flow is known. */
    double wholeM3PerS(double coreFlowM3PerS, double lossPa) {
        return coreFlowM3PerS + leakM3PerSPerSqrtPa * Math.sqrt(lossPa);
    }

    /** How fast that rises with what passes the core, dimensionless. */
    double wholeSlope(double coreFlowM3PerS) {
        return wholeSlope(lossPa(coreFlowM3PerS), slopePaSPerM3(coreFlowM3PerS));
    }

    /** The same where the core's loss at that flow and the loss's slope are known. */
    double wholeSlope(double lossPa, double slopePaSPerM3) {
        return lossPa > 0 ? 1 + leakM3PerSPerSqrtPa * slopePaSPerM3 / (2 * Math.sqrt(lossPa)) : 1;
    }
}
