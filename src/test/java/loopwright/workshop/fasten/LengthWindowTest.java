package loopwright.workshop.fasten;

import static loopwright.testing.Mm.hmm;
import static loopwright.workshop.fasten.SampleStacks.PRACTICE;
import static loopwright.workshop.fasten.SampleStacks.STOCK;
import static loopwright.workshop.fasten.SampleStacks.layers;
import static loopwright.workshop.fasten.SampleStacks.row;
import static loopwright.workshop.fasten.SampleStacks.seat;
import static loopwright.workshop.fasten.SampleStacks.window;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loopwright.catalog.part.Screw;
import loopwright.catalog.part.ScrewThread;
import loopwright.catalog.standard.Fastening.SeatMaterial;
import loopwright.quantity.Dimension;
import loopwright.testing.Mm;
import loopwright.workshop.fasten.LengthChoice.Fits;
import loopwright.workshop.fasten.LengthChoice.Refused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The trade's sample stacks, worked by hand over a flange of 1.2 with 4 mm behind it: the sum of the layers plus 1.2, to the
 * sum plus 4.2. Common practice, no source.
 */
class LengthWindowTest {

    /**
     * A sample.
     *
     * @param inside every length of the stock that is inside
     * @param picks what the trade takes
     * @param bad what it would not
     */
    record Sample(
            String name,
            List<Double> layersMm,
            List<Double> windowMm,
            List<Double> inside,
            List<Double> picks,
            List<Double> bad) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static List<Double> mm(double... all) {
        return Arrays.stream(all).boxed().toList();
    }

    private static LengthWindow over(ScrewThread thread, List<Double> layersMm) {
        return window(thread, layersMm.stream().mapToDouble(l -> l).toArray());
    }

    static Stream<Sample> samples() {
        return Stream.of(
                new Sample("panel", mm(1), mm(2.2, 5.2), mm(4, 5), mm(4, 5), mm(6, 8)),
                new Sample("panel, gasket", mm(1, 1), mm(3.2, 6.2), mm(4, 5, 6), mm(5, 6), mm(8)),
                new Sample("washer, panel, fan", mm(0.5, 1, 25), mm(27.7, 30.7), mm(28, 30), mm(28, 30), mm(32, 35)),
                new Sample("panel, gasket, fan", mm(1.2, 1, 25), mm(28.4, 31.4), mm(30), mm(30), mm(28, 32, 35)),
                new Sample("fan, far face", mm(25), mm(26.2, 29.2), mm(28), mm(28), mm(30, 35)),
                new Sample("guard, panel, fan", mm(2.5, 1, 25), mm(29.7, 32.7), mm(30, 32), mm(30, 32), mm(35)),
                new Sample("raised cover", mm(0.5, 25, 1, 1, 1), mm(29.7, 32.7), mm(30, 32), mm(30, 32), mm(35)),
                new Sample("slim fan, panel", mm(15, 1), mm(17.2, 20.2), mm(20), mm(20), mm(16, 25)),
                new Sample("shroud, fan, panel", mm(20, 25, 1), mm(47.2, 50.2), mm(50), mm(50), mm(45, 55)),
                new Sample("thick fan, panel, paint", mm(30, 0.8, 0.2), mm(32.2, 35.2), mm(35), mm(35), mm(32, 38)));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void theTradesSamples(Sample sample) {
        LengthWindow window = over(ScrewThread.M3, sample.layersMm());
        assertThat(window.leastHmm()).isEqualTo(hmm(sample.windowMm().get(0)));
        assertThat(window.mostHmm()).isEqualTo(hmm(sample.windowMm().get(1)));
        assertThat(sample.inside().stream().map(l -> hmm(l))).allMatch(window::holds);
        assertThat(sample.bad().stream().map(l -> hmm(l))).noneMatch(window::holds);
        Fits fits = (Fits) STOCK.choose(ScrewThread.M3, window);
        assertThat(sample.picks()).contains(Stock.lengthHmm(fits.screw()) / 100.0);
        List<Screw> all = new ArrayList<>(fits.alsoFit());
        all.add(fits.screw());
        assertThat(all.stream().map(s -> Stock.lengthHmm(s) / 100.0))
                .containsExactlyInAnyOrderElementsOf(sample.inside());
    }

    /** Panel 1.2, gasket 1.0, fan 25: a 35 goes 2.6 past the first tube. */
    @Test
    void aScrewThatIsTooLongPierces() {
        LengthWindow window = window(ScrewThread.M3, 1.2, 1, 25);
        assertThat(hmm(35) - window.reachHmm()).isEqualTo(hmm(2.6));
    }

    /** One hundredth on each side of both ends, and of the tube itself. */
    @Test
    void theEndsAreExact() {
        LengthWindow window = window(ScrewThread.M3, 1.2, 1, 25);
        assertThat(List.of(2839, 2840, 3140, 3141).stream().map(window::holds))
                .containsExactly(false, true, true, false);
        // 30 mm is the most with 24.6 of fan, and a hundredth too long with 24.59.
        assertThat(window(ScrewThread.M3, 0.2, 1, 24.6).holds(3000)).isTrue();
        assertThat(window(ScrewThread.M3, 0.2, 1, 24.59).holds(3000)).isFalse();
        // With nothing kept free it would touch at 4.2 less 1 behind the flange, and not before.
        assertThat(window(ScrewThread.M3, 1.2, 1, 25).reachHmm()).isEqualTo(3240);
    }

    /** Rows three to five in 6-32: 1-1/8 in; the row with the guard: 1-1/4 in. */
    @Test
    void theSamplesInInches() {
        for (List<Double> layers : List.of(mm(0.5, 1, 25), mm(1.2, 1, 25), mm(25))) {
            assertThat(over(ScrewThread.UNC_6_32, layers).holds(2858)).isTrue();
        }
        assertThat(window(ScrewThread.UNC_6_32, 2.5, 1, 25).holds(3175)).isTrue();
        assertThat(window(ScrewThread.UNC_6_32, 2.5, 1, 25).holds(2858)).isFalse();
    }

    /** 25 of fan, 1.2 of panel, 3 of steel: 29.2 at least, so 30. */
    @Test
    void aThickSeatWantsItsWholeEngagement() {
        LengthWindow window = LengthWindow.of(
                layers(25, 1.2), seat(ScrewThread.M3, SeatMaterial.STEEL, 4, 3), row(ScrewThread.M3), PRACTICE);
        assertThat(window.leastHmm()).isEqualTo(2920);
        assertThat(Stock.lengthHmm(((Fits) STOCK.choose(ScrewThread.M3, window)).screw()))
                .isEqualTo(3000);
    }

    /** 1.0, 1.5 and 2.0 diameters of M4, and never more than there is. */
    @Test
    void engagementGoesWithTheMaterial() {
        for (var one : List.of(
                Map.entry(SeatMaterial.STEEL, 400),
                Map.entry(SeatMaterial.ALUMINIUM, 600),
                Map.entry(SeatMaterial.PLASTIC, 800))) {
            LengthWindow thick = LengthWindow.of(
                    List.of(), seat(ScrewThread.M4, one.getKey(), 20, 5), row(ScrewThread.M4), PRACTICE);
            LengthWindow thin = LengthWindow.of(
                    List.of(), seat(ScrewThread.M4, one.getKey(), 1.2, 5), row(ScrewThread.M4), PRACTICE);
            assertThat(thick.leastHmm()).isEqualTo(one.getValue());
            assertThat(thin.leastHmm()).isEqualTo(120);
        }
    }

    /** Fan to panel: a 10 holds, a 16 comes near the blades. */
    @Test
    void aSelfTapperStopsBeforeTheBlades() {
        LengthWindow window = LengthWindow.of(
                layers(1),
                new ThreadSeat(
                        ScrewThread.FAN,
                        SeatMaterial.PLASTIC,
                        PRACTICE.fan().flangeMm(),
                        PRACTICE.fan().behindFlangeMm(),
                        "blades"),
                row(ScrewThread.FAN),
                PRACTICE);
        assertThat(window.layersHmm() + PRACTICE.fan().flangeMm().valueHmm()).isEqualTo(550);
        assertThat(window.holds(1000)).isTrue();
        assertThat(window.holds(1600)).isFalse();
    }

    @Test
    void anUnknownDepthCountsAsNone() {
        ThreadSeat seat =
                new ThreadSeat(ScrewThread.M3, SeatMaterial.STEEL, Mm.mm(1.2), Dimension.UNKNOWN, "first tube");
        LengthWindow window = LengthWindow.of(layers(1), seat, row(ScrewThread.M3), PRACTICE);
        assertThat(seat.isDepthGuessed()).isTrue();
        assertThat(window.mostHmm()).isLessThan(window.leastHmm());
        assertThat(STOCK.choose(ScrewThread.M3, window)).isInstanceOf(Refused.class);
    }
}
