package loopwright.testing;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.basis.SizeMm;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.ScrewThread;
import loopwright.catalog.part.Tube;
import loopwright.catalog.standard.Practice;
import loopwright.loop.air.AirPath;
import loopwright.quantity.Dimension;

/** Invented parts with only the figures that the physics of a whole machine cares about. */
public final class MachineParts {

    /** The demo workshop's practice. */
    public static final Practice PRACTICE =
            CatalogReader.read(Path.of("catalogs")).practice();

    /** The trade's 120 × 25 pressure fan at 1850 rpm: free flow, m³/h; common practice, no source. */
    public static final double PRESSURE_FREE_M3_PER_H = 117;

    /** The same fan's pressure without flow, Pa. */
    public static final double PRESSURE_SHUT_OFF_PA = 28.3;

    /** The speed that those two are for. */
    public static final double PRESSURE_RPM = 1850;

    private static final Purchase BUY = new Purchase(0, 0);
    private static final Dimension NONE = Dimension.ofHmm(0);
    private static final SizeMm SIZE = new SizeMm(NONE, NONE, NONE);

    /** Steps in which a curve is given. */
    private static final int STEPS = 20;

    private MachineParts() {}

    /** A fan with the trade's shape of curve, P = Pmax·(1 − (Q/Qmax)^1.5), 23 dB(A) at full speed. */
    public static Fan fan(String id, int sizeMm, double freeM3PerH, double shutOffPa, double dutyMinPercent) {
        List<Fan.CurvePoint> curve = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double share = (double) i / STEPS;
            curve.add(new Fan.CurvePoint(share * freeM3PerH, shutOffPa * (1 - StrictMath.pow(share, 1.5))));
        }
        return fan(id, sizeMm, dutyMinPercent, curve);
    }

    /** A fan with any curve. */
    public static Fan fan(String id, int sizeMm, double dutyMinPercent, List<Fan.CurvePoint> curve) {
        return new Fan(
                id,
                id,
                Optional.empty(),
                BUY,
                new Fan.Frame(sizeMm, Dimension.ofHmm(2500), 150),
                new Fan.Air(1300, dutyMinPercent, curve, 23),
                new Fan.Electric(0.1, 0.2));
    }

    /** The trade's 120 × 25 pressure fan, made for a full speed. */
    public static Fan pressureFan(double rpm) {
        double share = rpm / PRESSURE_RPM;
        return fan("pressure-" + rpm, 120, PRESSURE_FREE_M3_PER_H * share, PRESSURE_SHUT_OFF_PA * share * share, 10);
    }

    /** A radiator with the workshop's usual fins and tubes and nothing measured; its id tells all of it. */
    public static Radiator radiator(String pattern, double depthMm, double finsPerInch, int tubeRows) {
        String id = pattern + "-" + depthMm + "-" + finsPerInch + "-" + tubeRows;
        return radiator(id, pattern, depthMm, finsPerInch, tubeRows, Radiator.Measured.NOTHING);
    }

    /** The 30 mm body, 20 mm of core with 16 fins an inch, with what a bench found. */
    public static Radiator measured(String id, String pattern, Radiator.Measured measured) {
        return radiator(id, pattern, 20, 16, 1, measured);
    }

    @SuppressWarnings("TooManyParameters")
    private static Radiator radiator(
            String id, String pattern, double depthMm, double finsPerInch, int rows, Radiator.Measured measured) {
        return new Radiator(
                id,
                id,
                Optional.empty(),
                BUY,
                Pattern.parse(pattern),
                new Radiator.Body(NONE, NONE, NONE, NONE, new Radiator.Seat(ScrewThread.M3, NONE, NONE), 700),
                new Radiator.Ports(List.of(), Radiator.Metal.COPPER),
                new Radiator.Core(
                        depthMm, finsPerInch, rows, 120, loss(2.5), Optional.empty(), Optional.empty(), measured));
    }

    /** A block's sheet: its loss at 4 L/min and its resistance. */
    public static Block.Flow block(double lossKPa, double resistanceKPerW) {
        return new Block.Flow(loss(lossKPa), resistanceKPerW, Radiator.Metal.COPPER, 20);
    }

    private static List<Block.LossPoint> loss(double lossKPa) {
        return List.of(new Block.LossPoint(0, 0), new Block.LossPoint(4, lossKPa));
    }

    /** A pump with the trade's shape of curve, P = P0·(1 − (Q/Qmax)^1.6), least duty 20 %, 30 dB(A). */
    public static Pump pump(double headKPa, double freeLPerMin, double heatW) {
        List<Pump.CurvePoint> curve = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double share = (double) i / STEPS;
            curve.add(new Pump.CurvePoint(share * freeLPerMin, headKPa * (1 - StrictMath.pow(share, 1.6))));
        }
        return pump("pump-" + headKPa + "-" + freeLPerMin + "-" + heatW, curve, heatW);
    }

    /** A pump with any curve. */
    public static Pump pump(String id, List<Pump.CurvePoint> curve, double heatW) {
        return new Pump(
                id,
                id,
                Optional.empty(),
                BUY,
                Pump.Kind.PUMP_RESERVOIR,
                SIZE,
                new Pump.Water(curve, 50, NONE),
                new Pump.Electric(heatW, heatW, 20, 30));
    }

    /** Water, or glycol by mass. */
    public static Coolant coolant(Coolant.BaseLiquid base, double glycolMassPercent) {
        String id = base + "-" + glycolMassPercent;
        Optional<Double> share = base == Coolant.BaseLiquid.WATER ? Optional.empty() : Optional.of(glycolMassPercent);
        return new Coolant(id, id, Optional.empty(), BUY, base, share, Optional.empty(), true, 12);
    }

    /** Tube of a bore. */
    public static Tube tube(double boreMm) {
        Dimension bore = Dimension.ofHmm((int) Math.round(boreMm * 100));
        return new Tube("tube-" + boreMm, "Tube", Optional.empty(), BUY, Tube.Kind.SOFT, bore, bore, bore);
    }

    /** The fans' face of a pattern. */
    public static AirPath.Face face(Pattern pattern) {
        double sizeM = pattern.sizeMm() * 1e-3;
        return new AirPath.Face(pattern.fans() * sizeM * sizeM, 2 * sizeM * (pattern.fans() + 1));
    }
}
