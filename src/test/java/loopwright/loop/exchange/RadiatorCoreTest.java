package loopwright.loop.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import loopwright.catalog.part.Radiator;
import loopwright.testing.SmallParts;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Both sides of a core, and what measured points do to it. */
class RadiatorCoreTest {

    @Test
    void oneMeasuredPointIsMet() {
        Random random = new Random(11);
        for (int i = 0; i < 50; i++) {
            double airflow = 20 + 60 * random.nextDouble();
            double flow = 1 + 5 * random.nextDouble();
            double conductance = airflow / 3 * (0.3 + 0.5 * random.nextDouble());
            RadiatorCore core = SampleCores.core(SampleCores.measured(
                    "1x120",
                    new Radiator.Measured(List.of(new Radiator.HeatPoint(airflow, flow, conductance)), List.of())));
            double back = SampleCores.conductance(core, airflow / 3600 / core.faceAreaM2(), flow);

            assertThat(back).as("seed 11, case %s", i).isCloseTo(conductance, Percentage.withPercentage(0.02));
        }
    }

    /** Two points that ask for factors a and b get √(a·b). */
    @Test
    void severalPointsAreMetInTheGeometricMean() {
        Radiator.HeatPoint slow = new Radiator.HeatPoint(28.3, 4, 5.5);
        Radiator.HeatPoint fast = new Radiator.HeatPoint(60, 3, 12);
        double a = calibration(List.of(slow));
        double b = calibration(List.of(fast));

        assertThat(a).isLessThan(b);
        assertThat(calibration(List.of(slow, fast))).isCloseTo(Math.sqrt(a * b), Percentage.withPercentage(1e-9));
        assertThat(calibration(List.of())).isEqualTo(1);
    }

    private static double calibration(List<Radiator.HeatPoint> points) {
        return SampleCores.core(SampleCores.measured("1x120", new Radiator.Measured(points, List.of())))
                .calibration();
    }

    @Test
    void everyRadiatorOfTheDemoIsACoreAndTheMeasuredOnesAreNearTheModel() {
        List<Radiator> all = SampleCores.DEMO.all(Radiator.class);
        assertThat(all).allSatisfy(radiator -> {
            RadiatorCore core = SampleCores.core(radiator);
            boolean measured = !radiator.core().measured().heat().isEmpty();
            if (measured) {
                assertThat(core.calibration()).as(radiator.id()).isBetween(0.8, 1.2);
            } else {
                assertThat(core.calibration()).isEqualTo(1);
            }
        });
        assertThat(all.stream().filter(r -> !r.core().measured().heat().isEmpty()))
                .hasSizeGreaterThanOrEqualTo(3);
    }

    /** Resistances add: 1/10 + wall + 1/40, times the factor. */
    @Test
    void resistancesInARowAdd() {
        RadiatorCore core = SampleCores.core(SampleCores.radiator("1x120", 20, 16, 1));

        assertThat(core.conductanceUAWPerK(10, 40))
                .isCloseTo(1 / (0.125 + core.wallKPerW()), Percentage.withPercentage(1e-9));
        assertThat(core.wallKPerW()).isBetween(0.0, 0.001);
        assertThatThrownBy(() -> core.conductanceUAWPerK(0, 40)).hasMessageContaining("must conduct");
        assertThatThrownBy(() -> core.conductanceUAWPerK(10, Double.NaN)).hasMessageContaining("must conduct");
    }

    /**
     * By hand for the usual tubes in a 20 mm core of 1x120 (110 mm across): (110 − 8)/10.5 = 9.7, so 10 tubes, 5 a pass, 2.1 × 19.6 mm
     * inside, 120 mm long; hydraulic diameter 3.79355 mm, inner wall 0.05208 m². At 2 L/min Re = 4·ṁ/(5·perimeter·μ) =
     * 849: laminar. Nu_T of aspect 0.107143 by the polynomial, k = 0.6217.
     */
    @Test
    void theCoolantsSideIsLaminarInFlatTubes() {
        double a = 2.1 / 19.6;
        double nusselt = 7.541
                * (1 - 2.610 * a + 4.970 * a * a - 5.119 * a * a * a + 2.702 * Math.pow(a, 4) - 0.548 * Math.pow(a, 5));
        double diameterM = 2 * 2.1 * 19.6 / (2.1 + 19.6) * 1e-3;
        double areaM2 = 10 * 2 * (2.1 + 19.6) * 1e-3 * 0.12;
        RadiatorCore core = SampleCores.core(SampleCores.radiator("1x120", 20, 16, 1));

        assertThat(SampleCores.waterSide(core, 2))
                .isCloseTo(nusselt * 0.6217 / diameterM * areaM2, Percentage.withPercentage(1e-6));
        assertThat(SampleCores.waterSide(core, 8)).isGreaterThan(2 * SampleCores.waterSide(core, 2));
    }

    @Test
    void theCoolantsSideNeverFallsWithFlow() {
        RadiatorCore core = SampleCores.core(SampleCores.radiator("2x140", 33, 13, 2));
        double before = 0;
        for (double flow = 0; flow < 15; flow += 0.05) {
            double here = SampleCores.waterSide(core, flow);
            assertThat(here).isGreaterThanOrEqualTo(before);
            before = here;
        }
    }

    @Test
    void facesAreTheTrades() {
        assertThat(SampleCores.core(SampleCores.radiator("3x120", 20, 16, 1)).faceAreaM2())
                .isCloseTo(3 * 0.0132, Percentage.withPercentage(1e-9));
        assertThat(SampleCores.core(SampleCores.radiator("2x140", 20, 16, 1)).faceAreaM2())
                .isCloseTo(2 * 0.0182, Percentage.withPercentage(1e-9));
    }

    /** The radiator's own fins and tubes go before the workshop's. */
    @Test
    void ownFinsAndTubesComeFirst() {
        Radiator.Core usual = SmallParts.core(20, 16, 1, 120);
        Radiator.Fins better = new Radiator.Fins(1.4, 20, 5.6, 8, 0.055, 380);
        Radiator.Tubes single = new Radiator.Tubes(2.5, 0.2, 1);
        Radiator own = SampleCores.with(
                "1x120",
                new Radiator.Core(
                        usual.depthMm(),
                        usual.finsPerInch(),
                        usual.tubeRows(),
                        usual.coolantML(),
                        usual.loss(),
                        Optional.of(better),
                        Optional.of(single),
                        usual.measured()));
        RadiatorCore plain = SampleCores.core(SampleCores.with("1x120", usual));
        RadiatorCore core = SampleCores.core(own);

        assertThat(core.in(SampleCores.AIR).airSideWPerK(1))
                .isGreaterThan(plain.in(SampleCores.AIR).airSideWPerK(1));
        assertThat(SampleCores.waterSide(core, 6)).isLessThan(SampleCores.waterSide(plain, 6));
    }
}
