package loopwright.workshop.assembly;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loopwright.catalog.basis.Face;
import loopwright.catalog.standard.Fastening.Driver;
import loopwright.geometry.SpaceBox;

/**
 * The rules of the page, cell by cell: a cell is two hundredths wide, so that a driver two across fills one. Written from the page
 * alone; it knows nothing of ways, blockers or bits.
 */
final class BruteMachine {

    /** Cells to go before something is out. */
    private static final int FAR = 24;

    private final List<Piece> pieces;
    private final Set<Face> open;
    private final int size;
    private final Set<Cell> builtIn;
    private final List<Driver> drivers;

    /** A cell. */
    record Cell(int x, int y, int z) {
        Cell to(Face face, int by) {
            int d = face.isHigh() ? by : -by;
            return switch (face.normal()) {
                case X -> new Cell(x + d, y, z);
                case Y -> new Cell(x, y + d, z);
                case Z -> new Cell(x, y, z + d);
            };
        }

        int along(Face face) {
            return switch (face.normal()) {
                case X -> x;
                case Y -> y;
                case Z -> z;
            };
        }
    }

    BruteMachine(List<Piece> pieces, Hall hall, List<Driver> drivers) {
        this.pieces = pieces;
        this.open = hall.open();
        this.size = hall.x().to() / 2;
        this.builtIn = cells(hall.builtIn());
        this.drivers = drivers;
    }

    static Set<Cell> cells(List<SpaceBox> boxes) {
        Set<Cell> out = new HashSet<>();
        for (SpaceBox b : boxes) {
            for (int x = b.x().from() / 2; x < b.x().to() / 2; x++) {
                for (int y = b.y().from() / 2; y < b.y().to() / 2; y++) {
                    for (int z = b.z().from() / 2; z < b.z().to() / 2; z++) {
                        out.add(new Cell(x, y, z));
                    }
                }
            }
        }
        return out;
    }

    private boolean carries(int one, int other) {
        return pieces.get(one).carries().contains(pieces.get(other).id());
    }

    /** What a piece is plugged into, directly or through others. */
    private Set<Integer> carriers(int piece) {
        Set<Integer> out = new HashSet<>();
        for (int k = 0; k < pieces.size(); k++) {
            if (carries(k, piece)) {
                out.add(k);
                out.addAll(carriers(k));
            }
        }
        return out;
    }

    private Set<Cell> taken(Set<Integer> in) {
        Set<Cell> out = new HashSet<>(builtIn);
        in.forEach(k -> out.addAll(cells(pieces.get(k).solids())));
        return out;
    }

    /** Whether a piece can leave with these others in; what it is plugged into is in too. */
    boolean leaves(int piece, Set<Integer> others) {
        for (int k : others) {
            if (carries(piece, k)) {
                return false;
            }
        }
        Set<Integer> in = new HashSet<>(others);
        in.addAll(carriers(piece));
        Set<Cell> now = taken(in);
        Set<Cell> least = taken(carriers(piece));
        Piece it = pieces.get(piece);
        Set<Cell> inside = cells(it.inside());
        boolean ok = inside.isEmpty() || goes(inside, now) || !goes(inside, least);
        for (Piece.Body body : it.bodies()) {
            if (body.lifts().isPresent()) {
                Set<Cell> its = cells(body.solids());
                Face face = body.lifts().get();
                ok &= straight(its, face, now) || !straight(its, face, least);
            }
        }
        for (SpaceBox room : it.reach()) {
            Set<Cell> hand = cells(List.of(room));
            ok &= goes(hand, now) || !goes(hand, least);
        }
        for (Piece.Screws set : it.screws()) {
            for (Driving.Screw screw : set.known()) {
                ok &= driven(screw, now) || !driven(screw, least);
            }
        }
        return ok;
    }

    private boolean driven(Driving.Screw screw, Set<Cell> taken) {
        return drivers.stream().anyMatch(d -> driven(screw, d, taken));
    }

    private boolean driven(Driving.Screw screw, Driver driver, Set<Cell> taken) {
        Face away = screw.away();
        Cell at = first(screw);
        int shaft = driver.shaftMm().valueHmm() / 2;
        int whole = shaft + (screw.lengthHmm() + driver.handMm().valueHmm()) / 2;
        if (!isIn(at, away)) {
            return straight(Set.of(at), away, taken);
        }
        Set<Cell> hand = new HashSet<>();
        for (int k = 0; k < whole; k++) {
            Cell cell = at.to(away, k);
            if (!isIn(cell, away) && !open.contains(away)) {
                return false;
            }
            if (k < shaft && taken.contains(cell)) {
                return false;
            }
            if (k >= shaft) {
                hand.add(cell);
            }
        }
        return goes(hand, taken);
    }

    /** The cell before a screw's head; heads lie in the middle of a cell's face. */
    private static Cell first(Driving.Screw screw) {
        int x = Math.floorDiv(screw.head().x(), 2);
        int y = Math.floorDiv(screw.head().y(), 2);
        int z = Math.floorDiv(screw.head().z(), 2);
        Cell high = new Cell(x, y, z);
        return screw.away().isHigh() ? high : high.to(screw.away(), 1);
    }

    private boolean isIn(Cell cell, Face along) {
        return cell.along(along) >= 0 && cell.along(along) < size;
    }

    private boolean goes(Set<Cell> cells, Set<Cell> taken) {
        for (Face side : open) {
            for (Face step : Face.values()) {
                List<Cell> at = new ArrayList<>(cells);
                while (at.stream().noneMatch(taken::contains)) {
                    if (straight(at, side, taken)) {
                        return true;
                    }
                    at = at.stream().map(c -> c.to(step, 1)).toList();
                    if (step.normal() == side.normal() || !at.stream().allMatch(c -> isIn(c, step))) {
                        break;
                    }
                }
            }
        }
        return false;
    }

    private static boolean straight(Iterable<Cell> cells, Face side, Set<Cell> taken) {
        for (Cell cell : cells) {
            for (int k = 0; k < FAR; k++) {
                if (taken.contains(cell.to(side, k))) {
                    return false;
                }
            }
        }
        return true;
    }
}
