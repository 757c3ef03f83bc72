package loopwright.catalog.standard;

import loopwright.catalog.basis.Limits;

/**
 * Lifting and standing, by the trade; common practice, no published source. Densities are from memory.
 *
 * @param oneLiftKg what one person lifts in comfort
 * @param liftFactor how many times its share of the filled machine a lifting point is made for
 * @param tipMinDeg tilt that a machine on its feet should stand
 * @param largeOpeningShare open share of a roof's fan area from which a cut there counts as a large opening
 * @param densities of what no part's mass tells
 */
public record CarryPractice(
        @Limits(min = 1, max = 100) double oneLiftKg,
        @Limits(min = 1, max = 20) double liftFactor,
        @Limits(min = 1, max = 60) double tipMinDeg,
        @Limits(min = 0.01, max = 1) double largeOpeningShare,
        Densities densities) {

    /** What stands in practice.yaml as delivered, for where it says nothing. */
    public static final CarryPractice USUAL =
            new CarryPractice(15, 3, 15, 0.25, new Densities(7850, 2700, 1190, 1190, 2500, 1250, 860, 1270, 8960));

    /** Densities, kg/m³. */
    public record Densities(
            double steelKgPerM3,
            double aluminiumKgPerM3,
            double acrylicKgPerM3,
            double plasticKgPerM3,
            double glassKgPerM3,
            double softTubeKgPerM3,
            double rubberTubeKgPerM3,
            double petgTubeKgPerM3,
            double copperKgPerM3) {}
}
