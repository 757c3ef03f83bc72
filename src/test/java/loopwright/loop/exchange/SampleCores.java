package loopwright.loop.exchange;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.standard.Practice;
import loopwright.quantity.Dimension;
import loopwright.testing.SmallParts;

/** Radiators with the demo workshop's usual fins and tubes. */
final class SampleCores {

    /** Air of 25 °C and 101 325 Pa: ideal gas, U.S. Standard Atmosphere 1976. */
    static final AirProperties AIR = new AirProperties(1.18391, 1.8372e-5, 0.02611, 1006);

    /** Air of 40 °C in 2000 m: thin and hot. */
    static final AirProperties THIN_AIR = new AirProperties(0.8844, 1.9076e-5, 0.02727, 1006);

    static final Catalog DEMO = CatalogReader.read(Path.of("catalogs"));

    static final Practice.Core USUAL = DEMO.practice().core();

    private SampleCores() {}

    static Radiator radiator(String pattern, double depthMm, double finsPerInch, int tubeRows) {
        return with(pattern, SmallParts.core(depthMm, finsPerInch, tubeRows, 120));
    }

    static Radiator with(String pattern, Radiator.Core core) {
        Radiator plain = SmallParts.radiator("radiator-" + pattern, pattern, Dimension.ofHmm(3000));
        return new Radiator(
                plain.id(),
                plain.title(),
                plain.variantOf(),
                plain.buy(),
                Pattern.parse(pattern),
                plain.body(),
                plain.ports(),
                core);
    }

    static Radiator measured(String pattern, Radiator.Measured measured) {
        return with(
                pattern, new Radiator.Core(20, 16, 1, 120, List.of(), Optional.empty(), Optional.empty(), measured));
    }

    static RadiatorCore core(Radiator radiator) {
        return RadiatorCore.of(radiator, USUAL);
    }

    /** Water of 35 °C at 0.1 MPa, IAPWS-95, R12-08, R15-11. */
    static double waterSide(RadiatorCore core, double flowLPerMin) {
        return core.waterSideWPerK(flowLPerMin * 1e-3 / 60, 994.0327, 0.719126e-3, 4179.26, 0.62170);
    }

    /** What the whole radiator conducts, W/K: heat over coolant mean less incoming air. */
    static double conductance(RadiatorCore core, double faceSpeedMPerS, double flowLPerMin) {
        double airSide = core.in(1.18391, 1.8372e-5, 0.02611, 1006).airSideWPerK(faceSpeedMPerS);
        double ua = core.conductanceUAWPerK(airSide, waterSide(core, flowLPerMin));
        double air = 1.18391 * 1006 * faceSpeedMPerS * core.faceAreaM2();
        double water = 994.0327 * 4179.26 * flowLPerMin * 1e-3 / 60;
        double smaller = Math.min(air, water);
        double perInlet = smaller * Crossflow.effectiveness(ua / smaller, smaller / Math.max(air, water));
        return perInlet / (1 - perInlet / (2 * water));
    }
}
