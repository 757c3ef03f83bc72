package loopwright.rank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.part.Cover;
import loopwright.catalog.part.Radiator;
import loopwright.fit.FitCase;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.Openings;
import loopwright.loop.Machine;
import loopwright.loop.air.AirPath;
import loopwright.quantity.Units;

/**
 * What air meets at the mounts of a case: paths of stacks, openings of empty mounts, and the case's own leaks.
 *
 * <p>Where a fan layer sits in a stack (inside or in the cover, before or behind the radiator) makes no difference here, so
 * that layouts that take the same parts share their air.
 */
public final class StackAir {

    /** What the case's own seams and slots are called. */
    public static final String LEAKS = "seams and slots";

    private final FitCase fitCase;

    /** The air of a case. */
    public StackAir(FitCase fitCase) {
        this.fitCase = fitCase;
    }

    /** What air passes at a mount that carries a pattern, with a mod set, and the face of its fans. */
    public Machine.MountAir at(Mount mount, Pattern pattern, int fanThicknessHmm, ModSet mods) {
        Openings openings = fitCase.openings();
        double filter = openings.filterShare(mount, mods);
        boolean measured = !mount.opening().outsideDepthMm().isUnknown();
        AirPath path = new AirPath(
                openings.freeArea(mount, pattern, mods),
                openings.where(mount, pattern, mods),
                filter < 1 ? OptionalDouble.of(filter) : OptionalDouble.empty(),
                openings.cover(mount, mods).map(c -> outlet(c, fanThicknessHmm)),
                measured ? openings.outsideDepthHmm(mount, mods) * Units.M_PER_HMM : Double.POSITIVE_INFINITY);
        return new Machine.MountAir(path, face(pattern));
    }

    /** The fans' squares. */
    static AirPath.Face face(Pattern pattern) {
        double sizeM = pattern.sizeMm() * Units.M_PER_MM;
        return new AirPath.Face(pattern.fans() * sizeM * sizeM, 2 * sizeM * (pattern.fans() + 1));
    }

    /**
     * A cover's outlet; the air turns towards its slots in what the fans leave of its height, and at least in the plenum that
     * fans under a solid skin are given.
     */
    private AirPath.Outlet outlet(RaisedCover raised, int fanThicknessHmm) {
        Cover cover = fitCase.catalog().part(Cover.class, raised.cover());
        int left = cover.body().insideHeightMm().valueHmm() - fanThicknessHmm;
        int plenum = fitCase.catalog().practice().room().plenumSolidMm().valueHmm();
        return new AirPath.Outlet(
                cover.skin().freeArea(),
                cover.skin().sideSlotAreaCm2() * Units.M2_PER_CM2,
                Math.max(left, plenum) * Units.M_PER_HMM);
    }

    /** A radiator as it hangs on a mount: what masks its core, and the gap that no gasket seals. */
    Machine.RadiatorAt radiator(Mount mount, Radiator radiator) {
        double gapM = mount.gasket().isPresent()
                ? 0
                : fitCase.catalog().practice().air().radiatorGapMm() * Units.M_PER_MM;
        return new Machine.RadiatorAt(
                radiator,
                mount.opening().maskedShare().orElse(0.0),
                gapM * face(radiator.pattern()).perimeterM());
    }

    /**
     * The ways to the room without fans: empty mounts in the chassis's order, then the case's own leaks.
     *
     * @param used indexes of the mounts that carry something
     */
    public List<Machine.Vent> vents(Set<Integer> used, ModSet mods) {
        List<Machine.Vent> out = new ArrayList<>();
        List<Mount> mounts = fitCase.chassis().mounts();
        for (int i = 0; i < mounts.size(); i++) {
            Mount mount = mounts.get(i);
            Optional<Pattern> pattern = largest(mount);
            if (!used.contains(i) && pattern.isPresent()) {
                out.add(new Machine.Vent(mount.id(), Optional.of(at(mount, pattern.get(), 0, mods)), 0));
            }
        }
        double leakCm2 = fitCase.chassis()
                .shell()
                .leakCm2()
                .orElse(fitCase.catalog().practice().air().caseLeakCm2());
        out.add(new Machine.Vent(LEAKS, Optional.empty(), leakCm2 * Units.M2_PER_CM2));
        return out;
    }

    /** The pattern whose area stands for an empty mount's face: its largest as delivered, else the largest any mod makes. */
    private Optional<Pattern> largest(Mount mount) {
        Comparator<Pattern> byArea = Comparator.comparingInt((Pattern p) -> p.fans() * p.sizeMm() * p.sizeMm())
                .thenComparing(Pattern::toString);
        Optional<Pattern> own = mount.seats().stream().map(Mount.Seat::pattern).max(byArea);
        return own.isPresent()
                ? own
                : fitCase.chassis().mods().stream()
                        .map(Mod::effect)
                        .flatMap(e -> e.seats().stream())
                        .flatMap(s -> s.mount().equals(mount.id())
                                ? Stream.of(s.seat().pattern())
                                : Stream.empty())
                        .max(byArea);
    }

    /** The mounts that stacks hang on. */
    public static Set<Integer> used(List<Stack> stacks) {
        Set<Integer> out = new java.util.TreeSet<>();
        stacks.forEach(s -> out.add(s.frame().index()));
        return out;
    }
}
