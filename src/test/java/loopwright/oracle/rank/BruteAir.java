package loopwright.oracle.rank;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import loopwright.catalog.Catalog;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.part.Cover;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.loop.AirPath;
import loopwright.loop.Duty;
import loopwright.loop.FanBank;
import loopwright.loop.RadiatorAir;
import loopwright.oracle.brute.BruteFits;
import loopwright.oracle.brute.BruteHung;

/** The air that stacks get, and what radiators conduct with it. */
final class BruteAir {
    private static final double CM2_PER_HMM2 = 1e-6;

    private record Asked(Radiator radiator, Fan fan, int layers, int dutyPercent, AirPath path) {}

    private final Catalog catalog;
    private final Map<Asked, Double> known = new HashMap<>();

    BruteAir(Catalog catalog) {
        this.catalog = catalog;
    }

    AirPath path(BruteFits fits, BruteHung hung) {
        double filter = hung.mount().opening().filterFreeArea().orElse(1.0);
        OptionalDouble outlet = OptionalDouble.empty();
        for (Mod mod : fits.mods()) {
            for (Airway airway : mod.effect().airways()) {
                if (airway.mount().equals(hung.mount().id())) {
                    filter = airway.filterFreeArea().orElse(filter);
                }
            }
            for (RaisedCover raised : mod.effect().covers()) {
                if (raised.mount().equals(hung.mount().id())) {
                    outlet = OptionalDouble.of(outlet(catalog.part(Cover.class, raised.cover()), hung));
                }
            }
        }
        return new AirPath(
                freeArea(fits, hung.mount(), hung.pattern().sizeMm()),
                filter < 1 ? OptionalDouble.of(filter) : OptionalDouble.empty(),
                outlet);
    }

    private static double freeArea(BruteFits fits, Mount mount, int sizeMm) {
        return Math.min(1, fits.freeArea(mount, sizeMm));
    }

    private double outlet(Cover cover, BruteHung hung) {
        double ringHmm = catalog.standards().fans().stream()
                .filter(f -> f.sizeMm() == hung.pattern().sizeMm())
                .findFirst()
                .orElseThrow()
                .ringMm()
                .valueHmm();
        double sweptCm2 = hung.pattern().fans() * Math.PI / 4 * ringHmm * ringHmm * CM2_PER_HMM2;
        return Math.min(1, cover.skin().freeArea() + cover.skin().sideSlotAreaCm2() / sweptCm2);
    }

    double conductanceWPerK(Radiator radiator, Fan fan, int layers, int dutyPercent, AirPath path) {
        return known.computeIfAbsent(
                new Asked(radiator, fan, layers, dutyPercent, path),
                a -> RadiatorAir.operatingPoint(radiator, new FanBank(fan, layers, new Duty(dutyPercent)), path)
                        .conductanceWPerK());
    }

    /** The duties of a grid. */
    static List<Integer> dutiesPercent(int stepPercent) {
        return java.util.stream.IntStream.iterate(100, d -> d > 0, d -> d - stepPercent)
                .boxed()
                .toList();
    }
}
