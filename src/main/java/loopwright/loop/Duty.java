package loopwright.loop;

/**
 * How fast a fan or a pump is told to turn, as a share of its full speed.
 *
 * @param percent of full speed, above 0 to 100
 */
public record Duty(double percent) {

    /** Full speed. */
    public static final Duty FULL = new Duty(100);

    private static final double PERCENT = 100;

    /** Checks the range. */
    public Duty {
        if (!(percent > 0 && percent <= PERCENT)) {
            throw new IllegalArgumentException("duty must be above 0 to 100 % but was " + percent);
        }
    }

    /**
     * The share of full speed that comes of it, dimensionless: told less than its least duty, a motor turns at that.
     *
     * @param leastPercent the least duty of the fan or pump, 0 to 100
     */
    public double speedShare(double leastPercent) {
        if (!(leastPercent >= 0 && leastPercent <= PERCENT)) {
            throw new IllegalArgumentException("least duty must be 0 to 100 % but was " + leastPercent);
        }
        return Math.max(percent, leastPercent) / PERCENT;
    }
}
