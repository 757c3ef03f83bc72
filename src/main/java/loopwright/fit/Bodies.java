package loopwright.fit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Reservoir;
import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.Standards.BoardOutline;
import loopwright.fit.Occupant.Group;
import loopwright.fit.PlaceModel.Placing;
import loopwright.fit.rules.Role;
import loopwright.geometry.Body;

/** Every body that does not slide, made once and known by number. */
final class Bodies {

    private final FitCase fitCase;
    private final List<Occupant> all = new ArrayList<>();
    private final Map<String, Integer> numbers = new HashMap<>();

    Bodies(FitCase fitCase) {
        this.fitCase = fitCase;
    }

    Occupant get(int number) {
        return all.get(number);
    }

    boolean anyUnknown() {
        return all.stream().anyMatch(Occupant::isUnknown);
    }

    private int number(String key, Supplier<Occupant> make) {
        Integer known = numbers.get(key);
        if (known != null) {
            return known;
        }
        all.add(make.get());
        numbers.put(key, all.size() - 1);
        return all.size() - 1;
    }

    /** Numbers of what is built in with a mod set: obstructions, what is left of the removables, what mods add. */
    List<Integer> builtIn(ModSet mods) {
        Inside inside = fitCase.chassis().inside();
        String name = fitCase.chassis().id() + ".inside";
        Set<String> gone = new TreeSet<>();
        List<Integer> out = new ArrayList<>();
        for (Mod mod : mods.mods(fitCase.chassis())) {
            gone.addAll(mod.effect().removes());
        }
        for (Inside.Obstruction o : inside.obstructions()) {
            out.add(builtIn(
                    "obstruction:" + o.id(),
                    () -> PartBodies.fixed(
                            "obstruction:" + o.id(), o.title(), name + ".obstructions." + o.id(), o.boxes())));
        }
        for (Inside.Removable r : inside.removables()) {
            if (!gone.contains(r.id())) {
                out.add(builtIn(
                        "removable:" + r.id(),
                        () -> PartBodies.fixed(
                                "removable:" + r.id(), r.title(), name + ".removables." + r.id(), r.boxes())));
            }
        }
        for (Mod mod : mods.mods(fitCase.chassis())) {
            for (Inside.Obstruction o : mod.effect().adds()) {
                out.add(builtIn(
                        "added:" + mod.id() + ":" + o.id(),
                        () -> PartBodies.fixed(
                                "added:" + o.id(),
                                o.title(),
                                ModRules.address(fitCase.chassis(), mod) + ".effect.adds." + o.id(),
                                o.boxes())));
            }
        }
        return List.copyOf(out);
    }

    private int builtIn(String key, Supplier<Body> body) {
        return number(key, () -> Occupant.of(body.get(), Group.BUILT_IN, Set.of(), Set.of()));
    }

    /** Numbers of the parts of a placing: board, what is on it, what is in places. */
    List<Integer> parts(PartSet set, Placing placing) {
        List<Integer> out = new ArrayList<>();
        Board board = set.example().the(Role.BOARD, Board.class);
        Inside.BoardBay bay = fitCase.chassis().inside().board();
        Spot spot = Spot.onBoard(fitCase.chassis());
        out.add(onBoard(board.id(), bay, () -> PartBodies.board(board, outline(board), spot, fitCase.catalog())));
        Memory memory = set.example().the(Role.MEMORY, Memory.class);
        out.add(onBoard(board.id() + memory.id(), bay, () -> PartBodies.memory(board, memory, spot)));
        Block block = set.example().the(Role.BLOCK, Block.class);
        out.add(onBoard(board.id() + block.id(), bay, () -> PartBodies.block(board, block, spot)));
        GraphicsCard card = set.example().the(Role.CARD, GraphicsCard.class);
        out.add(onBoard(board.id() + card.id(), bay, () -> PartBodies.card(board, card, spot)));
        Supply supply = set.example().the(Role.SUPPLY, Supply.class);
        if (placing.supply() != PlaceModel.NOWHERE) {
            out.add(inPlace(
                    "supply",
                    supply,
                    new PartBodies.Room(supply.body(), "plugs", "plug_room_mm", supply.plugRoomMm()),
                    placing.supply()));
        }
        for (int k = 0; k < placing.drives().size(); k++) {
            if (placing.drives().get(k) == PlaceModel.NOWHERE) {
                continue;
            }
            Drive drive = fitCase.placedDrives().get(k);
            out.add(inPlace(
                    "drive:" + (k + 1),
                    drive,
                    new PartBodies.Room(drive.body(), "plugs", "plug_room_mm", drive.plugRoomMm()),
                    placing.drives().get(k)));
        }
        Pump pump = set.example().the(Role.PUMP, Pump.class);
        if (placing.pump() != PlaceModel.NOWHERE) {
            out.add(inPlace(
                    "pump",
                    pump,
                    new PartBodies.Room(
                            pump.body(),
                            "ports",
                            "water.port_room_mm",
                            pump.water().portRoomMm()),
                    placing.pump()));
        }
        Optional<Reservoir> reservoir = set.example()
                .find(Role.RESERVOIR, Reservoir.class)
                .filter(r -> placing.reservoir() != PlaceModel.NOWHERE);
        reservoir.ifPresent(r -> out.add(inPlace(
                "reservoir",
                r,
                new PartBodies.Room(r.body(), "ports", "port_room_mm", r.portRoomMm()),
                placing.reservoir())));
        return List.copyOf(out);
    }

    private int onBoard(String key, Inside.BoardBay bay, Supplier<Body> body) {
        return number(
                "on-board:" + key,
                () -> Occupant.of(body.get(), Group.ON_BOARD, faces(bay.against()), Set.copyOf(bay.touches())));
    }

    private int inPlace(String role, Part part, PartBodies.Room room, int placeIndex) {
        Place place = fitCase.chassis().inside().places().get(placeIndex);
        return number(role + ":" + part.id() + "@" + place.id(), () -> {
            Body body =
                    PartBodies.inPlace(role, part.title(), item(role, part), room, Spot.in(fitCase.chassis(), place));
            return Occupant.of(body, Group.IN_PLACE, faces(place.against()), Set.copyOf(place.touches()));
        });
    }

    private int outline(Board board) {
        List<BoardOutline> all = fitCase.catalog().standards().boards();
        return IntStream.range(0, all.size())
                .filter(i -> all.get(i).form() == board.form())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no outline for boards of form " + board.form()));
    }

    /** What a part's dimensions are called by: two drives of one kind are two things, and may be off in two ways. */
    private String item(String role, Part part) {
        long alike = fitCase.placedDrives().stream()
                .filter(d -> d.id().equals(part.id()))
                .count();
        return (alike > 1 ? role.replace(':', '-') + ":" : "") + part.id();
    }

    private static Set<Face> faces(List<Face> faces) {
        return faces.isEmpty() ? Set.of() : EnumSet.copyOf(faces);
    }

    Chassis chassis() {
        return fitCase.chassis();
    }
}
