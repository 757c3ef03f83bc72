package loopwright.loop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.ScrewThread;
import loopwright.quantity.Dimension;
import loopwright.testing.SmallParts;

/** Invented radiators and fans with only the figures that air cares about. */
final class SampleParts {

    /** 120 × 25 pressure fan of the trade's table: 1850 rpm, 117 m³/h, 28.3 Pa, 31 dB(A). */
    static final Fan PRESSURE_120 = fan(120, 1850, 117, 28.3);

    /** Steps in which the fan's curve is given. */
    private static final int STEPS = 20;

    private SampleParts() {}

    /** A fan with the trade's curve shape, P = Pmax·(1 − (Q/Qmax)^1.5), least duty 10 %. */
    static Fan fan(int sizeMm, double speedMaxRpm, double flowMaxM3PerH, double pressureMaxPa) {
        List<Fan.CurvePoint> curve = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double share = (double) i / STEPS;
            curve.add(new Fan.CurvePoint(share * flowMaxM3PerH, pressureMaxPa * (1 - StrictMath.pow(share, 1.5))));
        }
        return new Fan(
                "fan-" + sizeMm,
                "Sample fan",
                Optional.empty(),
                new Purchase(0, 0),
                new Fan.Frame(sizeMm, mm(25), 150),
                new Fan.Air(speedMaxRpm, 10, curve, 31),
                new Fan.Electric(0.18, 0.27));
    }

    static Radiator radiator(Pattern pattern, double coreMm, double finsPerInch) {
        Radiator.Seat seat = new Radiator.Seat(ScrewThread.M3, mm(1), mm(4));
        return new Radiator(
                "radiator",
                "Sample radiator",
                Optional.empty(),
                new Purchase(0, 0),
                pattern,
                new Radiator.Body(mm(120), mm(30), mm(20), mm(10), seat, 700),
                new Radiator.Ports(List.of(), Radiator.Metal.COPPER),
                SmallParts.core(coreMm, finsPerInch, 1, 120));
    }

    private static Dimension mm(int mm) {
        return Dimension.ofHmm(mm * 100);
    }
}
