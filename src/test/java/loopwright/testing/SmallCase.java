package loopwright.testing;

import static loopwright.testing.Mm.mm;
import static loopwright.testing.Mm.pose;
import static loopwright.testing.Mm.upright;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Box;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.Point;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.chassis.Shell;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Part;
import loopwright.catalog.standard.Practice;
import loopwright.fit.FitCase;
import loopwright.fit.FitResult;
import loopwright.fit.FitSearch;
import loopwright.fit.FitWish;
import loopwright.quantity.Dimension;

/**
 * A whole small case under construction: a roomy chassis with a flat board in its rear left corner, and a supply and a
 * pump far to the right, out of the way of anything that a test hangs.
 *
 * <p>Everything that nobody set is exact, known, and needs no room round it.
 */
public final class SmallCase {

    /** The board's top face over the floor, mm. */
    public static final double BOARD_TOP_MM = 20;

    /** Where the supply and the pump stand, mm to the right of the left wall. */
    private static final double ANNEX_MM = 600;

    private final SortedMap<String, Part> parts = new TreeMap<>();
    private final List<Mount> mounts = new ArrayList<>();
    private final List<Panel> panels = new ArrayList<>();
    private final List<Inside.Obstruction> obstructions = new ArrayList<>();
    private final List<Inside.Removable> removables = new ArrayList<>();
    private final List<Place> places = new ArrayList<>();
    private final List<Mod> mods = new ArrayList<>();
    private final double depthMm;
    private final double heightMm;
    private Dimension rearPlane;
    private List<String> drives = List.of();
    private int headroomPercent = 25;
    private boolean noTightPlaces;
    private Practice.Measuring measuring = Practice.Measuring.NOTHING;

    /** A chassis so deep and high. */
    public SmallCase(double depthMm, double heightMm) {
        this.depthMm = depthMm;
        this.heightMm = heightMm;
        this.rearPlane = mm(depthMm);
        SmallParts.rest().forEach(p -> parts.put(p.id(), p));
        with(SmallParts.processor("processor", 100));
        with(SmallParts.card("card", mm(150), 150));
        with(SmallParts.memory("memory", mm(30)));
        with(SmallParts.supply("supply", 140, 40, 1000));
        place("pump-place", Place.Holds.PUMP_RESERVOIR, upright(ANNEX_MM + 160, 20, 0), Optional.empty());
    }

    /** Puts a part into the catalogue, in place of one with the same id. */
    public SmallCase with(Part part) {
        parts.put(part.id(), part);
        return this;
    }

    /** Takes a part out of the catalogue. */
    public SmallCase without(String id) {
        parts.remove(id);
        return this;
    }

    /** Adds a mod. */
    public SmallCase with(Mod mod) {
        mods.add(mod);
        return this;
    }

    /** Adds a mount and its panel. */
    public SmallCase mount(Face face, Mount mount) {
        mounts.add(mount);
        Panel.Patch whole = new Panel.Patch(Optional.empty(), Optional.empty(), Optional.empty());
        panels.add(new Panel(
                mount.panel(),
                face,
                mm(0.8),
                Panel.Material.STEEL,
                whole,
                new Panel.Features(List.of(), List.of(), List.of(), List.of())));
        return this;
    }

    /** Adds something that is always there. */
    public SmallCase obstruction(String id, Box box) {
        obstructions.add(new Inside.Obstruction(id, id, List.of(box)));
        return this;
    }

    /** Adds something that can come out. */
    public SmallCase removable(String id, Box box) {
        removables.add(new Inside.Removable(
                id, id, List.of(box), Inside.Hold.RIVETS, Inside.Stiffness.SOME, Optional.empty()));
        return this;
    }

    /** Adds a place. */
    public SmallCase place(String id, Place.Holds holds, Pose pose, Optional<String> inside) {
        List<String> touches = inside.map(List::of).orElse(List.of());
        places.add(new Place(id, id, List.of(holds), pose, inside, List.of(Face.REAR, Face.FLOOR), touches));
        return this;
    }

    /** Wants these drives. */
    public SmallCase drives(String... ids) {
        drives = List.of(ids);
        return this;
    }

    /** The plane that the slots are measured from. */
    public SmallCase rearPlane(Dimension rear) {
        rearPlane = rear;
        return this;
    }

    /** How much more than the loads the supply is rated for. */
    public SmallCase headroom(int percent) {
        headroomPercent = percent;
        return this;
    }

    /** With what lengths are read, and what clashes cost. */
    public SmallCase measuring(Practice.Measuring with) {
        measuring = with;
        return this;
    }

    /** Refuses tight places. */
    public SmallCase refusingTightPlaces() {
        noTightPlaces = true;
        return this;
    }

    /** Everything that fits. */
    public FitResult fits() {
        return search(FitWish.ALL).run();
    }

    /** A search, narrowed. */
    public FitSearch search(FitWish wish) {
        return new FitSearch(fitCase(), wish, () -> false);
    }

    /** The case itself. */
    public FitCase fitCase() {
        Chassis chassis = chassis();
        SortedMap<String, Part> all = new TreeMap<>(parts);
        all.put(chassis.id(), chassis);
        Catalog catalog = new Catalog("in code", "EUR", all, SmallBrief.standards(), practice());
        return new FitCase(catalog, chassis, SmallBrief.any(drives, headroomPercent, noTightPlaces));
    }

    private Chassis chassis() {
        List<Place> all = new ArrayList<>(places);
        boolean hasSupplyPlace = places.stream().anyMatch(p -> p.holds().contains(Place.Holds.ATX));
        if (!hasSupplyPlace) {
            all.add(new Place(
                    "supply-place",
                    "supply-place",
                    List.of(Place.Holds.ATX),
                    upright(ANNEX_MM, 20, 0),
                    Optional.empty(),
                    List.of(Face.FLOOR),
                    List.of()));
        }
        Pose board = new Pose(new Point(mm(20), rearPlane, mm(BOARD_TOP_MM)), Heading.RIGHT, Heading.FRONT, Heading.UP);
        Inside inside = new Inside(
                new Inside.BoardBay(List.of(Board.BoardForm.MINI_ITX), board, List.of(Face.REAR), List.of()),
                List.copyOf(obstructions),
                List.copyOf(removables),
                List.copyOf(all));
        Shell shell = new Shell(
                new Shell.Interior(mm(ANNEX_MM + 200), mm(depthMm), mm(heightMm)),
                20,
                5,
                List.copyOf(panels),
                Optional.empty());
        return new Chassis(
                "chassis",
                "chassis",
                Optional.empty(),
                new Purchase(1000, 3),
                shell,
                inside,
                List.copyOf(mounts),
                List.copyOf(mods));
    }

    /** The trade's plenums under a perforated and a solid skin; no other allowance. */
    private Practice practice() {
        return new Practice(
                new Practice.Room(mm(0), mm(36), mm(12), mm(5), mm(15), mm(1), mm(1.57)),
                SmallPractice.air(mm(15), 0.55),
                SmallPractice.heat(25),
                SmallPractice.loop(),
                SmallPractice.core(),
                measuring);
    }

    /** The place of a supply whose face is at the rear and whose plugs look to the front. */
    public SmallCase supplyAtTheRear(double xMm, double zMm) {
        return place("bay", Place.Holds.ATX, pose(xMm, depthMm, zMm, Heading.FRONT), Optional.empty());
    }
}
