package loopwright.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.catalog.brief.LoopWish.BlockOrder;
import loopwright.catalog.chassis.Mount.Where;
import loopwright.catalog.part.Radiator;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.AirPath;
import loopwright.testing.MachineParts;
import org.junit.jupiter.api.Test;

class SwingsTest {

    private static final MachineModel MODEL = MachineDice.model(Cooled.SITE);

    private static Swings of(Machine machine) {
        return Swings.of(MODEL, machine);
    }

    /** The plain machine behind filtered panels, so that every input does something. */
    private static Machine filtered(double openShare) {
        AirPath path = new AirPath(openShare, Where.FACE, OptionalDouble.of(0.4), Optional.empty(), 0.05);
        return Cooled.mounted(
                Cooled.usual(),
                List.of(
                        Cooled.mount("front", "3x120", AirDirection.IN, 1, path),
                        Cooled.mount("roof", "2x120", AirDirection.OUT, 1, path)));
    }

    @Test
    void namesWhatIsUncertain() {
        assertThat(Scatter.inputs(Cooled.usual()))
                .containsExactlyInAnyOrder(
                        "block of 0.06 K/W on card",
                        "block of 0.18 K/W on processor",
                        "fan pressure-1300.0",
                        "heat in the case's air",
                        "heat of card",
                        "heat of processor",
                        "heat transfer of louvred fins",
                        "loss of plates, slots and gaps",
                        "opening at front",
                        "opening at roof",
                        "opening at seams",
                        "pressure loss of louvred fins",
                        "pressure losses of the coolant",
                        "pump pump-38.0-25.0-15.0",
                        "radiator 2x120-20.0-16.0-1",
                        "radiator 3x120-20.0-16.0-1");
    }

    /** What each input does to the coolant has the sign that it must have. */
    @Test
    void everyInputSwingsTheRightWay() {
        Map<String, Double> effects = of(filtered(0.5)).effects(Steady::coolantOverRoomK);

        effects.forEach((input, effect) -> {
            boolean cools =
                    input.equals(Scatter.FINS_NAME) || input.startsWith("radiator ") || input.startsWith("fan ");
            boolean warms = input.startsWith("heat of ")
                    || input.equals(Scatter.CASE_HEAT_NAME)
                    || input.equals(Scatter.PATH_NAME)
                    || input.equals(Scatter.CORE_LOSS_NAME)
                    || input.startsWith("opening at ")
                    || input.equals(Scatter.WATER_LOSS_NAME);
            // A block's resistance heats what is under it, not the coolant.
            assertThat(effect == 0).as(input).isEqualTo(input.startsWith("block of "));
            assertThat(cools && effect > 0).as("%s warms by %s", input, effect).isFalse();
            assertThat(warms && effect < 0).as("%s cools by %s", input, effect).isFalse();
        });
    }

    /** GUM 5.1: effects of independent inputs add in squares. */
    @Test
    void effectsAddInSquares() {
        Swings swings = of(filtered(0.5));
        double sum = 0;
        for (double effect : swings.effects(Steady::coolantOverRoomK).values()) {
            sum += effect * effect;
        }
        double value = swings.state().coolantOverRoomK();
        Band band = swings.band(Steady::coolantOverRoomK);

        assertThat(swings.plusMinus(Steady::coolantOverRoomK)).isCloseTo(Math.sqrt(sum), within(1e-12));
        assertThat((band.lowK() + band.highK()) / 2).isCloseTo(value, within(1e-9));
        assertThat(band.highK() - band.lowK()).isCloseTo(2 * Math.sqrt(sum), within(1e-9));
        assertThat(band.contains(value)).isTrue();
    }

    /** Rough heat transfer and the like make a tenth or so of the rise; certainly between a fiftieth and a third. */
    @Test
    void theBandIsOfASizeThatCanBeBelieved() {
        Swings swings = of(filtered(0.5));
        double rise = swings.state().coolantOverRoomK();
        assertThat(swings.plusMinus(Steady::coolantOverRoomK)).isBetween(rise / 50, rise / 3);
    }

    /** What two machines share counts only for its part in the difference: that is surer than either figure. */
    @Test
    void aDifferenceIsSurerThanEitherFigure() {
        Swings closed = of(filtered(0.5));
        Swings open = of(filtered(0.6));
        Band gain = closed.less(open, Steady::coolantOverRoomK);
        double alone = Math.hypot(closed.plusMinus(Steady::coolantOverRoomK), open.plusMinus(Steady::coolantOverRoomK));

        assertThat(gain.lowK()).isPositive();
        assertThat((gain.highK() - gain.lowK()) / 2).isLessThan(alone / 3);
        Band none = closed.less(closed, Steady::coolantOverRoomK);
        assertThat(none).isEqualTo(new Band(0, 0));
    }

    /** Measured points make a radiator's heat surer: 5 instead of 15 % for the correlation. */
    @Test
    void measuredPointsNarrowTheBand() {
        Radiator.Measured points = new Radiator.Measured(List.of(new Radiator.HeatPoint(40, 4, 6.7)), List.of());
        Machine.FanMount plain = Cooled.mount("front", "1x120", AirDirection.IN, 1, AirPath.OPEN);
        Machine.FanMount benched = new Machine.FanMount(
                "front",
                AirDirection.IN,
                plain.fans(),
                plain.air(),
                Optional.of(new Machine.RadiatorAt(MachineParts.measured("benched", "1x120", points), 0, 0)));
        double unsure = fins(plain);
        double sure = fins(benched);

        assertThat(sure / unsure).isBetween(0.25, 0.5);
    }

    private static double fins(Machine.FanMount mount) {
        Machine machine = Cooled.mounted(Cooled.with(60, 0.2, BlockOrder.SERIES), List.of(mount));
        Swings swings = of(machine);
        return Math.abs(swings.effects(Steady::coolantOverRoomK).getOrDefault(Scatter.FINS_NAME, 0.0))
                / swings.state().coolantOverRoomK();
    }

    @Test
    void refusesAMachineWithoutASteadyState() {
        Machine sealed = new Machine(
                Cooled.SITE,
                List.of(Cooled.mount("front", "1x120", AirDirection.IN, 1, AirPath.ofPanel(0))),
                List.of(),
                Cooled.usual().water(),
                50);
        assertThatThrownBy(() -> of(sealed)).hasMessageContaining("no steady state: no air passes through the case");
        assertThatThrownBy(() -> MODEL.solve(Cooled.usual().inRoom(30))).hasMessageContaining("the model is for");
    }
}
