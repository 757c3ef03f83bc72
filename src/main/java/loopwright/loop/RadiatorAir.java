package loopwright.loop;

import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Airflow, pressure and conductance of a radiator with its fans: where the fans' curve meets what resists them.
 *
 * <p><b>Units.</b> m³/h, Pa, W/K.
 *
 * <p><b>Valid for</b> equal fans, one in front of each section, none of which feeds another's section; air of
 * 1.2 kg/m³; coolant at 2 L/min and more. The inside pressure of the case is taken as the room's.
 *
 * <p><b>Accuracy.</b> ±15 % of the conductance at best (see {@link CoreSection}); push-pull reads high, as two close fans
 * do not quite add. Differences between two radiators, duties or panels are right in sign.
 *
 * <p><b>Source.</b> Fan laws: AMCA 201. Core: trade practice. Plates: {@link ThinPlate}.
 */
public final class RadiatorAir {

    /** Accuracy of the flow, absolute, m³/h: far below anything printed. */
    private static final double FLOW_ACCURACY_M3_PER_H = 1e-10;

    /** Accuracy of the flow, relative. */
    private static final double FLOW_ACCURACY = 1e-13;

    /** Order of the root finder's inverse polynomial; its own default. */
    private static final int ROOT_ORDER = 5;

    /** Most evaluations; a bracketed root of this kind takes about ten. */
    private static final int EVALUATIONS_MAX = 500;

    /** What a bound adds for the root finder's accuracy, relative: a thousand times {@link #FLOW_ACCURACY} and more. */
    private static final double BOUND_ALLOWANCE = 1e-9;

    private RadiatorAir() {}

    /**
     * Returns the operating point of the whole radiator.
     *
     * <p>A closed path has no flow, the fans' pressure at rest, and conducts nothing.
     *
     * @throws IllegalArgumentException if the fans are not the size of the radiator's pattern, or their curve is none
     */
    public static OperatingPoint operatingPoint(Radiator radiator, FanBank bank, AirPath path) {
        int sizeMm = bank.fan().frame().sizeMm();
        if (sizeMm != radiator.pattern().sizeMm()) {
            throw new IllegalArgumentException("fan " + bank.fan().id() + " is " + sizeMm + " mm but radiator "
                    + radiator.id() + " takes " + radiator.pattern());
        }
        FallingCurve fans = bank.section();
        if (path.isClosed()) {
            return new OperatingPoint(0, fans.first().y(), 0);
        }
        CoreSection core = new CoreSection(radiator);
        double flowM3PerH = sectionFlowM3PerH(fans, core, path);
        int sections = radiator.pattern().fans();
        return new OperatingPoint(
                sections * flowM3PerH, fans.at(flowM3PerH), sections * core.conductanceWPerK(flowM3PerH));
    }

    /**
     * Returns what the radiator can conduct at most with these fans, whatever the duty and whatever is in the air's way.
     *
     * <p>It is the value at full duty with an open path. Admissible, because conductance rises with flow
     * ({@link CoreSection#conductanceWPerK}); flow rises with speed (n²·p(Q/n) rises with n as p falls) and falls with the
     * path's loss, which falls with each open share. Rounded up for the root finder's accuracy.
     *
     * @param layers of fans, 1 or 2
     */
    public static double conductanceUpperBoundWPerK(Radiator radiator, Fan fan, int layers) {
        FanBank atFull = new FanBank(fan, layers, Duty.FULL);
        return operatingPoint(radiator, atFull, AirPath.OPEN).conductanceWPerK() * (1 + BOUND_ALLOWANCE);
    }

    private static double sectionFlowM3PerH(FallingCurve fans, CoreSection core, AirPath path) {
        UnivariateFunction surplusPa = flowM3PerH -> {
            double speed = core.faceSpeedMPerS(flowM3PerH);
            return fans.at(flowM3PerH) - core.resistancePa(speed) - path.resistancePa(speed);
        };
        // Positive without flow, negative at the free flow: exactly one root lies between, as the surplus falls.
        return new BracketingNthOrderBrentSolver(FLOW_ACCURACY, FLOW_ACCURACY_M3_PER_H, ROOT_ORDER)
                .solve(EVALUATIONS_MAX, surplusPa, 0, fans.last().x());
    }
}
