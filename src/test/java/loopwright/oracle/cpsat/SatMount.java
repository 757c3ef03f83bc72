package loopwright.oracle.cpsat;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.part.Cover;
import loopwright.quantity.Dimension;

/** One mount with one mod set: position variables and the shapes that may hang, each with its literal. */
final class SatMount {
    final Mount mount;
    final Face face;
    final SortedMap<String, Literal> shapes = new TreeMap<>();
    final List<SatBody> bodies = new ArrayList<>();
    final List<IntVar> moves = new ArrayList<>();
    private final SatFacts facts;
    private final Catalog catalog;
    private final List<Mod> done;
    private final List<Mount.Seat> seats = new ArrayList<>();

    SatMount(SatFacts facts, Catalog catalog, Mount mount, Face face, List<Mod> done) {
        this.facts = facts;
        this.catalog = catalog;
        this.mount = mount;
        this.face = face;
        this.done = done;
        List<Mod> windows = done.stream()
                .filter(m -> covers(m).stream().anyMatch(c -> c.over() == RaisedCover.Over.WINDOW))
                .toList();
        if (windows.isEmpty()) {
            seats.addAll(mount.seats());
        }
        for (Mod mod : windows.isEmpty() ? done : windows) {
            mod.effect().seats().stream()
                    .filter(s -> s.mount().equals(mount.id()))
                    .forEach(s -> seats.add(s.seat()));
        }
        seats.removeIf(s -> s.lengthwiseMm().stream().anyMatch(SatMount::blind)
                || s.sidewaysMm().stream().anyMatch(SatMount::blind));
        List<List<Integer>> along = new ArrayList<>(List.of());
        List<List<Integer>> across = new ArrayList<>();
        for (Mount.Seat s : seats) {
            s.lengthwiseMm().forEach(x -> along.add(List.of(x.from().valueHmm(), x.to().valueHmm())));
            s.sidewaysMm().forEach(x -> across.add(List.of(x.from().valueHmm(), x.to().valueHmm())));
        }
        IntVar u = facts.position(mount.id() + "-u", along.isEmpty() ? List.of(List.of(0, 0)) : along);
        IntVar v = facts.position(mount.id() + "-v", across.isEmpty() ? List.of(List.of(0, 0)) : across);
        IntVar still = facts.position(mount.id() + "-n", List.of(List.of(0, 0)));
        for (int axis = 0; axis < 3; axis++) {
            boolean isU = axis == SatShape.axis(mount.lengthwise());
            moves.add(isU ? u : axis == SatShape.axis(face.normal()) ? still : v);
        }
    }

    private static boolean blind(Span span) {
        return span.from().isUnknown() || span.to().isUnknown();
    }

    private List<RaisedCover> covers(Mod mod) {
        return mod.effect().covers().stream()
                .filter(c -> c.mount().equals(mount.id()))
                .toList();
    }

    IntVar u() {
        return moves.get(SatShape.axis(mount.lengthwise()));
    }

    IntVar v() {
        return moves.get(SatShape.sideways(mount, face));
    }

    /** Offers a shape; several of one text share a literal that needs one of them. */
    void offer(String text, List<SatShape> same, int wallHmm, double freeAreaMin) {
        List<Literal> kinds = new ArrayList<>();
        for (SatShape s : same) {
            Literal on = facts.model.newBoolVar(mount.id() + text);
            SatBody body =
                    s.body(same, on, mount, face, wallHmm, catalog.practice().room());
            List<Literal> here = seatFacts(s);
            if (body.blind || !breathes(s, freeAreaMin) || here.isEmpty()) {
                continue;
            }
            facts.rule(List.of(on), here);
            if (s.covered()) {
                facts.rule(List.of(on), cavities(s));
            }
            bodies.add(body);
            kinds.add(on);
        }
        if (!kinds.isEmpty()) {
            Literal chosen = facts.model.newBoolVar(text);
            kinds.forEach(k -> facts.model.addImplication(k, chosen));
            facts.rule(List.of(chosen), kinds);
            shapes.put(text, chosen);
        }
    }

    private List<Literal> seatFacts(SatShape s) {
        List<Literal> out = new ArrayList<>();
        for (Mount.Seat seat : seats) {
            if (seat.pattern().equals(s.radiator().pattern())) {
                for (Span a : seat.lengthwiseMm()) {
                    for (Span b : seat.sidewaysMm()) {
                        out.add(facts.all(List.of(
                                facts.within(u(), a.from().valueHmm(), a.to().valueHmm()),
                                facts.within(v(), b.from().valueHmm(), b.to().valueHmm()))));
                    }
                }
            }
        }
        return out;
    }

    private List<Literal> cavities(SatShape s) {
        List<Literal> out = new ArrayList<>();
        boolean rad = s.kind().equals("COVER_RADIATOR");
        for (Mod mod : done) {
            for (RaisedCover raised : covers(mod)) {
                Cover cover = catalog.part(Cover.class, raised.cover());
                Cover.Body b = cover.body();
                List<Dimension> used = List.of(
                        b.lengthMm(),
                        b.widthMm(),
                        b.wallMm(),
                        b.insideHeightMm(),
                        raised.lengthwiseMm(),
                        raised.sidewaysMm());
                boolean solid =
                        cover.skin().freeArea() < catalog.practice().air().solidSkinFreeAreaMin();
                var room = catalog.practice().room();
                int plenum = (solid ? room.plenumSolidMm() : room.plenumPerforatedMm()).valueHmm();
                Dimension tall = rad
                        ? s.radiator().body().thicknessMm()
                        : s.fan().frame().thicknessMm();
                if (used.stream().anyMatch(Dimension::isUnknown)
                        || tall.valueHmm() + plenum > b.insideHeightMm().valueHmm()) {
                    continue;
                }
                int wall = b.wallMm().valueHmm();
                int reachU = b.lengthMm().valueHmm() / 2 - wall - s.fanAreaHmm() / 2;
                int reachV = b.widthMm().valueHmm() / 2
                        - wall
                        - (rad
                                ? s.radiator().body().widthMm().valueHmm() / 2
                                : s.radiator().pattern().sizeMm() * 50);
                int cu = raised.lengthwiseMm().valueHmm();
                int cv = raised.sidewaysMm().valueHmm();
                int fromU = cu - reachU + (rad ? s.overhangHmm("LOW") : 0);
                int toU = cu + reachU - (rad ? s.overhangHmm("HIGH") : 0);
                if (fromU <= toU && reachV >= 0) {
                    out.add(facts.all(
                            List.of(facts.within(u(), fromU, toU), facts.within(v(), cv - reachV, cv + reachV))));
                }
            }
        }
        return out;
    }

    private boolean breathes(SatShape s, double freeAreaMin) {
        int depth = mount.opening().outsideDepthMm().valueHmm();
        boolean blind = false;
        boolean blindDepth = mount.opening().outsideDepthMm().isUnknown();
        double area = mount.opening().freeArea();
        for (Mod mod : done) {
            area = covers(mod).isEmpty() ? area : Math.max(area, 1);
            for (Airway a : mod.effect().airways()) {
                if (a.mount().equals(mount.id())) {
                    depth += a.addedDepthMm().map(Dimension::valueHmm).orElse(0);
                    blindDepth |= a.addedDepthMm().map(Dimension::isUnknown).orElse(false);
                    boolean usesCut = a.cut().isPresent() && a.cut().get() != Airway.Cut.FULL;
                    blind |= usesCut && a.cutMm().map(Dimension::isUnknown).orElse(false);
                    area = Math.max(area, area(a, s.radiator().pattern().sizeMm()));
                }
            }
        }
        boolean deep = !blindDepth
                && depth >= catalog.practice().air().outsideDepthMinMm().valueHmm();
        return !blind && area >= freeAreaMin && (s.covered() || deep);
    }

    private double area(Airway a, int fanMm) {
        double left = a.freeArea().orElse(a.cut().isPresent() ? 1.0 : 0.0);
        if (a.cut().isEmpty() || a.cut().get() == Airway.Cut.FULL) {
            return left;
        }
        double ring = 0;
        for (var f : catalog.standards().fans()) {
            ring = f.sizeMm() == fanMm ? f.ringMm().valueHmm() : ring;
        }
        double c = a.cutMm().map(Dimension::valueHmm).orElse(0);
        if (c >= ring) {
            return left;
        }
        double k = c / ring;
        return left
                * (a.cut().get() == Airway.Cut.RINGS ? k * k : 2 / Math.PI * (Math.asin(k) + k * Math.sqrt(1 - k * k)));
    }
}
