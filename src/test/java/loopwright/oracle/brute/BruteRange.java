package loopwright.oracle.brute;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.ModSeat;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.part.Cover;
import loopwright.catalog.standard.Practice;

/** Where a shape may hang on a mount with a mod set: every integer position, one by one. */
final class BruteRange {
    private final Catalog catalog;
    private final double freeAreaMin;
    private final Fault fault;
    private boolean leftOut;

    BruteRange(Catalog catalog, double freeAreaMin, Fault fault) {
        this.catalog = catalog;
        this.freeAreaMin = freeAreaMin;
        this.fault = fault;
    }

    /** Whether a position was left out because something is unknown. */
    boolean leftOut() {
        return leftOut;
    }

    List<int[]> positions(Mount mount, BruteShape shape, List<Mod> mods, boolean allowUnknown) {
        Ruler ruler = new Ruler();
        boolean breathes = freeArea(mount, shape.radiator().pattern().sizeMm(), mods, ruler) >= freeAreaMin
                && (shape.way().usesCover() || outsideDepth(mount, mods, ruler));
        if (!breathes || dropped(ruler, allowUnknown)) {
            return List.of();
        }
        return seated(mount, shape, mods, allowUnknown);
    }

    /** Every position that seats and covers give, whatever air there is. */
    List<int[]> seated(Mount mount, BruteShape shape, List<Mod> mods, boolean allowUnknown) {
        Set<List<Integer>> found = new TreeSet<>((a, b) ->
                a.get(0).equals(b.get(0)) ? Integer.compare(a.get(1), b.get(1)) : Integer.compare(a.get(0), b.get(0)));
        for (Mount.Seat seat : seats(mount, mods)) {
            Ruler seatRuler = new Ruler();
            if (!seat.pattern().equals(shape.radiator().pattern())) {
                continue;
            }
            Set<Integer> along = walk(seat.lengthwiseMm(), seatRuler);
            Set<Integer> across = walk(seat.sidewaysMm(), seatRuler);
            if (dropped(seatRuler, allowUnknown)) {
                continue;
            }
            for (int u : along) {
                for (int v : across) {
                    if (!shape.way().usesCover() || inACover(mount, shape, mods, allowUnknown, u, v)) {
                        found.add(List.of(u, v));
                    }
                }
            }
        }
        List<int[]> out = new ArrayList<>();
        found.forEach(p -> out.add(new int[] {p.get(0), p.get(1)}));
        return out;
    }

    private boolean dropped(Ruler ruler, boolean allowUnknown) {
        boolean drop = ruler.sawUnknown() && !allowUnknown;
        leftOut |= drop;
        return drop;
    }

    private Set<Integer> walk(List<Span> spans, Ruler ruler) {
        Set<Integer> out = new TreeSet<>();
        int step = fault == Fault.MM_GRID ? 100 : 1;
        for (Span span : spans) {
            int one = ruler.hmm(span.from());
            int other = ruler.hmm(span.to());
            for (int p = Math.min(one, other); p <= Math.max(one, other); p += step) {
                out.add(p);
            }
        }
        return out;
    }

    List<Mount.Seat> seats(Mount mount, List<Mod> mods) {
        List<Mount.Seat> windows = new ArrayList<>();
        List<Mount.Seat> usual = new ArrayList<>(mount.seats());
        boolean window = false;
        for (Mod mod : mods) {
            List<Mount.Seat> made = mod.effect().seats().stream()
                    .filter(s -> s.mount().equals(mount.id()))
                    .map(ModSeat::seat)
                    .toList();
            usual.addAll(made);
            for (RaisedCover cover : mod.effect().covers()) {
                if (cover.mount().equals(mount.id()) && cover.over() == RaisedCover.Over.WINDOW) {
                    window = true;
                    windows.addAll(made);
                }
            }
        }
        return window && fault != Fault.WINDOW_KEEPS_SEATS ? windows : usual;
    }

    private boolean inACover(Mount mount, BruteShape shape, List<Mod> mods, boolean allowUnknown, int u, int v) {
        for (Mod mod : mods) {
            for (RaisedCover raised : mod.effect().covers()) {
                Ruler ruler = new Ruler();
                if (raised.mount().equals(mount.id())
                        && inCover(raised, shape, ruler, u, v)
                        && !dropped(ruler, allowUnknown)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean inCover(RaisedCover raised, BruteShape shape, Ruler ruler, int u, int v) {
        Cover cover = catalog.part(Cover.class, raised.cover());
        Practice practice = catalog.practice();
        boolean solid = cover.skin().freeArea() < practice.air().solidSkinFreeAreaMin();
        int plenum = (solid ? practice.room().plenumSolidMm() : practice.room().plenumPerforatedMm()).valueHmm();
        int wall = ruler.hmm(cover.body().wallMm());
        int freeAlong = ruler.hmm(cover.body().lengthMm()) / 2 - wall;
        int freeAcross = ruler.hmm(cover.body().widthMm()) / 2 - wall;
        int centreU = ruler.hmm(raised.lengthwiseMm());
        int centreV = ruler.hmm(raised.sidewaysMm());
        int inside = ruler.hmm(cover.body().insideHeightMm());
        int low = shape.fanAreaHmm() / 2;
        int high = low;
        int aside = shape.radiator().pattern().sizeMm() * 50;
        int tall = shape.fan().frame().thicknessMm().valueHmm();
        if (shape.way() == BruteShape.Way.COVER_RADIATOR) {
            int port = shape.radiator().body().portOverhangMm().valueHmm();
            int blank = shape.radiator().body().blankOverhangMm().valueHmm();
            low += shape.portsHigh() ? blank : port;
            high += shape.portsHigh() ? port : blank;
            aside = shape.radiator().body().widthMm().valueHmm() / 2;
            tall = shape.radiator().body().thicknessMm().valueHmm();
        }
        return tall + plenum <= inside
                && u - low >= centreU - freeAlong
                && u + high <= centreU + freeAlong
                && v - aside >= centreV - freeAcross
                && v + aside <= centreV + freeAcross;
    }

    boolean outsideDepth(Mount mount, List<Mod> mods, Ruler ruler) {
        int depth = ruler.hmm(mount.opening().outsideDepthMm());
        for (Mod mod : mods) {
            for (Airway airway : mod.effect().airways()) {
                if (airway.mount().equals(mount.id()) && airway.addedDepthMm().isPresent()) {
                    depth += ruler.hmm(airway.addedDepthMm().orElseThrow());
                }
            }
        }
        return depth >= catalog.practice().air().outsideDepthMinMm().valueHmm();
    }

    double freeArea(Mount mount, int fanMm, List<Mod> mods, Ruler ruler) {
        double best = mount.opening().freeArea();
        for (Mod mod : mods) {
            for (Airway airway : mod.effect().airways()) {
                if (airway.mount().equals(mount.id())) {
                    best = Math.max(best, share(airway, fanMm, ruler));
                }
            }
            for (RaisedCover cover : mod.effect().covers()) {
                if (cover.mount().equals(mount.id())) {
                    best = Math.max(best, 1);
                }
            }
        }
        return best;
    }

    private double share(Airway airway, int fanMm, Ruler ruler) {
        if (airway.cut().isEmpty()) {
            return airway.freeArea().orElse(0.0);
        }
        double left = airway.freeArea().orElse(1.0);
        if (airway.cut().get() == Airway.Cut.FULL) {
            return left;
        }
        if (airway.cutMm().isEmpty()) {
            return 0;
        }
        int ring = catalog.standards().fans().stream()
                .filter(f -> f.sizeMm() == fanMm)
                .findFirst()
                .orElseThrow()
                .ringMm()
                .valueHmm();
        double k = (double) ruler.hmm(airway.cutMm().get()) / ring;
        if (airway.cut().get() == Airway.Cut.RINGS) {
            return left * Math.min(1, k * k);
        }
        return k >= 1 ? left : left * 2 / Math.PI * (Math.asin(k) + k * Math.sqrt(1 - k * k));
    }
}
