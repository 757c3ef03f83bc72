package loopwright.loop.exchange;

import java.util.List;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.standard.Practice;
import loopwright.loop.fluid.Air;

/**
 * A radiator's core: what passes from its coolant to the air, and what it resists the air.
 *
 * <p><b>Units.</b> SI; conductances in W/K of the whole radiator.
 *
 * <p><b>Valid for</b> cores 10 to 70 mm deep, 8 to 22 fins per inch, face speeds to about 3 m/s. Fins and tubes are the
 * catalogue's, else the workshop's usual ones. One bare radiator: what stands in the air's way is not in it.
 *
 * <p><b>Accuracy.</b> ±15 % at best without measured points, as the correlations scatter; with them one factor on the
 * conductance makes their geometric mean right.
 *
 * <p><b>Source.</b> {@link CoreInAir}, {@link FlatTube}, {@link Crossflow}.
 */
public final class RadiatorCore {

    private final CoreGeometry geometry;
    private final double finConductivityWPerMK;
    private final List<Radiator.AirLossPoint> airLoss;
    private final FlatTube tube;
    private final double calibration;
    private final boolean measured;

    private RadiatorCore(Radiator radiator, Radiator.Fins fins, Radiator.Tubes tubes) {
        geometry = CoreGeometry.of(radiator, fins, tubes);
        finConductivityWPerMK = fins.conductivityWPerMK();
        airLoss = radiator.core().measured().airLoss();
        tube = new FlatTube(geometry.tubes().gapM() / geometry.tubes().widthM());
        calibration = Calibration.factor(
                radiator.core().measured().heat(), geometry.faceAreaM2(), this::uncalibratedBenchWPerK);
        measured = !radiator.core().measured().heat().isEmpty();
    }

    private RadiatorCore(RadiatorCore core, double calibration) {
        this.geometry = core.geometry;
        this.finConductivityWPerMK = core.finConductivityWPerMK;
        this.airLoss = core.airLoss;
        this.tube = core.tube;
        this.measured = core.measured;
        this.calibration = calibration;
    }

    /**
     * Returns the core of a radiator.
     *
     * @param defaults fins and tubes where the radiator has none of its own
     * @throws IllegalArgumentException if the measures are no core's, or a measured point is beyond any exchanger
     */
    public static RadiatorCore of(Radiator radiator, Practice.Core defaults) {
        return new RadiatorCore(
                radiator,
                radiator.core().fins().orElse(defaults.fins()),
                radiator.core().tubes().orElse(defaults.tubes()));
    }

    /** Face of all sections, m². */
    public double faceAreaM2() {
        return geometry.faceAreaM2();
    }

    /** Returns the core in air of one state; tabulated, so make it once. */
    public CoreInAir in(Air air) {
        return in(air.densityKgPerM3(), air.viscosityPaS(), air.conductivityWPerMK(), air.heatCapacityJPerKgK());
    }

    /**
     * Returns the core in air of one state; tabulated, so make it once.
     *
     * @throws IllegalArgumentException if a property is not above 0
     */
    public CoreInAir in(
            double densityKgPerM3, double viscosityPaS, double conductivityWPerMK, double heatCapacityJPerKgK) {
        return in(new AirProperties(densityKgPerM3, viscosityPaS, conductivityWPerMK, heatCapacityJPerKgK));
    }

    CoreInAir in(AirProperties air) {
        return new CoreInAir(loss(air), airSide(air));
    }

    /** Loss by the formulas or the points themselves, not tabulated. */
    AirLoss loss(AirProperties air) {
        return airLoss.isEmpty() ? new FinLoss(geometry, air) : new MeasuredLoss(airLoss, geometry.faceAreaM2(), air);
    }

    /** Air side by the formulas, not tabulated. */
    AirSide airSide(AirProperties air) {
        return new AirSide(geometry, air, finConductivityWPerMK);
    }

    /**
     * Returns what the coolant's side conducts, W/K.
     *
     * @param flowM3PerS of coolant through the whole radiator, at least 0
     * @throws IllegalArgumentException if the flow or a property is outside what {@link FlatTube} allows
     */
    public double waterSideWPerK(
            double flowM3PerS,
            double densityKgPerM3,
            double viscosityPaS,
            double heatCapacityJPerKgK,
            double conductivityWPerMK) {
        TubeBank tubes = geometry.tubes();
        double diameterM = tubes.hydraulicDiameterM();
        double reynolds = densityKgPerM3 * flowM3PerS / tubes.passAreaM2() * diameterM / viscosityPaS;
        double prandtl = viscosityPaS * heatCapacityJPerKgK / conductivityWPerMK;
        return tube.nusselt(reynolds, prandtl) * conductivityWPerMK / diameterM * tubes.wallAreaM2();
    }

    /** Resistance of the tubes' walls, K/W; they are taken to be of the fins' metal. */
    public double wallKPerW() {
        TubeBank tubes = geometry.tubes();
        return tubes.wallM() / (tubes.conductivityWPerMK() * tubes.wallAreaM2());
    }

    /** The same core conducting so many times as much: for what it may be off by. */
    public RadiatorCore scaled(double factor) {
        return new RadiatorCore(this, calibration * factor);
    }

    /** Whether measured points calibrate it. */
    public boolean isMeasured() {
        return measured;
    }

    /** Factor on the conductance that makes the measured points right; 1 without any. */
    public double calibration() {
        return calibration;
    }

    /**
     * Returns what the core conducts from coolant to air, W/K: the UA of the transfer units.
     *
     * @param airSideWPerK above 0
     * @param waterSideWPerK above 0
     * @throws IllegalArgumentException if one is not, or NaN
     */
    public double conductanceUAWPerK(double airSideWPerK, double waterSideWPerK) {
        if (!(airSideWPerK > 0 && waterSideWPerK > 0)) {
            throw new IllegalArgumentException(
                    "both sides must conduct but were " + airSideWPerK + " and " + waterSideWPerK + " W/K");
        }
        return calibration * uncalibrated(airSideWPerK, waterSideWPerK);
    }

    private double uncalibrated(double airSideWPerK, double waterSideWPerK) {
        return 1 / (1 / airSideWPerK + wallKPerW() + 1 / waterSideWPerK);
    }

    private double uncalibratedBenchWPerK(double faceSpeedMPerS, double flowM3PerS) {
        double waterSide = waterSideWPerK(
                flowM3PerS, Bench.WATER_KG_PER_M3, Bench.WATER_PA_S, Bench.WATER_J_PER_KG_K, Bench.WATER_W_PER_M_K);
        return uncalibrated(airSide(Bench.AIR).conductanceWPerK(faceSpeedMPerS), waterSide);
    }
}
