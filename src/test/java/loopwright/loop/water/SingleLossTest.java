package loopwright.loop.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import loopwright.loop.water.FittingLoss.Kind;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Validation of tubes, fittings and steps of the bore against published numbers. */
class SingleLossTest {

    private static final double INCH_M = 0.0254;
    private static final double FOOT_M = 0.3048;
    private static final double LBM_KG = 0.45359237;
    private static final double LBF_PER_FT2_PA = 47.88026;

    /**
     * Çengel and Cimbala, Fluid Mechanics, Example 8-3: water at 60 °F through 200 ft of 2 in steel tube at 0.2 ft³/s: f
     * 0.0174, 1700 lbf/ft². More digits by exact arithmetic with the book's 32.2 for the gravitational constant: 0.0173968 and
     * 1698.85 lbf/ft², 0.08 % less than in SI.
     */
    @Test
    void followsTheTextbookInTurbulentFlow() {
        double ft3 = FOOT_M * FOOT_M * FOOT_M;
        LiquidState water = new LiquidState(62.36 * LBM_KG / ft3, 7.536e-4 * LBM_KG / FOOT_M);
        TubeRun tube = new TubeRun(2 * INCH_M, 200 * FOOT_M, 7e-6 * FOOT_M);
        double lossPa = tube.lossPa(0.2 * ft3, water);

        assertThat(lossPa).isCloseTo(1698.85 * LBF_PER_FT2_PA * 32.2 / 32.174, Percentage.withPercentage(1e-3));
        double speed = 0.2 * ft3 / (Math.PI / 4 * 4 * INCH_M * INCH_M);
        double factor = lossPa * 2 * INCH_M / (200 * FOOT_M) / (0.5 * water.densityKgPerM3() * speed * speed);
        assertThat(factor).isCloseTo(0.0173968, within(1e-7));
    }

    /** The same book, Example 8-2: laminar; in SI f 0.0354758 at Re 1804.046, 44 487.8 Pa. */
    @Test
    void followsTheTextbookInLaminarFlow() {
        LiquidState water = new LiquidState(999.872, 1.544714e-3);
        double flow = 0.9144 * Math.PI / 4 * 3.048e-3 * 3.048e-3;

        assertThat(new TubeRun(3.048e-3, 9.144, 0).lossPa(flow, water))
                .isCloseTo(44487.8, Percentage.withPercentage(2e-4));
    }

    /** Common practice, no source: kPa a metre at 3.8 L/min. */
    @ParameterizedTest(name = "bore {0} mm")
    @CsvSource({"9.5, 1.34", "10, 1.05", "12, 0.44", "13, 0.30"})
    void tubesTakeWhatTheTradeSays(double boreMm, double lossKPa) {
        double lossPa = new TubeRun(boreMm / 1000, 1, 0).lossPa(3.8e-3 / 60, LiquidState.WATER_20_C);
        assertThat(lossPa / 1000).isCloseTo(lossKPa, Percentage.withPercentage(5));
    }

    /** 3-K method (Silverberg and Darby 1999), 90° threaded elbow, 3/8 inch, Re 4000: 800/4000 + 0.14·(1 + 4/0.375^0.3) = 1.0916. */
    @Test
    void elbowHasDarbysCoefficient() {
        assertThat(coefficient(Kind.ELBOW_90, 0.375 * INCH_M, 4000)).isCloseTo(1.0916, within(5e-5));
    }

    /** The other kinds, worked by hand at 1 inch, where the size drops out: K = K1/Re + Ki·(1 + Kd). */
    @ParameterizedTest
    @CsvSource({
        "ELBOW_90, 2000, 1.1",
        "ELBOW_90_LONG, 2000, 0.7692",
        "ELBOW_45, 2000, 0.6192",
        "TEE_RUN, 2000, 0.555",
        "TEE_BRANCH, 2000, 1.62",
        "STRAIGHT, 2000, 0.325",
        "ELBOW_90, 100, 8.7",
        "TEE_BRANCH, 1e5, 1.375"
    })
    void everyKindHasItsCoefficient(Kind kind, double reynolds, double loss) {
        assertThat(coefficient(kind, INCH_M, reynolds)).isCloseTo(loss, within(1e-10));
    }

    /** 2-K method (Hooper 1981) at 0.39 inch, Re 4000: K1/Re + K∞·(1 + 1/D); 1.6256 screwed, 0.9128 long radius. */
    @ParameterizedTest
    @CsvSource({"ELBOW_90, 1.6256", "ELBOW_90_LONG, 0.9128"})
    void darbyAndHooperLieWithinAQuarterOfTheirMean(Kind kind, double hooper) {
        double darby = coefficient(kind, 0.39 * INCH_M, 4000);
        assertThat(darby).isCloseTo((darby + hooper) / 2, Percentage.withPercentage(25));
    }

    /** Common practice, no source: at 3.8 L/min a 90° fitting takes 0.3 to 0.9 kPa, a straight one about 0.15 kPa. */
    @Test
    void fittingsTakeWhatTheTradeSays() {
        double flow = 3.8e-3 / 60;
        assertThat(new FittingLoss(Kind.ELBOW_90, 0.01, 1).lossPa(flow, LiquidState.WATER_20_C))
                .isBetween(300.0, 900.0);
        assertThat(new FittingLoss(Kind.STRAIGHT, 0.01, 1).lossPa(flow, LiquidState.WATER_20_C))
                .isCloseTo(150, Percentage.withPercentage(30));
    }

    /** Borda and Carnot, β = 0.5: 0.5625; into a tank 1. Rennels and Hudson 2012: 1 to 0.4 gives 0.5301269161, inlet 0.57. */
    @Test
    void stepsOfTheBoreHaveTheirCoefficients() {
        assertThat(new SuddenChange(0.01, 0.02).lossCoefficient()).isCloseTo(0.5625, within(1e-12));
        assertThat(SuddenChange.exit(0.01).lossCoefficient()).isEqualTo(1);
        assertThat(new SuddenChange(0.1, 0.04).lossCoefficient()).isCloseTo(0.5301269161, within(1e-9));
        assertThat(SuddenChange.inlet(0.01).lossCoefficient()).isCloseTo(0.57, within(0.005));
        // 1/2 · 1000 kg/m³ · (2 m/s)² = 2000 Pa, on the speed in the narrower bore either way.
        LiquidState liquid = new LiquidState(1000, 1e-3);
        double flow = 2 * Math.PI / 4 * 1e-4;
        assertThat(new SuddenChange(0.01, 0.02).lossPa(flow, liquid)).isCloseTo(1125, within(1e-9));
        assertThat(new SuddenChange(0.025, 0.01).lossPa(flow, liquid)).isCloseTo(1060.2538, within(1e-4));
    }

    @Test
    void refusesDimensionsThatAreNone() {
        assertThatThrownBy(() -> new TubeRun(10, 1, 0)).hasMessage("boreM must be above 0 to 1 m but was 10.0");
        assertThatThrownBy(() -> new TubeRun(0.01, 0, 0)).hasMessageContaining("lengthM must be above 0 m");
        assertThatThrownBy(() -> new TubeRun(0.01, 1, 6e-4)).hasMessageContaining("roughnessM must be in [0, 0.05]");
        assertThatThrownBy(() -> new TubeRun(Double.NaN, 1, 0)).hasMessageContaining("boreM");
        assertThatThrownBy(() -> new FittingLoss(Kind.TEE_RUN, 0.01, 0)).hasMessageContaining("at least 1 but was 0");
        assertThatThrownBy(() -> new SuddenChange(0.01, 0.01)).hasMessageContaining("two bores");
        assertThatThrownBy(() -> new SuddenChange(SuddenChange.TANK, Double.NaN))
                .hasMessageContaining("two bores");
        assertThatThrownBy(() -> new LiquidState(0, 1e-3)).hasMessageContaining("density of a liquid");
        assertThatThrownBy(() -> new LiquidState(1000, Double.NaN)).hasMessageContaining("viscosity of a liquid");
    }

    /** Loss over ρV²/2 at a Reynolds number, from the loss that comes out. */
    private static double coefficient(Kind kind, double boreM, double reynolds) {
        LiquidState liquid = new LiquidState(1020, 1.7e-3);
        double speed = reynolds * 1.7e-3 / (1020 * boreM);
        double flow = speed * Math.PI / 4 * boreM * boreM;
        return new FittingLoss(kind, boreM, 3).lossPa(flow, liquid) / 3 / (0.5 * 1020 * speed * speed);
    }
}
