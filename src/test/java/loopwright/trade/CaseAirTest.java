package loopwright.trade;

import static loopwright.testing.Mm.mm;
import static loopwright.testing.SmallMods.mount;
import static loopwright.testing.SmallMods.seat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.fit.FitWish;
import loopwright.loop.RatedEstimate;
import loopwright.rank.Build;
import loopwright.rank.Order;
import loopwright.rank.RankResult;
import loopwright.rank.RankSearch;
import loopwright.testing.SmallCase;
import loopwright.testing.SmallMods.Spot;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Common practice, no source: the trade's worked case. 385 W, three sections in front and two in the roof, 30 mm radiators
 * in push; the roof blows out and breathes case air that is 6 K warmer than the room.
 *
 * <p>The trade's figures are calculated from 6.3 and 8.0 W/K a section; the radiators here are its 20 mm cores of 16 fins an
 * inch behind open panels, so tenths of a kelvin may differ.
 */
class CaseAirTest {

    private static final double ROOM_C = 28;

    private static double coolantOverRoomK(double rpm, double riseK) {
        SmallCase machine = new SmallCase(700, 500)
                .mount(Face.FRONT, mount("front", Axis.Z, seat("3x120", new Spot(250, 300))))
                .mount(Face.ROOF, mount("roof", Axis.Y, seat("2x120", new Spot(400, 300))))
                .with(SmallParts.radiator("front", "3x120", mm(30)))
                .with(SmallParts.radiator("roof", "2x120", mm(30)))
                .with(SmallParts.fan("fan", 120, mm(25), rpm))
                .with(SmallParts.processor("processor", 185))
                .with(SmallParts.card("card", mm(150), 200))
                .caseAirRise(riseK);
        RankResult result = new RankSearch(machine.fitCase(), FitWish.ALL, new RatedEstimate(), () -> false)
                .run(Order.TEMPERATURE, 10_000);
        return result.listed().stream()
                .map(RankResult.Ranked::build)
                .filter(CaseAirTest::isTheWorkedCase)
                .mapToDouble(b -> b.outcome().coolantOverRoomCentiK() / 100.0)
                .min()
                .orElseThrow();
    }

    /** Both radiators with one layer of fans (push or pull conduct alike here) at full speed, the roof blowing out. */
    private static boolean isTheWorkedCase(Build build) {
        assertThat(build.heatW()).isEqualTo(385);
        return build.layout().stacks().size() == 2
                && build.layout().stacks().stream()
                        .allMatch(s -> s.shape().arrangement().fanLayers() == 1)
                && build.exhaustMount().equals("roof")
                && build.dutyPercent() == 100;
    }

    @ParameterizedTest(name = "{0} rpm, roof air {1} K over room: {2} K")
    @CsvSource({"1000, 6, 14.6", "1000, 0, 12.2", "1300, 6, 12.0", "1300, 0, 9.6"})
    void theWorkedCase(double rpm, double riseK, double expectedK) {
        assertThat(coolantOverRoomK(rpm, riseK)).isCloseTo(expectedK, within(0.2));
    }

    /** In a room of 28 °C 42.6 °C, well under 45; in one of 35 °C 49.6 °C, near the limit of 50. */
    @Test
    void inAWarmRoom() {
        double overRoomK = coolantOverRoomK(1000, 6);

        assertThat(ROOM_C + overRoomK).isCloseTo(42.6, within(0.2)).isLessThan(45);
        assertThat(35 + overRoomK).isCloseTo(49.6, within(0.2)).isLessThan(50);
    }

    /** The project's own practice file has the trade's 6 K. */
    @Test
    void theWorkshopReckonsWithSixKelvin() {
        assertThat(CatalogReader.read(Path.of("catalogs")).practice().heat().caseAirRiseK())
                .isEqualTo(6);
    }
}
