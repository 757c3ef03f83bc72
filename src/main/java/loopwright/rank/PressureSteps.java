package loopwright.rank;

/**
 * Pressures inside a case at which mounts are worked out, so that the true one lies between two of them.
 *
 * <p>Steps are the same both ways and go with the square of the duty, as fans' pressures do.
 */
final class PressureSteps {

    /** Pressures at full duty, Pa: closer where most cases lie. The last is above any fan's; only bounds depend on them. */
    private static final double[] FULL_DUTY_PA = {
        0.15, 0.3, 0.5, 0.75, 1, 1.4, 1.8, 2.3, 3, 4, 5.5, 7.5, 10, 14, 20, 30, 50, 100, 1000
    };

    private static final double PERCENT = 100;

    private PressureSteps() {}

    /** How many steps there are, from the most below the room's pressure to the most above. */
    static int count() {
        return 2 * FULL_DUTY_PA.length + 1;
    }

    /** The step at the room's own pressure. */
    static int middle() {
        return FULL_DUTY_PA.length;
    }

    /** The step as far on the other side of the room's pressure. */
    static int mirrored(int step) {
        return count() - 1 - step;
    }

    /** The gauge pressure of a step, Pa. */
    static double pascal(int step, int dutyPercent) {
        double share = dutyPercent / PERCENT;
        int away = step - middle();
        return away == 0 ? 0 : Math.copySign(FULL_DUTY_PA[Math.abs(away) - 1] * share * share, away);
    }
}
