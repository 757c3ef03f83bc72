package loopwright.workshop.assembly;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.standard.Fastening.Driver;
import loopwright.geometry.SpaceBox;

/**
 * What must be free before something can come out, and so when it goes in.
 *
 * @param what in words
 * @param ways of which one has to be free
 * @param withSoft the same, with what swings aside
 */
record Need(Kind kind, String what, Ways ways, Ways withSoft) {

    /** Kinds of needs. */
    enum Kind {
        /** A way for the thing itself. */
        WAY("way in"),
        /** Room for a hand at a plug or port. */
        HAND("hand"),
        /** A driver at a screw. */
        DRIVER("driver");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** In a word. */
        String word() {
            return word;
        }
    }

    /**
     * Whose needs they are.
     *
     * @param own bit of the piece: it never blocks itself
     * @param carriers bits of what it is plugged into: always in when it is, so a way through one of them is none
     */
    record Holders(long own, long carriers) {}

    /**
     * Makes needs.
     *
     * @param finder of ways among the pieces
     * @param drivers what screws are driven with
     * @param soft bits of what swings aside
     */
    record Maker(WayFinder finder, List<Driver> drivers, long soft) {

        /** Copies. */
        Maker {
            drivers = List.copyOf(drivers);
        }

        /**
         * The needs of a piece.
         *
         * @param holders whose it is
         */
        List<Need> of(Piece piece, Holders holders) {
            List<Need> out = new ArrayList<>();
            if (!piece.isRun() && !piece.inside().isEmpty()) {
                add(out, Kind.WAY, piece.title(), finder.of(piece.inside()), holders);
            }
            for (Piece.Body body : piece.bodies()) {
                body.lifts().ifPresent(f -> add(out, Kind.WAY, body.title(), finder.off(body.solids(), f), holders));
            }
            for (SpaceBox room : piece.reach()) {
                add(out, Kind.HAND, room.what(), finder.of(List.of(room)), holders);
            }
            piece.screws().forEach(s -> screws(out, s, holders));
            return List.copyOf(out);
        }

        /** The needs of a body that has screws of its own; the rest of its piece stays where it is. */
        List<Need> of(Piece piece, Piece.Body body, Holders holders) {
            List<SpaceBox> rest = piece.bodies().stream()
                    .filter(b -> !b.equals(body))
                    .flatMap(b -> b.solids().stream())
                    .toList();
            Maker around = new Maker(finder.with(rest), drivers, soft);
            List<Need> out = new ArrayList<>();
            around.add(out, Kind.WAY, body.title(), around.finder.of(body.solids()), holders);
            body.own().ifPresent(s -> around.screws(out, s, holders));
            return List.copyOf(out);
        }

        private void screws(List<Need> out, Piece.Screws screws, Holders holders) {
            if (drivers.isEmpty()) {
                return;
            }
            for (int k = 0; k < screws.known().size(); k++) {
                Ways any = Ways.NONE;
                for (Driving driving : Driving.of(screws.known().get(k), drivers, finder.hall())) {
                    any = any.or(finder.of(driving));
                }
                add(out, Kind.DRIVER, "screw " + (k + 1) + " of " + screws.count(), any, holders);
            }
        }

        private void add(List<Need> out, Kind kind, String what, Ways ways, Holders holders) {
            Ways clear = ways.withNone(holders.carriers()).without(holders.own());
            out.add(new Need(kind, what, clear.without(soft), clear));
        }
    }
}
