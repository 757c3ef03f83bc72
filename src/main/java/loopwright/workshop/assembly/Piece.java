package loopwright.workshop.assembly;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loopwright.catalog.basis.Face;
import loopwright.geometry.SpaceBox;

/**
 * Something that is put in as one, and that comes out as one: all that the same screws hold.
 *
 * @param bodies its matter where it stands
 * @param reach rooms that a hand must get to once it is in: plugs, ports
 * @param screws what holds it
 * @param traits what else is to be known
 * @param carries ids of pieces that are plugged into it: they go in after it and come out before it
 */
record Piece(
        String id,
        String title,
        List<Body> bodies,
        List<SpaceBox> reach,
        List<Screws> screws,
        Traits traits,
        Set<String> carries) {

    /** Copies. */
    Piece {
        bodies = List.copyOf(bodies);
        reach = List.copyOf(reach);
        screws = List.copyOf(screws);
        carries = Set.copyOf(carries);
    }

    /**
     * A part of it.
     *
     * @param lifts the face it lifts straight off, where it is outside; empty: it leaves through the interior, with all of the piece
     *     that is inside
     * @param own screws by which it alone can come out; empty where the piece's screws hold it
     */
    record Body(String title, List<SpaceBox> solids, Optional<Face> lifts, Optional<Screws> own) {

        /** Copies. */
        Body {
            solids = List.copyOf(solids);
        }

        /** Inside, held by the piece's screws. */
        static Body inside(String title, List<SpaceBox> solids) {
            return new Body(title, solids, Optional.empty(), Optional.empty());
        }

        /** Outside, held by the piece's screws. */
        static Body outside(String title, List<SpaceBox> solids, Face face) {
            return new Body(title, solids, Optional.of(face), Optional.empty());
        }
    }

    /**
     * Screws that hold it.
     *
     * @param where from where they are driven, in words
     * @param known those whose place is known: a driver must get to each of them
     */
    record Screws(int count, String where, List<Driving.Screw> known) {

        /** Copies. */
        Screws {
            known = List.copyOf(known);
        }
    }

    /** What it is to the order. */
    enum Kind {
        /** A part. */
        PART,
        /** A lid or a trim on the outside. */
        LID,
        /** A plug that joins two parts: no matter in anybody's way. */
        PLUG,
        /** A run of rigid tube. */
        RIGID_RUN,
        /** A run of soft tube: it swings aside, so it is in nobody's way. */
        SOFT_RUN
    }

    /**
     * What else is to be known.
     *
     * @param wet whether coolant is in it
     * @param turn when a builder usually puts it in, small first; only decides between orders that are possible
     */
    record Traits(Kind kind, boolean wet, int turn) {}

    /** All of its matter. */
    List<SpaceBox> solids() {
        return bodies.stream().flatMap(b -> b.solids().stream()).toList();
    }

    /** What of it leaves through the interior, as one. */
    List<SpaceBox> inside() {
        return bodies.stream()
                .filter(b -> b.lifts().isEmpty())
                .flatMap(b -> b.solids().stream())
                .toList();
    }

    /** Whether it is a part of which nothing leaves through the interior: its panel comes off with it. */
    boolean goesOnWithPanel() {
        return traits.kind() == Kind.PART && !bodies.isEmpty() && inside().isEmpty();
    }

    /** All screws. */
    List<Screws> allScrews() {
        return Stream.concat(screws.stream(), bodies.stream().flatMap(b -> b.own().stream()))
                .collect(Collectors.toList());
    }

    /** Whether it is a run of tube. */
    boolean isRun() {
        return traits.kind() == Kind.RIGID_RUN || traits.kind() == Kind.SOFT_RUN;
    }
}
