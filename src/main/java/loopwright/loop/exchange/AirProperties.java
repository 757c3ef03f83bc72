package loopwright.loop.exchange;

/**
 * What the core has to know of the air; SI.
 *
 * @param densityKgPerM3 above 0
 * @param viscosityPaS above 0
 * @param conductivityWPerMK above 0
 * @param heatCapacityJPerKgK above 0
 */
record AirProperties(
        double densityKgPerM3, double viscosityPaS, double conductivityWPerMK, double heatCapacityJPerKgK) {

    /** Refuses what is no air. */
    AirProperties {
        boolean sound = densityKgPerM3 > 0 && viscosityPaS > 0 && conductivityWPerMK > 0 && heatCapacityJPerKgK > 0;
        if (!sound) {
            throw new IllegalArgumentException("air must have properties above 0 but has " + densityKgPerM3 + " kg/m3, "
                    + viscosityPaS + " Pa s, " + conductivityWPerMK + " W/(m K), " + heatCapacityJPerKgK + " J/(kg K)");
        }
    }

    /** Dimensionless. */
    double prandtl() {
        return viscosityPaS * heatCapacityJPerKgK / conductivityWPerMK;
    }

    /** m²/s. */
    double kinematicViscosityM2PerS() {
        return viscosityPaS / densityKgPerM3;
    }
}
