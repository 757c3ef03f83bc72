package loopwright.rank;

import java.util.function.Supplier;
import loopwright.fit.Layout;

/** What a search over builds keeps, and what it may leave out. */
interface Goal {

    /**
     * No build in sight is better than this in any component.
     *
     * @param priceCents not more than any price
     * @param coolantOverRoomCentiK not more than any temperature, rounded as builds are
     * @param soundMillionths not more than any sound power
     */
    record Bound(long priceCents, int coolantOverRoomCentiK, long soundMillionths, int labourMin, int days) {

        /** What is known exactly bounds itself. */
        static Bound of(Build.Outcome outcome) {
            return new Bound(
                    outcome.priceCents(),
                    outcome.coolantOverRoomCentiK(),
                    outcome.sound().millionths(),
                    outcome.labourMin(),
                    outcome.days());
        }
    }

    /**
     * Whether nothing with this bound can change what is kept.
     *
     * @param parts the layouts' {@link Layout#partsText}
     */
    boolean isHopeless(String parts, Bound bound);

    /** Whether it wants every duty, not only the fastest that keeps the noise limit. */
    boolean wantsEveryDuty();

    /** Hands over a build that keeps every limit; it is only made when it is worth looking at. */
    void offer(String parts, Build.Outcome outcome, Supplier<Build> build);
}
