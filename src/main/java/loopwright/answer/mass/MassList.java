package loopwright.answer.mass;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import loopwright.answer.Inspection;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Cover;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Reservoir;
import loopwright.catalog.part.Supply;
import loopwright.catalog.part.Tube;
import loopwright.catalog.part.TubeFitting;
import loopwright.catalog.standard.CarryPractice;
import loopwright.fit.CoveredLayers;
import loopwright.fit.StandingBodies;
import loopwright.fit.StandingBody;
import loopwright.fit.rules.Chosen;
import loopwright.fit.rules.Role;
import loopwright.geometry.SpaceBox;
import loopwright.loop.Machine;
import loopwright.loop.fluid.CoolantLiquid;

/** Everything of a build that weighs, each at the middle of its box, and what nobody has weighed. */
final class MassList {

    private static final double G_PER_KG = 1000;
    private static final double ML_PER_M3 = 1e6;
    private static final double HMM_PER_MM = 100;
    private static final double MM_PER_M = 1000;

    /** Temperature that coolant is weighed at, °C. */
    private static final double FILL_C = 20;

    /** Fittings on each part of the loop: one in, one out. */
    private static final int FITTINGS_A_PART = 2;

    private final Inspection in;
    private final Chassis chassis;
    private final CarryPractice practice;
    private final double coolantKgPerM3;
    private final Map<String, StandingBody> bodies = new HashMap<>();
    private final List<Mass> dry = new ArrayList<>();
    private final List<Mass> coolant = new ArrayList<>();
    private final Set<String> missing = new TreeSet<>();

    MassList(Inspection in, CarryPractice practice) {
        this.in = in;
        this.chassis = in.fitCase().chassis();
        this.practice = practice;
        this.coolantKgPerM3 = CoolantLiquid.of(in.machine().water().coolant()).densityKgPerM3(FILL_C);
        for (StandingBody body : StandingBodies.of(in.fitCase(), in.witness())) {
            bodies.merge(body.id(), solid(body), MassList::both);
        }
        for (StandingBody body : CoveredLayers.of(in.fitCase(), in.witness())) {
            bodies.merge(body.id(), body, MassList::both);
        }
        chassis();
        parts();
        stacks();
        covers();
        loop();
    }

    private static StandingBody both(StandingBody one, StandingBody other) {
        return new StandingBody(
                one.id(),
                Stream.concat(one.boxes().stream(), other.boxes().stream()).toList());
    }

    private static StandingBody solid(StandingBody body) {
        return new StandingBody(
                body.id(), body.boxes().stream().filter(b -> !b.room()).toList());
    }

    /** What weighs without coolant. */
    List<Mass> dry() {
        return dry;
    }

    /** The coolant, tank full. */
    List<Mass> coolant() {
        return coolant;
    }

    /** Ids of what nobody has weighed. */
    Set<String> missing() {
        return missing;
    }

    private void chassis() {
        Set<String> gone = new TreeSet<>();
        in.build().mods().mods(chassis).forEach(m -> gone.addAll(m.effect().removes()));
        double rest = chassis.shell().massKg();
        for (Inside.Removable one : chassis.inside().removables()) {
            if (one.massG().isEmpty()) {
                if (gone.contains(one.id())) {
                    missing.add(one.id() + " (taken out)");
                }
                continue;
            }
            double kg = one.massG().get() / G_PER_KG;
            rest -= kg;
            if (!gone.contains(one.id())) {
                at("removable:" + one.id()).ifPresent(spot -> dry.add(new Mass(one.title(), kg, spot)));
            }
        }
        dry.addAll(ShellMass.of(chassis.shell(), rest, practice.densities()));
    }

    private void parts() {
        Chosen chosen = in.build().chosen();
        Board board = chosen.the(Role.BOARD, Board.class);
        weigh("board", board.id(), board.massG());
        Memory memory = chosen.the(Role.MEMORY, Memory.class);
        weigh("memory", memory.id(), memory.massG());
        Block block = chosen.the(Role.BLOCK, Block.class);
        weigh("block", block.id(), block.massG());
        GraphicsCard card = chosen.the(Role.CARD, GraphicsCard.class);
        weigh("card", card.id(), card.massG());
        Supply supply = chosen.the(Role.SUPPLY, Supply.class);
        weigh("supply", supply.id(), supply.massG());
        Pump pump = chosen.the(Role.PUMP, Pump.class);
        weigh("pump", pump.id(), pump.massG());
        chosen.find(Role.RESERVOIR, Reservoir.class).ifPresent(r -> weigh("reservoir", r.id(), r.massG()));
        List<Drive> placed = in.fitCase().placedDrives();
        for (int i = 0; i < placed.size(); i++) {
            weigh("drive:" + (i + 1), placed.get(i).id(), placed.get(i).massG());
        }
        in.fitCase().drives().stream()
                .filter(d -> d.form() == Drive.DriveForm.M2)
                .forEach(d -> weigh("board", d.id(), d.massG()));
    }

    private void weigh(String body, String id, Optional<Integer> massG) {
        Optional<Mass.Spot> spot = at(body);
        if (massG.isPresent() && spot.isPresent()) {
            dry.add(new Mass(id, massG.get() / G_PER_KG, spot.get()));
        } else {
            missing.add(id);
        }
    }

    private void stacks() {
        for (Machine.FanMount mount : in.machine().mounts()) {
            List<SpaceBox> boxes = Optional.ofNullable(bodies.get("stack:" + mount.mount()))
                    .map(StandingBody::boxes)
                    .orElse(List.of());
            List<SpaceBox> fans =
                    boxes.stream().filter(b -> b.what().endsWith(" fans")).toList();
            int perLayer = mount.fans().row();
            double fanKg = mount.fans().fan().frame().massG() / G_PER_KG;
            fans.forEach(box -> dry.add(new Mass(mount.mount() + " fans", perLayer * fanKg, middle(box))));
            boxes.stream()
                    .filter(b -> b.what().endsWith(" radiator"))
                    .forEach(box -> mount.radiator().ifPresent(r -> {
                        dry.add(new Mass(
                                mount.mount() + " radiator", r.radiator().body().massG() / G_PER_KG, middle(box)));
                        wet(mount.mount() + " radiator", r.radiator().core().coolantML(), middle(box));
                    }));
        }
    }

    private void covers() {
        for (Mod mod : in.build().mods().mods(chassis)) {
            for (RaisedCover raised : mod.effect().covers()) {
                Cover cover = in.fitCase().catalog().part(Cover.class, raised.cover());
                Optional<Mass.Spot> over = at("stack:" + raised.mount());
                if (cover.massG().isPresent()) {
                    Mass.Spot roof = new Mass.Spot(
                            chassis.shell().interior().widthMm().valueHmm() / HMM_PER_MM / 2,
                            chassis.shell().interior().depthMm().valueHmm() / HMM_PER_MM / 2,
                            chassis.shell().interior().heightMm().valueHmm() / HMM_PER_MM);
                    dry.add(new Mass(cover.id(), cover.massG().get() / G_PER_KG, over.orElse(roof)));
                } else {
                    missing.add(cover.id());
                }
            }
        }
    }

    private void loop() {
        Machine.Water water = in.machine().water();
        at("pump").ifPresent(s -> wet("pump", water.pump().pump().water().coolantML(), s));
        in.build()
                .chosen()
                .find(Role.RESERVOIR, Reservoir.class)
                .ifPresent(r -> at("reservoir").ifPresent(s -> wet("reservoir", r.coolantML(), s)));
        for (Machine.BlockAt block : water.blocks()) {
            at(block.name().equals(Machine.CARD) ? "card" : "block")
                    .ifPresent(s -> wet(block.name(), block.flow().coolantML(), s));
        }
        Mass.Spot between = mean(coolant);
        int parts = coolant.size();
        Tube tube = water.runs().tube();
        double boreM = tube.boreMm().valueHmm() / HMM_PER_MM / MM_PER_M;
        double outsideM = tube.outsideMm().valueHmm() / HMM_PER_MM / MM_PER_M;
        double bore = Math.PI / 4 * boreM * boreM * water.runs().lengthM();
        double wall = Math.PI / 4 * outsideM * outsideM * water.runs().lengthM() - bore;
        coolant.add(new Mass("tube", bore * coolantKgPerM3, between));
        dry.add(new Mass("tube", wall * TubeDensity.kgPerM3(tube, practice.densities()), between));
        fitting(tube)
                .flatMap(TubeFitting::massG)
                .ifPresentOrElse(
                        g -> dry.add(new Mass("fittings", parts * FITTINGS_A_PART * g / G_PER_KG, between)),
                        () -> missing.add("fittings"));
    }

    /** The straight fitting for the tube that comes first: they weigh alike. */
    private Optional<TubeFitting> fitting(Tube tube) {
        return in.fitCase().catalog().all(TubeFitting.class).stream()
                .filter(f -> f.kind() == TubeFitting.Kind.STRAIGHT)
                .filter(f -> f.tubeOutsideMm()
                        .filter(o -> o.valueHmm() == tube.outsideMm().valueHmm())
                        .isPresent())
                .findFirst();
    }

    private void wet(String what, double coolantML, Mass.Spot spot) {
        coolant.add(new Mass(what, coolantML / ML_PER_M3 * coolantKgPerM3, spot));
    }

    private static Mass.Spot mean(List<Mass> masses) {
        double x = masses.stream().mapToDouble(m -> m.at().xMm()).sum();
        double y = masses.stream().mapToDouble(m -> m.at().yMm()).sum();
        double z = masses.stream().mapToDouble(m -> m.at().zMm()).sum();
        return new Mass.Spot(x / masses.size(), y / masses.size(), z / masses.size());
    }

    /** The middle of a body: of its first box, which for parts is the part itself; of all, for what is built in. */
    private Optional<Mass.Spot> at(String id) {
        return Optional.ofNullable(bodies.get(id))
                .filter(b -> !b.boxes().isEmpty())
                .map(b -> {
                    if (!id.startsWith("removable:")) {
                        return middle(b.boxes().get(0));
                    }
                    List<Mass> boxes = b.boxes().stream()
                            .map(box -> new Mass(box.what(), volume(box), middle(box)))
                            .toList();
                    return Masses.of(boxes).centre();
                });
    }

    private static double volume(SpaceBox box) {
        return length(box.x()) * length(box.y()) * length(box.z());
    }

    private static double length(SpaceBox.Reach reach) {
        return reach.to() - reach.from();
    }

    private static Mass.Spot middle(SpaceBox box) {
        return new Mass.Spot(middle(box.x()), middle(box.y()), middle(box.z()));
    }

    private static double middle(SpaceBox.Reach reach) {
        return (reach.from() + reach.to()) / 2.0 / HMM_PER_MM;
    }
}
