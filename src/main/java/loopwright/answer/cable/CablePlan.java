package loopwright.answer.cable;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.part.Plug;
import loopwright.power.cable.Hole;
import loopwright.power.cable.LeadChoice;
import loopwright.power.cable.Sleeving;

/**
 * The cables of a build.
 *
 * @param feeds a line for each plug that wants one, in the order board, processor, card, drives, pump
 * @param cables the supply's cables in its own order, used or not
 * @param holes what goes through each hole
 * @param room where they lie behind the tray, and what is left over is put
 * @param straight for a card with a 16-pin plug, whether its wires can go straight far enough
 */
public record CablePlan(
        List<Feed> feeds, List<CableUse> cables, List<HoleUse> holes, Rooms room, Optional<Straight> straight) {

    /** Copies. */
    public CablePlan {
        feeds = List.copyOf(feeds);
        cables = List.copyOf(cables);
        holes = List.copyOf(holes);
    }

    /** Whether a plug is reached. */
    public enum Verdict {
        /** It is. */
        REACHES,
        /** The cable is too short. */
        TOO_SHORT,
        /** The supply has no cable left for it. */
        NO_CABLE
    }

    /**
     * A plug that wants a cable.
     *
     * @param to what it feeds
     * @param cable number of its cable in the supply's list, from 1; absent when there is none
     * @param way how it goes
     * @param wantedMm the length it wants, from the supply or from the plug before it
     * @param hasMm the length there is
     * @param cure leads that make it long enough; absent where none is needed or none does
     */
    public record Feed(
            Plug plug,
            String to,
            Optional<Integer> cable,
            Going way,
            int wantedMm,
            int hasMm,
            Verdict verdict,
            Optional<LeadChoice> cure) {

        /** What it lacks, mm; 0 where it reaches or has no cable. */
        public int lacksMm() {
            return verdict == Verdict.TOO_SHORT ? wantedMm - hasMm : 0;
        }
    }

    /**
     * A way.
     *
     * @param after what the plug before it on the same cable feeds; absent for the first
     * @param lengthHmm along the axes, hundredths of a millimetre
     * @param holes ids of the holes it goes through
     * @param open false where no open way was found and the straight distance stands in for it
     */
    public record Going(Optional<String> after, int lengthHmm, List<String> holes, boolean open) {}

    /**
     * A cable of the supply.
     *
     * @param number in the supply's list, from 1
     * @param text its plug and lengths
     * @param feeds what it feeds; none when it is not used
     * @param leftMm what is left over, the whole of one that is fixed and not used; 0 for one that stays in the box
     * @param leftL the volume of that
     * @param sleeving what sleeving it takes, where it is used
     */
    public record CableUse(
            int number,
            Plug plug,
            String text,
            boolean fixed,
            List<String> feeds,
            int leftMm,
            double leftL,
            Optional<Sleeving> sleeving) {

        /** Whether it is not in the case at all. */
        public boolean staysInTheBox() {
            return !fixed && feeds.isEmpty();
        }
    }

    /**
     * A hole.
     *
     * @param cables numbers of the cables that go through it
     * @param fillShare how much of its free opening their bundles take
     * @param crowded whether that is more than is usual
     */
    public record HoleUse(Hole hole, List<Integer> cables, double fillShare, boolean crowded) {}

    /**
     * Room for cables.
     *
     * @param behindTrayHmm depth behind the tray; absent when the case does not say
     * @param flatOnly whether it is so little that only flat cables lie there
     * @param tooThick numbers of the cables through holes whose bundles are thicker than that
     * @param parking free litres of each box where cable can be put away
     */
    public record Rooms(
            Optional<Integer> behindTrayHmm, boolean flatOnly, List<Integer> tooThick, List<Parking> parking) {

        /** Free litres of all boxes. */
        public double freeL() {
            return parking.stream().mapToDouble(Parking::freeL).sum();
        }
    }

    /** A box where cable can be put away, and what is free of it. */
    public record Parking(String title, double freeL) {}

    /** How a 16-pin plug's wires can go. */
    public enum Straightness {
        /** Straight enough, and the bend has its room. */
        OK,
        /** Straight enough, but not for the plug besides. */
        TIGHT,
        /** They would have to bend too soon. */
        NO
    }

    /**
     * The room over a card's 16-pin plug, hundredths of a millimetre.
     *
     * @param freeHmm what is free over the card's top edge
     * @param straightHmm what the wires want before any bend
     * @param plugHmm what the plug takes besides
     */
    public record Straight(int freeHmm, int straightHmm, int plugHmm, Straightness verdict) {}

    /** Litres that are left over in all. */
    public double leftL() {
        return cables.stream().mapToDouble(CableUse::leftL).sum();
    }

    /** What the extension leads cost, cents. */
    public long leadsCents() {
        return feeds.stream()
                .flatMap(f -> f.cure().stream())
                .mapToLong(LeadChoice::priceCents)
                .sum();
    }
}
