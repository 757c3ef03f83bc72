package loopwright.rank;

import java.util.List;
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
    record Bound(long priceCents, int coolantOverRoomCentiK, long soundMillionths, int labourMin, int days) {}

    /** Whether nothing with this bound, of any of these layouts, can change what is kept. */
    boolean isHopeless(List<Layout> layouts, Bound bound);

    /** Hands over a build that keeps every limit; it is only made when it is worth looking at. */
    void offer(Layout layout, Build.Outcome outcome, Supplier<Build> build);
}
