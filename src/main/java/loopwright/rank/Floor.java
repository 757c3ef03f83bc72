package loopwright.rank;

import java.util.List;

/**
 * The least price, sound and lead time of some parts on a mount, and the most that any of them can do.
 *
 * @param alone what they can do while the pressure inside does not help
 * @param helped what they can do with all the help there is
 */
record Floor(long cents, long soundMillionths, int leadDays, Blowing.Reach alone, Blowing.Reach helped) {

    static Floor of(Blowing one) {
        return new Floor(
                one.fitting().cents(), one.sound().millionths(), one.fitting().leadDays(), one.alone(), one.helped());
    }

    static Floor of(List<Blowing> all) {
        Floor out = of(all.get(0));
        for (Blowing blowing : all) {
            out = out.with(of(blowing));
        }
        return out;
    }

    /** The better of both in each figure. */
    private Floor with(Floor one) {
        return new Floor(
                Math.min(cents, one.cents),
                Math.min(soundMillionths, one.soundMillionths),
                Math.min(leadDays, one.leadDays),
                most(alone, one.alone),
                most(helped, one.helped));
    }

    /** The same price and lead, but as quiet as another. */
    Floor asQuietAs(Floor other) {
        return new Floor(cents, Math.min(soundMillionths, other.soundMillionths), leadDays, alone, helped);
    }

    private static Blowing.Reach most(Blowing.Reach one, Blowing.Reach other) {
        return new Blowing.Reach(
                Math.max(one.airWPerK(), other.airWPerK()), Math.max(one.conductanceWPerK(), other.conductanceWPerK()));
    }
}
