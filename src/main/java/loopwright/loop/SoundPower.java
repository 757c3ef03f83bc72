package loopwright.loop;

import java.util.OptionalDouble;

/**
 * Sound as a number that can be added: 10^(L/10), counted in whole millionths.
 *
 * <p><b>Units.</b> Millionths of the power that makes 0 dB(A).
 *
 * <p><b>Valid for</b> levels from −40 to 120 dB(A); sums in any order and grouping are the same to the last bit, so a search
 * may add, and a bound may stop on a limit, without care. Sources do not keep step (incoherent).
 *
 * <p><b>Accuracy.</b> Half a millionth: 0.000003 dB at 0 dB(A), 0.02 dB at −40.
 *
 * <p><b>Source.</b> L = 10·log10 Σ10^(Li/10), by definition of the level.
 *
 * @param millionths at least 0
 */
public record SoundPower(long millionths) implements Comparable<SoundPower> {

    /** Silence: what a sum starts from. */
    public static final SoundPower NONE = new SoundPower(0);

    private static final double MILLION = 1e6;
    private static final double DB_PER_DECADE = 10;
    private static final double LEVEL_MIN_DBA = -40;
    private static final double LEVEL_MAX_DBA = 120;

    /** Checks the sign. */
    public SoundPower {
        if (millionths < 0) {
            throw new IllegalArgumentException("sound power must be at least 0 but was " + millionths);
        }
    }

    /** Returns 10^(L/10), as a plain number. */
    public static double power10(double levelDBA) {
        return StrictMath.pow(10, levelDBA / DB_PER_DECADE);
    }

    /**
     * The power of one source.
     *
     * @param levelDBA −40 to 120
     */
    public static SoundPower ofDBA(double levelDBA) {
        if (!(levelDBA >= LEVEL_MIN_DBA && levelDBA <= LEVEL_MAX_DBA)) {
            throw new IllegalArgumentException("level must be -40 to 120 dB(A) but was " + levelDBA);
        }
        return new SoundPower(Math.round(power10(levelDBA) * MILLION));
    }

    /** Both together. */
    public SoundPower plus(SoundPower other) {
        return new SoundPower(Math.addExact(millionths, other.millionths));
    }

    /** So many equal sources. */
    public SoundPower times(int sources) {
        return new SoundPower(Math.multiplyExact(millionths, sources));
    }

    /** The level, dB(A); none for silence. */
    public OptionalDouble levelDBA() {
        return millionths == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(DB_PER_DECADE * StrictMath.log10(millionths / MILLION));
    }

    @Override
    public int compareTo(SoundPower other) {
        return Long.compare(millionths, other.millionths);
    }
}
