package loopwright.answer.cable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import loopwright.answer.Inspection;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Shell;
import loopwright.catalog.chassis.Wiring;
import loopwright.catalog.standard.Cabling;
import loopwright.catalog.standard.Cabling.PlugSize;
import loopwright.fit.StandingBodies;
import loopwright.fit.StandingBody;
import loopwright.geometry.SpaceBox;
import loopwright.power.cable.Hole;
import loopwright.power.cable.Obstacle;
import loopwright.power.cable.OpenWays;
import loopwright.power.cable.PointHmm;
import loopwright.power.cable.Way;

/**
 * The ways of cables in one build as it stands.
 *
 * <p>Unit: hundredths of a millimetre.
 */
final class WaysInside {

    /** How far at most a cable leaves its plug straight before it may turn; common practice, no source. */
    private static final int STRAIGHT_MAX_HMM = 4000;

    /** Steps in which that is tried, from what cables keep. */
    private static final int STRAIGHT_STEP_HMM = 100;

    private static final int HMM_PER_MM = 100;

    private final Inspection inspection;
    private final Cabling cabling;
    private final List<StandingBody> bodies;
    private final List<Hole> holes;
    private final int keep;

    WaysInside(Inspection inspection, Cabling cabling) {
        this.inspection = inspection;
        this.cabling = cabling;
        this.bodies = StandingBodies.of(inspection.fitCase(), inspection.witness());
        this.holes = holes(inspection, cabling);
        this.keep = (int) Math.round(cabling.way().keepMm() * HMM_PER_MM);
    }

    List<StandingBody> bodies() {
        return bodies;
    }

    /** Every hole there is with the build's mods, in the case's order, then the mods'. */
    List<Hole> holes() {
        return holes;
    }

    private static List<Hole> holes(Inspection inspection, Cabling cabling) {
        Stream<Wiring.RoutingHole> own =
                inspection.fitCase().chassis().wiring().map(Wiring::holes).orElse(List.of()).stream();
        Stream<Wiring.RoutingHole> cut = inspection
                .build()
                .mods()
                .mods(inspection.fitCase().chassis())
                .stream()
                .map(Mod::effect)
                .flatMap(e -> e.routingHoles().stream());
        int lip = (int) Math.round(cabling.way().grommetLipMm() * HMM_PER_MM);
        return Stream.concat(own, cut)
                .filter(h -> !h.longMm().isUnknown() && !h.shortMm().isUnknown())
                .map(h -> new Hole(
                        h.id(),
                        h.title(),
                        new PointHmm(
                                h.at().xMm().valueHmm(),
                                h.at().yMm().valueHmm(),
                                h.at().zMm().valueHmm()),
                        h.longMm().valueHmm() - lip,
                        h.shortMm().valueHmm() - lip))
                .toList();
    }

    /** The ways among some plugs of one kind. */
    Among among(PlugSize plug, List<PlugEnd> ends) {
        List<Hole> usable = holes.stream().filter(h -> h.passes(plug)).toList();
        Set<String> hollow = new HashSet<>();
        for (PlugEnd end : ends) {
            bodies.stream().filter(b -> isBuiltIn(b) && holds(b, end.face())).forEach(b -> hollow.add(b.id()));
        }
        List<Obstacle> obstacles = new ArrayList<>();
        for (StandingBody body : bodies) {
            if (!hollow.contains(body.id())) {
                solid(body).forEach(b -> obstacles.add(obstacle(body, b, usable)));
            }
        }
        overBoard().ifPresent(b -> obstacles.add(new Obstacle("air over the board", b)));
        List<Start> starts = ends.stream().map(e -> start(e, obstacles)).toList();
        return new Among(
                new OpenWays(
                        inside(),
                        keep,
                        obstacles,
                        starts.stream().map(Start::at).toList()),
                ends,
                starts);
    }

    /** Where a cable may first turn, and how far that is from its plug's face. */
    private record Start(PointHmm at, int straightHmm) {}

    /** A way, or where there is none the straight distance. */
    record Found(int lengthHmm, List<String> holes, boolean open) {}

    /** Ways among plugs. */
    static final class Among {
        private final OpenWays ways;
        private final List<PlugEnd> ends;
        private final List<Start> starts;

        private Among(OpenWays ways, List<PlugEnd> ends, List<Start> starts) {
            this.ways = ways;
            this.ends = ends;
            this.starts = starts;
        }

        /** The way from one to another, by their numbers. */
        Found find(int from, int to) {
            if (ends.get(from).face().equals(ends.get(to).face())) {
                return new Found(0, List.of(), true);
            }
            Start one = starts.get(from);
            Start other = starts.get(to);
            Optional<Way> way = ways.find(one.at(), other.at());
            return way.map(w -> new Found(w.lengthHmm() + one.straightHmm() + other.straightHmm(), w.holes(), true))
                    .orElseGet(() -> new Found(
                            ends.get(from).face().squareWayTo(ends.get(to).face()), List.of(), false));
        }
    }

    /** The boxes of matter. */
    static List<SpaceBox> solid(StandingBody body) {
        return body.boxes().stream().filter(b -> !b.room()).toList();
    }

    private static boolean isBuiltIn(StandingBody body) {
        return BUILT_IN.stream().anyMatch(kind -> body.id().startsWith(kind));
    }

    /** Kinds of bodies that belong to the case or to a mod. */
    private static final List<String> BUILT_IN = List.of("obstruction:", "removable:", "added:");

    /** Whether a hole is in the sheet that the board stands on: in one that is as flat as the board. */
    boolean isInTray(Hole hole) {
        Axis normal =
                inspection.fitCase().chassis().inside().board().pose().height().axis();
        return bodies.stream()
                .filter(WaysInside::isBuiltIn)
                .anyMatch(b -> solid(b).stream()
                        .anyMatch(s -> liesIn(hole, s) && new Obstacle(b.id(), s).thinnest() == normal));
    }

    private static boolean holds(StandingBody body, PointHmm point) {
        return solid(body).stream().anyMatch(b -> new Obstacle(body.id(), b).isNear(point, 0));
    }

    private static Obstacle obstacle(StandingBody body, SpaceBox box, List<Hole> usable) {
        return new Obstacle(
                body.id(),
                box,
                isBuiltIn(body) ? usable.stream().filter(h -> liesIn(h, box)).toList() : List.of());
    }

    private static boolean liesIn(Hole hole, SpaceBox box) {
        for (Axis axis : Axis.values()) {
            int at = hole.at().along(axis);
            if (at < box.along(axis).from() || at > box.along(axis).to()) {
                return false;
            }
        }
        return true;
    }

    private Start start(PlugEnd end, List<Obstacle> obstacles) {
        for (int straight = keep; straight <= STRAIGHT_MAX_HMM; straight += STRAIGHT_STEP_HMM) {
            Start start = offTheWalls(end, straight);
            if (obstacles.stream().noneMatch(o -> o.isNear(start.at(), keep))) {
                return start;
            }
        }
        return offTheWalls(end, keep);
    }

    /** So far straight out of a plug, and aside as far as it takes to keep off the walls. */
    private Start offTheWalls(PlugEnd end, int straight) {
        PointHmm out = end.face().moved(end.out(), straight);
        PointHmm at = new PointHmm(
                within(out.x(), inside().x()), within(out.y(), inside().y()), within(out.z(), inside().z()));
        return new Start(at, end.face().squareWayTo(at));
    }

    private int within(int at, int size) {
        return Math.max(keep, Math.min(size - keep, at));
    }

    private PointHmm inside() {
        Shell.Interior interior = inspection.fitCase().chassis().shell().interior();
        return new PointHmm(
                interior.widthMm().valueHmm(),
                interior.depthMm().valueHmm(),
                interior.heightMm().valueHmm());
    }

    /** The air over the board where no cable is laid: its slab less a strip along the edges, up to the practice's height. */
    private Optional<SpaceBox> overBoard() {
        Pose bay = inspection.fitCase().chassis().inside().board().pose();
        int edge = (int) Math.round(cabling.way().boardEdgeMm() * HMM_PER_MM);
        int air = (int) Math.round(cabling.way().boardAirMm() * HMM_PER_MM);
        return bodies.stream()
                .filter(b -> b.id().equals("board"))
                .map(b -> b.boxes().get(0))
                .findFirst()
                .map(slab -> new SpaceBox(
                        "air over the board",
                        false,
                        0,
                        over(slab.x(), Axis.X, bay.height(), edge, air),
                        over(slab.y(), Axis.Y, bay.height(), edge, air),
                        over(slab.z(), Axis.Z, bay.height(), edge, air)));
    }

    private static SpaceBox.Reach over(SpaceBox.Reach slab, Axis axis, Heading up, int edge, int air) {
        if (axis != up.axis()) {
            return new SpaceBox.Reach(slab.from() + edge, slab.to() - edge);
        }
        return up.sign() > 0
                ? new SpaceBox.Reach(slab.from(), slab.to() + air)
                : new SpaceBox.Reach(slab.from() - air, slab.to());
    }

    /** What is free from a point in a direction until the first solid thing or the wall. */
    int freeFrom(PointHmm from, Heading out) {
        Axis axis = out.axis();
        int wall = out.sign() > 0 ? inside().along(axis) - from.along(axis) : from.along(axis);
        return bodies.stream()
                .flatMap(b -> solid(b).stream())
                .filter(b -> crosses(b, from, axis))
                .mapToInt(b -> out.sign() > 0
                        ? b.along(axis).from() - from.along(axis)
                        : from.along(axis) - b.along(axis).to())
                .filter(gap -> gap >= 0)
                .boxed()
                .min(Comparator.naturalOrder())
                .filter(gap -> gap < wall)
                .orElse(wall);
    }

    private static boolean crosses(SpaceBox box, PointHmm point, Axis along) {
        for (Axis axis : Axis.values()) {
            int at = point.along(axis);
            if (axis != along
                    && (at <= box.along(axis).from() || at >= box.along(axis).to())) {
                return false;
            }
        }
        return true;
    }
}
