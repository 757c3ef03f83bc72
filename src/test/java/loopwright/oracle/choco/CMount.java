package loopwright.oracle.choco;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.ModSeat;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.part.Cover;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/** Shape and position variables of one mount, and where its shapes may hang. */
final class CMount {
    final Mount mount;
    final Face face;
    final Axis across;
    final IntVar shape;
    final IntVar u;
    final IntVar v;
    private final CLogic logic;
    private final Catalog catalog;
    private final List<Mod> mods;
    private final List<BoolVar> done;
    private final boolean allowUnknown;
    private boolean leftOut;

    CMount(CLogic logic, Catalog catalog, Mount mount, Face face, List<Mod> mods, List<BoolVar> done, boolean unknown) {
        this.logic = logic;
        this.catalog = catalog;
        this.mount = mount;
        this.face = face;
        this.mods = mods;
        this.done = done;
        this.allowUnknown = unknown;
        this.across = CShape.CStackFrame.across(mount, face);
        int shapes = catalog.all(loopwright.catalog.part.Radiator.class).size()
                * catalog.all(loopwright.catalog.part.Fan.class).size()
                * 12;
        shape = logic.model.intVar(mount.id() + "-shape", 0, shapes);
        List<Span> along = new ArrayList<>();
        List<Span> aside = new ArrayList<>();
        allSeats().forEach(s -> {
            along.addAll(s.lengthwiseMm());
            aside.addAll(s.sidewaysMm());
        });
        u = logic.model.intVar(mount.id() + "-u", lows(along), highs(along));
        v = logic.model.intVar(mount.id() + "-v", lows(aside), highs(aside));
    }

    boolean leftOut() {
        return leftOut;
    }

    private List<Mount.Seat> allSeats() {
        List<Mount.Seat> out = new ArrayList<>(mount.seats());
        mods.forEach(m -> m.effect().seats().stream()
                .filter(s -> s.mount().equals(mount.id()))
                .map(ModSeat::seat)
                .forEach(out::add));
        return out;
    }

    private static int lows(List<Span> spans) {
        return spans.stream().mapToInt(CMount::low).min().orElse(0);
    }

    private static int highs(List<Span> spans) {
        return spans.stream().mapToInt(CMount::high).max().orElse(0);
    }

    private static int low(Span span) {
        return Math.min(span.from().valueHmm(), span.to().valueHmm());
    }

    private static int high(Span span) {
        return Math.max(span.from().valueHmm(), span.to().valueHmm());
    }

    /** Posts the seats, cover, opening and outside depth that shape number {@code k} asks for. */
    void post(int k, CShape s) {
        BoolVar here = logic.is(shape, k);
        logic.rule(List.of(here), seats(s));
        if (s.inCover()) {
            logic.rule(List.of(here), covers(s));
        } else {
            outside(here);
        }
        if (mount.opening().freeArea() < freeAreaMin) {
            logic.rule(List.of(here), openers(s.radiator().pattern().sizeMm()));
        }
        for (int m = 0; m < mods.size(); m++) {
            boolean blind = mods.get(m).effect().airways().stream()
                    .anyMatch(a -> a.mount().equals(mount.id())
                            && a.cut().filter(c -> c != Airway.Cut.FULL).isPresent()
                            && a.cutMm().filter(d -> d.isUnknown()).isPresent());
            if (blind) {
                forbidUnknown(List.of(here, done.get(m)));
            }
        }
    }

    /** Least share of free area, from the brief. */
    double freeAreaMin;

    private void forbidUnknown(List<BoolVar> when) {
        if (!allowUnknown) {
            leftOut = true;
            logic.rule(when, List.of());
        }
    }

    private boolean drop(boolean unknown) {
        leftOut |= unknown && !allowUnknown;
        return unknown && !allowUnknown;
    }

    private List<BoolVar> seats(CShape s) {
        List<BoolVar> windows = new ArrayList<>();
        for (int m = 0; m < mods.size(); m++) {
            if (hasWindow(mods.get(m))) {
                windows.add(done.get(m).not());
            }
        }
        List<BoolVar> out = new ArrayList<>();
        for (Mount.Seat seat : mount.seats()) {
            seat(seat, s, windows, out);
        }
        for (int m = 0; m < mods.size(); m++) {
            for (ModSeat made : mods.get(m).effect().seats()) {
                if (made.mount().equals(mount.id())) {
                    List<BoolVar> when = new ArrayList<>(hasWindow(mods.get(m)) ? List.of() : windows);
                    when.add(done.get(m));
                    seat(made.seat(), s, when, out);
                }
            }
        }
        return out;
    }

    private boolean hasWindow(Mod mod) {
        return mod.effect().covers().stream()
                .anyMatch(c -> c.mount().equals(mount.id()) && c.over() == RaisedCover.Over.WINDOW);
    }

    private void seat(Mount.Seat seat, CShape s, List<BoolVar> when, List<BoolVar> out) {
        if (!seat.pattern().equals(s.radiator().pattern())) {
            return;
        }
        boolean unknown = java.util.stream.Stream.concat(seat.lengthwiseMm().stream(), seat.sidewaysMm().stream())
                .anyMatch(span -> span.from().isUnknown() || span.to().isUnknown());
        if (drop(unknown)) {
            return;
        }
        for (Span along : seat.lengthwiseMm()) {
            for (Span aside : seat.sidewaysMm()) {
                List<BoolVar> all = new ArrayList<>(when);
                all.add(logic.atLeast(u, low(along)));
                all.add(logic.atMost(u, high(along)));
                all.add(logic.atLeast(v, low(aside)));
                all.add(logic.atMost(v, high(aside)));
                out.add(logic.all(all));
            }
        }
    }

    private List<BoolVar> covers(CShape s) {
        List<BoolVar> out = new ArrayList<>();
        for (int m = 0; m < mods.size(); m++) {
            for (RaisedCover raised : mods.get(m).effect().covers()) {
                if (!raised.mount().equals(mount.id())) {
                    continue;
                }
                Cover cover = catalog.part(Cover.class, raised.cover());
                Cover.Body b = cover.body();
                boolean unknown = List.of(
                                b.lengthMm(),
                                b.widthMm(),
                                b.wallMm(),
                                b.insideHeightMm(),
                                raised.lengthwiseMm(),
                                raised.sidewaysMm())
                        .stream()
                        .anyMatch(d -> d.isUnknown());
                if (drop(unknown)) {
                    continue;
                }
                out.add(cavity(s, done.get(m), raised, cover));
            }
        }
        return out;
    }

    private BoolVar cavity(CShape s, BoolVar mod, RaisedCover raised, Cover cover) {
        var room = catalog.practice().room();
        boolean perforated = cover.skin().freeArea() >= catalog.practice().air().solidSkinFreeAreaMin();
        int plenum = (perforated ? room.plenumPerforatedMm() : room.plenumSolidMm()).valueHmm();
        boolean holdsRadiator = s.layers().startsWith("R");
        var rad = s.radiator().body();
        int tall = (holdsRadiator ? rad.thicknessMm() : s.fan().frame().thicknessMm()).valueHmm();
        if (tall + plenum > cover.body().insideHeightMm().valueHmm()) {
            return logic.constant(false);
        }
        int port = holdsRadiator ? rad.portOverhangMm().valueHmm() : 0;
        int blank = holdsRadiator ? rad.blankOverhangMm().valueHmm() : 0;
        int toLow = s.fansHmm() / 2 + (s.atHigh() ? blank : port);
        int toHigh = s.fansHmm() / 2 + (s.atHigh() ? port : blank);
        int toSide = holdsRadiator
                ? rad.widthMm().valueHmm() / 2
                : s.radiator().pattern().sizeMm() * 50;
        int wall = cover.body().wallMm().valueHmm();
        int long2 = cover.body().lengthMm().valueHmm() / 2 - wall;
        int wide2 = cover.body().widthMm().valueHmm() / 2 - wall;
        int cu = raised.lengthwiseMm().valueHmm();
        int cv = raised.sidewaysMm().valueHmm();
        return logic.all(List.of(
                mod,
                logic.atLeast(u, cu - long2 + toLow),
                logic.atMost(u, cu + long2 - toHigh),
                logic.atLeast(v, cv - wide2 + toSide),
                logic.atMost(v, cv + wide2 - toSide)));
    }

    private void outside(BoolVar here) {
        int[] gains = new int[mods.size()];
        for (int m = 0; m < mods.size(); m++) {
            for (Airway a : mods.get(m).effect().airways()) {
                if (a.mount().equals(mount.id()) && a.addedDepthMm().isPresent()) {
                    gains[m] += a.addedDepthMm().get().valueHmm();
                    if (a.addedDepthMm().get().isUnknown()) {
                        forbidUnknown(List.of(here, done.get(m)));
                    }
                }
            }
        }
        if (mount.opening().outsideDepthMm().isUnknown()) {
            forbidUnknown(List.of(here));
        }
        int lacks = catalog.practice().air().outsideDepthMinMm().valueHmm()
                - mount.opening().outsideDepthMm().valueHmm();
        if (lacks > 0) {
            Constraint enough = mods.isEmpty()
                    ? logic.model.falseConstraint()
                    : logic.model.scalar(done.toArray(BoolVar[]::new), gains, ">=", lacks);
            logic.rule(List.of(here), List.of(enough.reify()));
        }
    }

    private List<BoolVar> openers(int fanMm) {
        TreeSet<Integer> out = new TreeSet<>();
        for (int m = 0; m < mods.size(); m++) {
            Mod.Effect effect = mods.get(m).effect();
            boolean cover = effect.covers().stream().anyMatch(c -> c.mount().equals(mount.id()));
            boolean air = effect.airways().stream()
                    .anyMatch(a -> a.mount().equals(mount.id()) && opens(a, fanMm) >= freeAreaMin);
            if (air || (cover && freeAreaMin <= 1)) {
                out.add(m);
            }
        }
        return out.stream().map(done::get).toList();
    }

    private double opens(Airway airway, int fanMm) {
        if (airway.cut().isEmpty()) {
            return airway.freeArea().orElse(0.0);
        }
        double ring = catalog.standards().fans().stream()
                .filter(f -> f.sizeMm() == fanMm)
                .mapToInt(f -> f.ringMm().valueHmm())
                .findAny()
                .orElseThrow();
        double k = Math.min(1, airway.cutMm().map(d -> d.valueHmm()).orElse(0) / ring);
        double share = switch (airway.cut().get()) {
            case FULL -> 1;
            case RINGS -> k * k;
            case STRIP -> 2 / Math.PI * (Math.asin(k) + k * Math.sqrt(1 - k * k));
        };
        return share * airway.freeArea().orElse(1.0);
    }
}
