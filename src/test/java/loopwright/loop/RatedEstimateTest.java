package loopwright.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import loopwright.catalog.basis.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RatedEstimateTest {

    private static final CoolingModel MODEL = new RatedEstimate();

    /** Trade's worked case: 385 W, three sections in front with fresh air, two in the roof. */
    @ParameterizedTest(name = "{0} W/K a section, roof air {1} K over room")
    @CsvSource({"6.3, 6, 14.6", "6.3, 0, 12.2", "8.0, 6, 12.0", "8.0, 0, 9.6"})
    void fiveSectionsWithARoofThatBreathesCaseAir(double sectionWPerK, double roofInletK, double expectedK) {
        assertThat(overRoomK(frontAndRoof(sectionWPerK, roofInletK))).isCloseTo(expectedK, within(0.05));
    }

    /** The same from the radiators themselves: 20 mm core, 16 fins per inch, push, 1000 rpm; the trade's 14.6 K. */
    @Test
    void theWorkedCaseFromTheRadiatorsThemselves() {
        FanBank bank = new FanBank(SampleParts.PRESSURE_120, 1, new Duty(100 * 1000 / 1850.0));
        SectionRate front = new SectionRate(conductanceWPerK(3, bank, 1), 0);
        SectionRate roof = new SectionRate(conductanceWPerK(2, bank, 1), 6);

        assertThat(overRoomK(new CoolingCase(385, List.of(front, roof)))).isCloseTo(14.6, within(0.15));
    }

    /** Trade's worked case: a roof lid 40 % open (heat 0.90) at 1300 rpm gives 12.3 K. */
    @Test
    void aRoofLidCostsAThirdOfAKelvin() {
        CoolingCase lid = new CoolingCase(385, List.of(new SectionRate(24, 0), new SectionRate(14.4, 6)));
        assertThat(overRoomK(lid)).isCloseTo(12.3, within(0.05));
    }

    /** Trade's worked case: room 28 gives 42.6 °C, under 45; room 35 gives 49.6 °C, near the limit of 50. */
    @Test
    void coolantInAWarmRoom() {
        double overRoomK = overRoomK(frontAndRoof(6.3, 6));
        assertThat(28 + overRoomK).isCloseTo(42.6, within(0.05)).isLessThan(45);
        assertThat(35 + overRoomK).isCloseTo(49.6, within(0.05)).isLessThan(50);
    }

    @ParameterizedTest
    @ValueSource(longs = {41, 42, 43})
    void heatInIsHeatOut(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 200; round++) {
            SectionRate a = new SectionRate(0.1 + 40 * random.nextDouble(), 10 * random.nextDouble());
            SectionRate b = new SectionRate(40 * random.nextDouble(), 10 * random.nextDouble());
            double heatW = 800 * random.nextDouble();
            double overRoomK = overRoomK(new CoolingCase(heatW, List.of(a, b)));
            double outW = a.conductanceWPerK() * (overRoomK - a.inletOverRoomK())
                    + b.conductanceWPerK() * (overRoomK - b.inletOverRoomK());
            assertThat(outW).as("seed %d round %d", seed, round).isCloseTo(heatW, within(1e-9));
        }
    }

    /** √(0.15² + 0.05²) = 0.158114 of the rise over the inlet air, 400 W / 40 W/K = 10 K. */
    @Test
    void theBandIsTheScatterOfConductanceAndHeat() {
        CoolingCase plain = new CoolingCase(400, List.of(new SectionRate(40, 2)));
        Band band = MODEL.coolantOverRoomBand(plain).orElseThrow();

        assertThat(overRoomK(plain)).isEqualTo(12);
        assertThat(band.lowK()).isCloseTo(12 - 1.58114, within(1e-5));
        assertThat(band.highK()).isCloseTo(12 + 1.58114, within(1e-5));
    }

    /** Rises 10 and 8 K: common 0.158114·2 = 0.316228, own 0.5 and 0.4; together √(0.1 + 0.25 + 0.16) = 0.714143. */
    @Test
    void aGainCarriesTheCommonScatterOnce() {
        CoolingCase before = new CoolingCase(400, List.of(new SectionRate(40, 0)));
        CoolingCase after = new CoolingCase(400, List.of(new SectionRate(50, 0)));
        Band band = MODEL.gainBand(before, after).orElseThrow();

        assertThat(band.lowK()).isCloseTo(2 - 0.714143, within(1e-6));
        assertThat(band.highK()).isCloseTo(2 + 0.714143, within(1e-6));
        assertThat(MODEL.gainBand(before, before)).contains(new Band(0, 0));
        // Apart, the two cases' own bands would give √(1.58114² + 1.26491²) = 2.02.
        assertThat(band.highK() - band.lowK()).isLessThan(2 * 2.02);
    }

    @Test
    void withoutConductanceThereIsNoTemperature() {
        CoolingCase none = new CoolingCase(100, List.of(new SectionRate(0, 0)));
        CoolingCase some = new CoolingCase(100, List.of(new SectionRate(10, 0)));

        assertThat(MODEL.coolantOverRoomK(none)).isEmpty();
        assertThat(MODEL.coolantOverRoomK(new CoolingCase(100, List.of()))).isEmpty();
        assertThat(MODEL.coolantOverRoomBand(none)).isEmpty();
        assertThat(MODEL.gainBand(none, some)).isEmpty();
        assertThat(MODEL.gainBand(some, none)).isEmpty();
        assertThat(MODEL.title()).isEqualTo("rated estimate");
    }

    @Test
    void refusesNumbersThatAreNone() {
        assertThatThrownBy(() -> new SectionRate(-1, 0)).hasMessageContaining("0 W/K but was -1.0");
        assertThatThrownBy(() -> new SectionRate(1, Double.NaN)).hasMessageContaining("inlet");
        assertThatThrownBy(() -> new CoolingCase(Double.NaN, List.of())).hasMessageContaining("heat");
        assertThatThrownBy(() -> new Band(2, 1)).hasMessageContaining("upwards");
    }

    private static CoolingCase frontAndRoof(double sectionWPerK, double roofInletK) {
        return new CoolingCase(
                385, List.of(new SectionRate(3 * sectionWPerK, 0), new SectionRate(2 * sectionWPerK, roofInletK)));
    }

    private static double overRoomK(CoolingCase asked) {
        return MODEL.coolantOverRoomK(asked).orElseThrow();
    }

    private static double conductanceWPerK(int fans, FanBank bank, double openShare) {
        return RadiatorAir.operatingPoint(
                        SampleParts.radiator(new Pattern(fans, 120), 20, 16), bank, AirPath.ofPanel(openShare))
                .conductanceWPerK();
    }
}
