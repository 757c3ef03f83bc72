package loopwright.workshop.assembly;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.basis.Face;
import loopwright.catalog.standard.Fastening.Driver;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.SpaceBox.Reach;
import loopwright.plumbing.route.Where;
import loopwright.quantity.Dimension;
import loopwright.workshop.assembly.Piece.Body;
import loopwright.workshop.assembly.Piece.Kind;
import loopwright.workshop.assembly.Piece.Screws;

/** Pieces, halls and drivers for small cases. */
final class Pieces {

    private Pieces() {}

    static SpaceBox box(int x0, int x1, int y0, int y1, int z0, int z1) {
        return new SpaceBox("box", false, 0, new Reach(x0, x1), new Reach(y0, y1), new Reach(z0, z1));
    }

    static Hall hall(Set<Face> open, int size, SpaceBox... builtIn) {
        Reach whole = new Reach(0, size);
        return new Hall(whole, whole, whole, open, List.of(builtIn));
    }

    /** A dry part inside, without screws. */
    static Piece part(String id, SpaceBox... boxes) {
        return made(id, new Piece.Traits(Kind.PART, false, 0), List.of(Body.inside(id, List.of(boxes))));
    }

    /** Anything. */
    static Piece made(String id, Piece.Traits traits, List<Body> bodies) {
        return new Piece(id, id, bodies, List.of(), List.of(), traits, Set.of());
    }

    static Piece wet(Piece of) {
        return with(of, new Piece.Traits(of.traits().kind(), true, of.traits().turn()));
    }

    static Piece with(Piece of, Piece.Traits traits) {
        return new Piece(of.id(), of.title(), of.bodies(), of.reach(), of.screws(), traits, of.carries());
    }

    static Piece turn(Piece of, int turn) {
        return with(of, new Piece.Traits(of.traits().kind(), of.traits().wet(), turn));
    }

    static Piece reaching(Piece of, SpaceBox... rooms) {
        return new Piece(of.id(), of.title(), of.bodies(), List.of(rooms), of.screws(), of.traits(), of.carries());
    }

    static Piece carrying(Piece of, String... ids) {
        return new Piece(of.id(), of.title(), of.bodies(), of.reach(), of.screws(), of.traits(), Set.of(ids));
    }

    static Piece screwed(Piece of, Driving.Screw... screws) {
        List<Screws> set = List.of(new Screws(screws.length, "somewhere", List.of(screws)));
        return new Piece(of.id(), of.title(), of.bodies(), of.reach(), set, of.traits(), of.carries());
    }

    static Driving.Screw screw(int x, int y, int z, Face away, int length) {
        return new Driving.Screw(new Where(x, y, z), away, length);
    }

    static Driver driver(int shaft, int shaftAcross, int hand, int handAcross) {
        return new Driver("d", "driver", hmm(shaft), hmm(shaftAcross), hmm(hand), hmm(handAcross));
    }

    private static Dimension hmm(int value) {
        return Dimension.ofHmm(value);
    }

    /** A lid on the roof. */
    static Piece lid(String id, SpaceBox... boxes) {
        Body body = Body.outside(id, List.of(boxes), Face.ROOF);
        return made(id, new Piece.Traits(Kind.LID, false, 0), List.of(body));
    }

    /** A layer with screws of its own. */
    static Body layer(String title, SpaceBox solid, Driving.Screw... screws) {
        return new Body(
                title,
                List.of(solid),
                Optional.empty(),
                Optional.of(new Screws(screws.length, "from inside", List.of(screws))));
    }
}
