package loopwright.oracle.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Box;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.part.Board;

/** What stands in a case: plates in the stack zone; board and places in the annex to its right. */
final class CaseInside {
    final List<Inside.Obstruction> obstructions = new ArrayList<>();
    final List<Inside.Removable> removables = new ArrayList<>();
    final List<Place> places = new ArrayList<>();
    /** Bodies that mods may add. */
    final List<Inside.Obstruction> brackets = new ArrayList<>();

    private final Dice dice;
    private final CaseParts parts;
    private final CaseRoom room;
    private final CaseShape shape;
    private final List<CaseMount> mounts;
    private final boolean upright;
    private int x;
    private int boardX;

    CaseInside(Dice dice, CaseParts parts, CaseRoom room, CaseShape shape, List<CaseMount> mounts) {
        this.dice = dice;
        this.parts = parts;
        this.room = room;
        this.shape = shape;
        this.mounts = mounts;
        this.upright = dice.chance(50) && room.heightHmm() > 5600;
    }

    void fill(int depthHmm) {
        int thin = 0;
        for (int i = 0; i < mounts.size(); i++) {
            CaseMount mount = mounts.get(i);
            if (shape.pins.get(i) != Face.RIGHT && dice.chance(50)) {
                plate(thin++, room.plate(shape.pins.get(i), mount.face, depthHmm, dice.small(1, 7)));
            }
            if (dice.chance(30)) {
                plate(thin++, room.shelf(mount, mount.depthHmm(depthHmm, 0) + dice.small(-3, 12) + dice.gapHmm()));
            }
            Face pin = shape.pins.get(i) == Face.RIGHT ? Face.FRONT : shape.pins.get(i);
            brackets.add(new Inside.Obstruction(
                    "bracket-" + i,
                    "bracket",
                    List.of(
                            dice.chance(60)
                                    ? room.plate(pin, mount.face, depthHmm, dice.small(2, 9))
                                    : room.shelf(
                                            mount, mount.depthHmm(depthHmm, 0) - dice.small(-1, 4) + dice.gapHmm()))));
        }
        x = dice.chance(30) ? room.zoneXHmm() + dice.small(0, 3) : room.zoneXHmm() + 2000 + dice.gapHmm();
        places();
        boardX = x;
        x += (upright ? 3400 : 5200) + dice.gapHmm();
    }

    private void plate(int number, Box box) {
        String id = "plate-" + number;
        if (dice.chance(65)) {
            removables.add(new Inside.Removable(
                    id, "plate", List.of(box), Inside.Hold.SCREWS, Inside.Stiffness.NONE, Optional.empty()));
        } else if (dice.chance(40)) {
            obstructions.add(new Inside.Obstruction(id, "plate", List.of(box)));
        } else {
            brackets.add(new Inside.Obstruction(id, "plate", List.of(box)));
        }
    }

    private void places() {
        cold("supply-1", List.of(Place.Holds.SFX, Place.Holds.ATX), 200, 2200, Optional.empty());
        if (dice.chance(50)) {
            int y = room.depthHmm() - 3500 + dice.small(-5, 4) - dice.gapHmm();
            cold("supply-2", List.of(Place.Holds.SFX), y - 2 * dice.gapHmm(), 2200, Optional.empty());
        }
        cold("pump-1", List.of(Place.Holds.PUMP, Place.Holds.PUMP_RESERVOIR), 100, 1600, Optional.empty());
        cold("res-1", List.of(Place.Holds.RESERVOIR), 100, 1600, Optional.empty());
        Optional<String> cage = removables.isEmpty() || dice.chance(50)
                ? Optional.empty()
                : Optional.of(removables.get(0).id());
        if (dice.chance(70)) {
            cold("drive-1", List.of(Place.Holds.D2_5), 100, 2100, cage);
        }
        int at = dice.between(0, 1) * (mounts.size() - 1);
        Face pin = shape.pins.get(at);
        places.add(new Place(
                "drive-2",
                "drive-2",
                List.of(Place.Holds.D2_5),
                room.through(pin, mounts.get(at).face, dice.small(1, 9)),
                Optional.empty(),
                List.of(pin),
                List.of("plate-0", "plate-1", "plate-2", "plate-3", "bracket-0", "bracket-1", "bracket-2")));
        cold("drive-3", List.of(Place.Holds.D2_5), 100, 2100, Optional.empty());
    }

    private void cold(String id, List<Place.Holds> holds, int y, int takesX, Optional<String> cage) {
        places.add(new Place(
                id,
                id,
                holds,
                new Pose(
                        CaseRoom.point(x, y + 2 * dice.gapHmm(), 100 + 2 * dice.gapHmm()),
                        Heading.REAR,
                        Heading.RIGHT,
                        Heading.UP),
                cage,
                List.of(),
                List.of()));
        x += takesX + 2 * dice.gapHmm();
    }

    Inside.BoardBay bay() {
        int y = room.depthHmm() - 50;
        Pose pose = upright
                ? new Pose(
                        CaseRoom.point(boardX + 3200, y, room.heightHmm() - 300 - dice.gapHmm()),
                        Heading.DOWN,
                        Heading.FRONT,
                        Heading.LEFT)
                : new Pose(CaseRoom.point(boardX, y, 400 + dice.gapHmm()), Heading.RIGHT, Heading.FRONT, Heading.UP);
        return new Inside.BoardBay(List.of(Board.BoardForm.MINI_ITX), pose, List.of(Face.REAR), List.of());
    }

    int widthHmm() {
        return x + 100;
    }

    int driveCount() {
        return parts.driveCount;
    }
}
