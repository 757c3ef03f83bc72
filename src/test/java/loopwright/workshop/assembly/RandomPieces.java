package loopwright.workshop.assembly;

import static loopwright.workshop.assembly.Pieces.box;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import loopwright.catalog.basis.Face;
import loopwright.geometry.SpaceBox;
import loopwright.plumbing.route.Where;
import loopwright.workshop.assembly.Piece.Body;
import loopwright.workshop.assembly.Piece.Kind;
import loopwright.workshop.assembly.Piece.Screws;

/** Five small pieces, none through another: parts with screws, parts with something on the roof, lids and plugs. */
final class RandomPieces {

    /** Cells of the chassis along each axis; a cell is two hundredths wide. */
    static final int CELLS = 5;

    private static final int PIECES = 5;
    private static final List<Face> FACES = List.of(Face.values());

    private final SplittableRandom dice;
    private final Set<BruteMachine.Cell> used = BruteMachine.cells(List.of(lip()));

    RandomPieces(SplittableRandom dice) {
        this.dice = dice;
    }

    /** A lip that never moves. */
    static SpaceBox lip() {
        return cells(0, 1, 0, CELLS, 0, 1);
    }

    private static SpaceBox cells(int x0, int x1, int y0, int y1, int z0, int z1) {
        return box(2 * x0, 2 * x1, 2 * y0, 2 * y1, 2 * z0, 2 * z1);
    }

    List<Piece> pieces() {
        List<Piece> out = new ArrayList<>();
        while (out.size() < PIECES) {
            int number = out.size();
            Optional<Piece> one = dice.nextInt(6) == 0 ? lidOrPlug(number) : part(number);
            one.ifPresent(out::add);
        }
        return out;
    }

    private boolean takes(List<SpaceBox> boxes) {
        Set<BruteMachine.Cell> its = BruteMachine.cells(boxes);
        if (its.stream().anyMatch(used::contains)) {
            return false;
        }
        used.addAll(its);
        return true;
    }

    private Optional<Piece> part(int number) {
        List<SpaceBox> inside = new ArrayList<>(List.of(bar()));
        if (dice.nextBoolean()) {
            inside.add(bar());
        }
        List<SpaceBox> outside = dice.nextInt(4) == 0 ? List.of(plate(CELLS)) : List.of();
        List<SpaceBox> all = new ArrayList<>(inside);
        all.addAll(outside);
        if (!takes(all)) {
            return Optional.empty();
        }
        List<Body> bodies = new ArrayList<>(List.of(Body.inside("inside", inside)));
        outside.forEach(o -> bodies.add(Body.outside("outside", List.of(o), Face.ROOF)));
        List<Driving.Screw> screws = new ArrayList<>();
        for (int k = dice.nextInt(3); k > 0; k--) {
            screws.add(screw(all.get(dice.nextInt(all.size()))));
        }
        return Optional.of(piece(number, Kind.PART, bodies, List.of(), screws));
    }

    private Optional<Piece> lidOrPlug(int number) {
        if (dice.nextBoolean()) {
            SpaceBox plate = plate(CELLS + 1);
            return takes(List.of(plate))
                    ? Optional.of(piece(
                            number,
                            Kind.LID,
                            List.of(Body.outside("lid", List.of(plate), Face.ROOF)),
                            List.of(),
                            List.of()))
                    : Optional.empty();
        }
        int x = dice.nextInt(CELLS);
        int y = dice.nextInt(CELLS);
        int z = dice.nextInt(CELLS);
        SpaceBox room = cells(x, x + 1, y, y + 1, z, z + 1);
        return takes(List.of(room))
                ? Optional.of(piece(number, Kind.PLUG, List.of(), List.of(room), List.of()))
                : Optional.empty();
    }

    /** Now and then it is plugged into the one before. */
    private Piece piece(int number, Kind kind, List<Body> bodies, List<SpaceBox> reach, List<Driving.Screw> screws) {
        List<Screws> set = screws.isEmpty() ? List.of() : List.of(new Screws(screws.size(), "somewhere", screws));
        Set<String> carries = new HashSet<>();
        for (int later = number + 1; later < PIECES; later++) {
            if (dice.nextInt(8) == 0) {
                carries.add("p" + later);
            }
        }
        return new Piece(
                "p" + number,
                "p" + number,
                bodies,
                reach,
                set,
                new Piece.Traits(kind, dice.nextInt(3) == 0, dice.nextInt(4)),
                carries);
    }

    private SpaceBox plate(int z) {
        int x = dice.nextInt(CELLS - 1);
        int y = dice.nextInt(CELLS - 1);
        return cells(x, x + 2, y, y + 1 + dice.nextInt(CELLS - y), z, z + 1);
    }

    /** A bar across the whole depth half of the time: then nothing gives way to the front. */
    private SpaceBox bar() {
        int x = dice.nextInt(CELLS);
        int y = dice.nextInt(CELLS);
        int z = dice.nextInt(CELLS);
        return dice.nextBoolean()
                ? cells(x, x + 1, 0, CELLS, z, z + 1)
                : cells(x, x + 1, y, y + 1 + dice.nextInt(CELLS - y), z, Math.min(CELLS, z + 2));
    }

    /** In the middle of a cell's face, on a box's face; outside, on top. */
    private Driving.Screw screw(SpaceBox on) {
        boolean outside = on.z().from() >= 2 * CELLS;
        Face away = outside ? Face.ROOF : FACES.get(dice.nextInt(FACES.size()));
        int x = odd(on.x());
        int y = odd(on.y());
        int z = odd(on.z());
        Where head = new Where(x, y, z);
        SpaceBox.Reach depth = on.along(away.normal());
        return new Driving.Screw(
                head.with(away.normal(), away.isHigh() ? depth.to() : depth.from()), away, 2 * dice.nextInt(2));
    }

    private int odd(SpaceBox.Reach reach) {
        return reach.from() + 1 + 2 * dice.nextInt((reach.to() - reach.from()) / 2);
    }
}
