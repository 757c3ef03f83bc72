package loopwright.oracle.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.ModSeat;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.part.Cover;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.standard.Practice;
import loopwright.loop.Machine;
import loopwright.loop.air.AirPath;
import loopwright.oracle.OracleCase;
import loopwright.oracle.brute.BruteFits;

/** What air meets at a mount with a mod set, by the rules of a build alone. */
final class BruteAir {
    private static final double HMM_PER_M = 1e5;
    private static final double MM_PER_M = 1000;
    private static final double CM2_PER_M2 = 1e4;

    private final OracleCase question;
    private final Practice practice;
    private final RankFault fault;

    BruteAir(OracleCase question, RankFault fault) {
        this.question = question;
        this.practice = question.catalog().practice();
        this.fault = fault;
    }

    /** What air meets before a pattern whose fans are so thick. */
    Machine.MountAir meets(BruteFits fits, List<Mod> mods, Mount mount, Pattern pattern, int fanHmm) {
        Mount.Opening opening = mount.opening();
        double filter = opening.filterFreeArea().orElse(1.0);
        double depth = opening.outsideDepthMm().isUnknown()
                ? Double.POSITIVE_INFINITY
                : opening.outsideDepthMm().valueHmm();
        Optional<AirPath.Outlet> outlet = Optional.empty();
        for (Mod mod : mods) {
            for (Airway airway : mod.effect().airways()) {
                if (airway.mount().equals(mount.id())) {
                    filter = airway.filterFreeArea().orElse(filter);
                    depth += airway.addedDepthMm().map(d -> d.valueHmm()).orElse(0);
                }
            }
            for (RaisedCover raised : mod.effect().covers()) {
                if (raised.mount().equals(mount.id())) {
                    outlet = Optional.of(outlet(raised, fanHmm));
                }
            }
        }
        double open = mods.isEmpty() ? opening.freeArea() : Math.min(1, fits.freeArea(mount, pattern.sizeMm()));
        boolean before = open > opening.freeArea() || fault == RankFault.EDGES_ARE_FACES;
        AirPath path = new AirPath(
                open,
                before ? Mount.Where.FACE : opening.where(),
                filter < 1 && fault != RankFault.NO_FILTERS ? OptionalDouble.of(filter) : OptionalDouble.empty(),
                outlet,
                fault == RankFault.UNLIMITED_OUTSIDE ? Double.POSITIVE_INFINITY : depth / HMM_PER_M);
        return new Machine.MountAir(path, face(pattern));
    }

    private static AirPath.Face face(Pattern pattern) {
        double size = pattern.sizeMm() / MM_PER_M;
        return new AirPath.Face(pattern.fans() * size * size, 2 * (pattern.fans() + 1) * size);
    }

    private AirPath.Outlet outlet(RaisedCover raised, int fanHmm) {
        Cover cover = question.catalog().part(Cover.class, raised.cover());
        int inside = cover.body().insideHeightMm().valueHmm();
        int left = fault == RankFault.COVERS_ARE_EMPTY ? inside : inside - fanHmm;
        int gapHmm = Math.max(left, practice.room().plenumSolidMm().valueHmm());
        return new AirPath.Outlet(
                cover.skin().freeArea(), cover.skin().sideSlotAreaCm2() / CM2_PER_M2, gapHmm / HMM_PER_M);
    }

    Machine.RadiatorAt hung(Mount mount, Radiator radiator) {
        double masked = mount.opening().maskedShare().orElse(0.0);
        boolean sealed = mount.gasket().isPresent() && fault != RankFault.GASKETS_SEAL_NOTHING;
        double gapM = sealed ? 0 : practice.air().radiatorGapMm() / MM_PER_M;
        double gapM2 = gapM * face(radiator.pattern()).perimeterM();
        return new Machine.RadiatorAt(radiator, fault == RankFault.NOTHING_MASKS ? 0 : masked, gapM2);
    }

    /** Every way to the room but the mounts that carry something. */
    List<Machine.Vent> openings(BruteFits fits, Set<String> carrying) {
        List<Machine.Vent> out = new ArrayList<>();
        List<Mod> mods = fault == RankFault.EMPTY_MOUNTS_AS_DELIVERED ? List.of() : fits.mods();
        for (Mount mount : question.chassis().mounts()) {
            Optional<Pattern> pattern = largest(mount);
            if (pattern.isPresent() && !carrying.contains(mount.id()) && fault != RankFault.EMPTY_MOUNTS_CLOSED) {
                Machine.MountAir meets = meets(fits, mods, mount, pattern.get(), 0);
                out.add(new Machine.Vent(mount.id(), Optional.of(meets), 0));
            }
        }
        double usual = practice.air().caseLeakCm2();
        double own = question.chassis().shell().leakCm2().orElse(usual);
        double leak = fault == RankFault.USUAL_LEAKS_ONLY ? usual : own;
        out.add(new Machine.Vent("leaks", Optional.empty(), leak / CM2_PER_M2));
        return out;
    }

    /** The largest pattern of a mount: as delivered, else what any mod makes there. */
    private Optional<Pattern> largest(Mount mount) {
        TreeMap<Integer, Pattern> byArea = new TreeMap<>();
        for (Mount.Seat seat : mount.seats()) {
            byArea.put(area(seat.pattern()), seat.pattern());
        }
        if (byArea.isEmpty()) {
            for (Mod mod : question.chassis().mods()) {
                for (ModSeat made : mod.effect().seats()) {
                    if (made.mount().equals(mount.id())) {
                        byArea.put(area(made.seat().pattern()), made.seat().pattern());
                    }
                }
            }
        }
        return byArea.isEmpty()
                ? Optional.empty()
                : Optional.of(byArea.lastEntry().getValue());
    }

    private static int area(Pattern pattern) {
        return pattern.fans() * pattern.sizeMm() * pattern.sizeMm();
    }
}
