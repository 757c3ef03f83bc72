package loopwright.catalog.standard;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loopwright.catalog.basis.Limits;

/**
 * How the workshop's own time goes: what stages take, what has to wait, how far hours spread, what an offer says.
 *
 * <p>Common practice, no published source.
 *
 * @param dayStartsH the hour at which a working day starts
 * @param assembly how the minutes of a build without any mod divide among its stages
 * @param mod how a mod's minutes at the case divide
 * @param paint how a painted part's minutes divide
 * @param spreads how far the minutes of a stage may run off what is planned
 */
public record Workshop(
        @Limits(min = 0, max = 23) int dayStartsH,
        List<Share> assembly,
        List<Share> mod,
        List<Share> paint,
        Waits waits,
        List<SpreadOf> spreads,
        Offer offer) {

    /** Per cent in a whole. */
    private static final int WHOLE_PERCENT = 100;

    /** Copies; refuses shares that are not a whole, and a stage without a spread. */
    public Workshop {
        assembly = whole("assembly", assembly);
        mod = whole("mod", mod);
        paint = whole("paint", paint);
        spreads = List.copyOf(spreads);
        Set<WorkStage> spread = new HashSet<>();
        spreads.forEach(s -> spread.add(s.stage()));
        for (List<Share> shares : List.of(assembly, mod, paint)) {
            for (Share share : shares) {
                if (!spread.contains(share.stage())) {
                    throw new IllegalArgumentException("a spread for every stage that has a share, "
                            + share.stage().name().toLowerCase(java.util.Locale.ROOT) + " too");
                }
            }
        }
    }

    private static List<Share> whole(String name, List<Share> shares) {
        int sum = shares.stream().mapToInt(Share::sharePercent).sum();
        if (sum != WHOLE_PERCENT) {
            throw new IllegalArgumentException(name + " shares that sum to 100");
        }
        return List.copyOf(shares);
    }

    /** The part of some minutes that a stage takes. */
    public record Share(
            WorkStage stage, @Limits(min = 0, max = 100) int sharePercent) {}

    /**
     * Least waits after a stage, through nights and days off; those of paint stand with the paint ({@link Finishing}).
     *
     * @param airTestMin with the pump's air held
     * @param leakWatchH with the pump alone running
     * @param burnInH at full load
     */
    public record Waits(
            @Limits(min = 0, max = 600) int airTestMin,
            @Limits(min = 0, max = 200) int leakWatchH,
            @Limits(min = 0, max = 200) int burnInH) {}

    /**
     * How far the minutes of a stage may run off.
     *
     * @param lowPercent of the planned minutes, when all goes well
     * @param highPercent of the planned minutes, when it does not
     */
    public record SpreadOf(
            WorkStage stage,
            @Limits(min = 1, max = 100) int lowPercent,
            @Limits(min = 100, max = 500) int highPercent) {}

    /**
     * What an offer says where a brief does not.
     *
     * @param orderBufferDays by which a part should lie there before it is needed
     * @param spreadFactor how many of the job's spreads are quoted over what is likely
     * @param depositLabourPercent of the labour, beside all parts
     * @param validDays for which the offer stands
     */
    public record Offer(
            @Limits(min = 0, max = 60) int orderBufferDays,
            @Limits(min = 0, max = 5) double spreadFactor,
            @Limits(min = 0, max = 100) int depositLabourPercent,
            @Limits(min = 1, max = 365) int validDays,
            Contingency contingency) {}

    /** Per cent that the trade adds for what nobody can know: a case known, a case new, cuts that show or paint. */
    public record Contingency(
            @Limits(min = 0, max = 100) int knownCasePercent,
            @Limits(min = 0, max = 100) int newCasePercent,
            @Limits(min = 0, max = 100) int paintOrVisibleCutsPercent) {}

    /** The spread of a stage. */
    public SpreadOf spread(WorkStage stage) {
        return spreads.stream()
                .filter(s -> s.stage() == stage)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no spread for " + stage));
    }
}
