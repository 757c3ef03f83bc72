package loopwright.plumbing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.PartPort;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Reservoir;
import loopwright.fit.FitCase;
import loopwright.fit.StandingBodies;
import loopwright.fit.StandingBody;
import loopwright.fit.Witness;
import loopwright.fit.rules.Chosen;
import loopwright.fit.rules.Role;
import loopwright.geometry.SpaceBox;
import loopwright.loop.Machine;
import loopwright.plumbing.LoopPart.Holds;
import loopwright.plumbing.LoopPart.Kind;
import loopwright.plumbing.route.Solid;
import loopwright.plumbing.route.Where;

/** The loop's parts of a placed build, with their ports and fill cap. */
final class PlacedParts {

    private final Chassis chassis;
    private final Witness witness;
    private final List<StandingBody> bodies;
    private final Chosen chosen;

    PlacedParts(FitCase fitCase, Witness witness, Chosen chosen) {
        this.chassis = fitCase.chassis();
        this.witness = witness;
        this.chosen = chosen;
        this.bodies = StandingBodies.of(fitCase, witness);
    }

    /** Everything that stands in the chassis. */
    List<StandingBody> bodies() {
        return bodies;
    }

    /** Whether the card carries a block. */
    boolean cardHasBlock() {
        return chosen.the(Role.CARD, GraphicsCard.class).cooling() == GraphicsCard.Cooling.BLOCK;
    }

    /** Reservoir, pump, blocks, then radiators in the chassis's order. */
    List<LoopPart> all(Machine machine) {
        List<LoopPart> out = new ArrayList<>();
        Pump pump = chosen.the(Role.PUMP, Pump.class);
        chosen.find(Role.RESERVOIR, Reservoir.class).ifPresent(r -> out.add(reservoir(r)));
        out.add(pump(pump));
        out.add(block(chosen.the(Role.BLOCK, Block.class)));
        if (cardHasBlock()) {
            out.add(card(chosen.the(Role.CARD, GraphicsCard.class)));
        }
        for (Machine.FanMount mount : machine.mounts()) {
            mount.radiator().ifPresent(r -> out.add(radiator(mount.mount(), r.radiator())));
        }
        return out;
    }

    /** Where coolant is filled in: what the tank's file says, else the middle of its highest face. */
    Port fill(LoopPart tank) {
        Optional<PartPort> told = tank.kind() == Kind.RESERVOIR
                ? chosen.the(Role.RESERVOIR, Reservoir.class).fill()
                : chosen.the(Role.PUMP, Pump.class).fill();
        return told.map(p -> inPlace(tank.name()).port(tank.name(), p)).orElseGet(() -> onTop(tank));
    }

    private static Port onTop(LoopPart tank) {
        Where top = new Where(
                (tank.low().x() + tank.high().x()) / 2,
                (tank.low().y() + tank.high().y()) / 2,
                tank.high().z());
        return new Port(tank.name(), "fill cap", top, Heading.UP, PartPort.Way.IN, true);
    }

    private LoopPart reservoir(Reservoir part) {
        PartFrame frame = inPlace("reservoir");
        return made(
                "reservoir",
                Kind.RESERVOIR,
                frame,
                part.ports(),
                AssumedPorts.onFarEnd("reservoir", frame),
                new Holds(part.coolantML(), part.massG()));
    }

    private LoopPart pump(Pump part) {
        PartFrame frame = inPlace("pump");
        Kind kind = part.kind() == Pump.Kind.PUMP ? Kind.PUMP : Kind.PUMP_RESERVOIR;
        Holds holds = new Holds(part.water().coolantML(), part.massG());
        return made("pump", kind, frame, part.ports(), AssumedPorts.onFarEnd("pump", frame), holds);
    }

    private LoopPart block(Block part) {
        PartFrame frame = onBoard("block");
        return made(
                Machine.PROCESSOR,
                Kind.BLOCK,
                frame,
                part.ports(),
                AssumedPorts.onTop(Machine.PROCESSOR, frame),
                new Holds(part.flow().coolantML(), part.massG()));
    }

    private LoopPart card(GraphicsCard part) {
        Pose board = chassis.inside().board().pose();
        Heading forward = board.width();
        Heading acrossSlots = board.length();
        PartFrame frame = new PartFrame(box("card"), forward, acrossSlots, board.height());
        int room = part.body().topRoomLengthMm().valueHmm();
        double coolantML = part.power().block().map(Block.Flow::coolantML).orElse(0.0);
        return made(
                Machine.CARD,
                Kind.BLOCK,
                frame,
                part.ports(),
                AssumedPorts.onTopEdge(Machine.CARD, frame, room),
                new Holds(coolantML, part.massG()));
    }

    private LoopPart radiator(String mount, Radiator radiator) {
        Witness.At at = witness.stacks().stream()
                .filter(s -> s.stack().frame().mount().id().equals(mount))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no stack on " + mount));
        String name = mount + " radiator";
        List<Port> ports = new RadiatorPorts(at, radiator).all(name);
        Holds holds = new Holds(
                radiator.core().coolantML(), Optional.of(radiator.body().massG()));
        Solid body = findBox("stack:" + mount, name).orElseGet(() -> around(ports));
        return new LoopPart(name, Kind.RADIATOR, body.low(), body.high(), ports, holds);
    }

    /** A radiator in a raised cover has no body inside: its ports stand for it. */
    private static Solid around(List<Port> ports) {
        Solid out = Solid.around("", ports.get(0).at(), ports.get(0).at(), 0);
        for (Port port : ports) {
            Solid one = Solid.around("", out.low(), port.at(), 0);
            Solid other = Solid.around("", out.high(), port.at(), 0);
            out = new Solid(
                    "",
                    Solid.around("", one.low(), other.low(), 0).low(),
                    Solid.around("", one.high(), other.high(), 0).high());
        }
        return out;
    }

    private static LoopPart made(
            String name, Kind kind, PartFrame frame, List<PartPort> told, List<Port> assumed, Holds holds) {
        List<Port> ports = told.isEmpty()
                ? assumed
                : told.stream().map(p -> frame.port(name, p)).toList();
        return new LoopPart(name, kind, frame.box().low(), frame.box().high(), ports, holds);
    }

    private PartFrame inPlace(String role) {
        String place = witness.places().stream()
                .filter(p -> p.what().equals(role))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no place for the " + role))
                .place();
        Pose pose = chassis.inside().places().stream()
                .filter(p -> p.id().equals(place))
                .findFirst()
                .orElseThrow()
                .pose();
        return new PartFrame(box(role), pose.length(), pose.width(), pose.height());
    }

    private PartFrame onBoard(String id) {
        Pose board = chassis.inside().board().pose();
        return new PartFrame(box(id), board.length(), board.width(), board.height());
    }

    private Solid box(String id) {
        return bodies.stream()
                .filter(b -> b.id().equals(id))
                .findFirst()
                .map(b -> solid(b.boxes().get(0)))
                .orElseThrow(() -> new IllegalArgumentException("no body " + id));
    }

    private Optional<Solid> findBox(String id, String what) {
        return bodies.stream()
                .filter(b -> b.id().equals(id))
                .flatMap(b -> b.boxes().stream())
                .filter(b -> b.what().equals(what))
                .findFirst()
                .map(PlacedParts::solid);
    }

    /** A box as something solid. */
    static Solid solid(SpaceBox box) {
        return new Solid(
                box.what(),
                new Where(box.x().from(), box.y().from(), box.z().from()),
                new Where(box.x().to(), box.y().to(), box.z().to()));
    }
}
