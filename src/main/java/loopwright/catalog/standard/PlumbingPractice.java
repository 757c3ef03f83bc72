package loopwright.catalog.standard;

import loopwright.catalog.basis.Limits;

/**
 * The trade's habits with tube, filling and draining; common practice, no published source.
 *
 * @param tube what a run keeps, and what its turns count as
 * @param tank what filling asks
 * @param drain what draining asks
 * @param coolant how much of it is ordered
 */
public record PlumbingPractice(Runs tube, Tank tank, Drain drain, Ordered coolant) {

    /** What is meant where a practice file says nothing of plumbing: the same figures as the workshop's own file. */
    public static final PlumbingPractice USUAL = new PlumbingPractice(
            new Runs(10, 20, 0, 480, 140, 150, 10),
            new Tank(60, 80, 10, 15, 1000),
            new Drain(30, 60, 15),
            new Ordered(1.3, 0.5));

    /**
     * Runs.
     *
     * @param fromFanMm free between tube and a fan's open faces
     * @param rigidStubMm straight rigid tube between a fitting and a bend
     * @param softStubMm the same of soft tube
     * @param elbowAsTubeMm how much tube a right-angle elbow counts as when runs are compared
     * @param straightAsTubeMm how much a straight fitting counts as
     * @param bendAsTubeMm how much a bend counts as
     * @param lengthStepMm lengths are rounded up to this
     */
    public record Runs(
            @Limits(min = 0, max = 50) int fromFanMm,
            @Limits(min = 0, max = 60) int rigidStubMm,
            @Limits(min = 0, max = 60) int softStubMm,
            @Limits(min = 0, max = 3000) int elbowAsTubeMm,
            @Limits(min = 0, max = 3000) int straightAsTubeMm,
            @Limits(min = 0, max = 3000) int bendAsTubeMm,
            @Limits(min = 1, max = 100) int lengthStepMm) {}

    /**
     * Filling.
     *
     * @param capFreeMinMm free over the cap for a small funnel
     * @param capFreeGoodMm free over the cap for a funnel that needs no care
     * @param airMinPercent air that is left in the tank, at least
     * @param airMaxPercent and at most
     * @param massMaxG of a full tank on two screws
     */
    public record Tank(
            @Limits(min = 0, max = 300) int capFreeMinMm,
            @Limits(min = 0, max = 300) int capFreeGoodMm,
            @Limits(min = 0, max = 50) int airMinPercent,
            @Limits(min = 0, max = 50) int airMaxPercent,
            @Limits(min = 100, max = 5000) int massMaxG) {}

    /**
     * Draining.
     *
     * @param frontMm free in front of the valve
     * @param belowMm free below it, to a bottle
     * @param portReachMm how far a part may reach past its port before air or coolant stays there
     */
    public record Drain(
            @Limits(min = 0, max = 100) int frontMm,
            @Limits(min = 0, max = 300) int belowMm,
            @Limits(min = 0, max = 100) int portReachMm) {}

    /**
     * What is ordered.
     *
     * @param timesLoop how often the loop's volume
     * @param flushL for the first flush of new radiators
     */
    public record Ordered(
            @Limits(min = 1, max = 5) double timesLoop,
            @Limits(min = 0, max = 10) double flushL) {}
}
