package loopwright.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.brief.LoopWish.BlockOrder;
import loopwright.catalog.part.Coolant;
import loopwright.loop.Duty;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.Steady;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.AirPath;
import loopwright.testing.MachineParts;
import org.junit.jupiter.api.Test;

/** Common practice, no source: which way to blow, what loop order and depth and area are worth. */
class AirPlanTest {

    private static final Machine.Site SITE = new Machine.Site(25, 0);

    private static final MachineModel MODEL = new MachineModel(MachineParts.PRACTICE, SITE);

    private static Machine.FanMount mount(String name, String pattern, AirDirection way, double rpm, double coreMm) {
        Pattern fans = Pattern.parse(pattern);
        double finsPerInch = coreMm > 30 ? 11 : 16;
        return new Machine.FanMount(
                name,
                way,
                new Machine.Fans(MachineParts.pressureFan(rpm), fans.fans(), 1, Duty.FULL),
                new Machine.MountAir(AirPath.ofPanel(0.6), MachineParts.face(fans)),
                coreMm == 0
                        ? Optional.empty()
                        : Optional.of(new Machine.RadiatorAt(
                                MachineParts.radiator(pattern, coreMm, finsPerInch, coreMm > 30 ? 2 : 1), 0, 0)));
    }

    private static Steady solve(List<Machine.FanMount> mounts, BlockOrder order) {
        Machine.Water water = new Machine.Water(
                new Machine.PumpAt(MachineParts.pump(38, 25, 15), Duty.FULL),
                MachineParts.coolant(Coolant.BaseLiquid.WATER, 0),
                new Machine.Runs(MachineParts.tube(10), 1.5),
                List.of(
                        new Machine.BlockAt(Machine.PROCESSOR, "processor", MachineParts.block(14, 0.18), 120),
                        new Machine.BlockAt(Machine.CARD, "card", MachineParts.block(9, 0.06), 250)),
                order);
        AirPath panel = AirPath.ofPanel(0.6);
        Machine.Vent side = new Machine.Vent(
                "side", Optional.of(new Machine.MountAir(panel, MachineParts.face(Pattern.parse("3x120")))), 0);
        Machine machine = new Machine(
                SITE, mounts, List.of(side, new Machine.Vent("seams", Optional.empty(), 60e-4)), water, 100);
        return MODEL.solve(machine).found().orElseThrow();
    }

    private static Steady solve(Machine.FanMount... mounts) {
        return solve(List.of(mounts), BlockOrder.SERIES);
    }

    /** Two intakes and one exhaust beat all exhaust by 2 to 5 K for the coolant, and cost the air inside 2 to 4 K. */
    @Test
    void twoIntakesAndOneExhaustBeatAllExhaust() {
        Steady mixed = solve(
                mount("front", "2x120", AirDirection.IN, 1000, 20),
                mount("floor", "2x120", AirDirection.IN, 1000, 20),
                mount("rear", "1x120", AirDirection.OUT, 1000, 0));
        Steady out = solve(
                mount("front", "2x120", AirDirection.OUT, 1000, 20),
                mount("floor", "2x120", AirDirection.OUT, 1000, 20),
                mount("rear", "1x120", AirDirection.OUT, 1000, 0));
        assertThat(out.coolantOverRoomK() - mixed.coolantOverRoomK()).isBetween(2.0, 5.0);
        assertThat(mixed.caseOverRoomK() - out.caseOverRoomK()).isPositive();
    }

    /** Loop order is worth less than 2 K at 4 L/min: radiators turned round, blocks side by side or in a row. */
    @Test
    void loopOrderIsWorthLessThanTwoKelvin() {
        List<Machine.FanMount> mounts = new ArrayList<>(List.of(
                mount("front", "3x120", AirDirection.IN, 1000, 20),
                mount("roof", "2x120", AirDirection.OUT, 1000, 20)));
        Steady straight = solve(mounts, BlockOrder.SERIES);
        Steady beside = solve(mounts, BlockOrder.PARALLEL);
        Collections.reverse(mounts);
        Steady turned = solve(mounts, BlockOrder.SERIES);
        assertThat(straight.water().flowM3PerS() * 60_000).isCloseTo(4, within(0.5));
        assertThat(turned.coolantOverRoomK()).isCloseTo(straight.coolantOverRoomK(), within(2.0));
        assertThat(beside.coolantOverRoomK()).isCloseTo(straight.coolantOverRoomK(), within(2.0));
        assertThat(straight.water().warmestC() - straight.water().coldestC()).isLessThan(2);
    }

    /** Below 1000 rpm thickness buys almost nothing, area everything. */
    @Test
    void areaBuysMoreThanThickness() {
        double plain = solve(mount("front", "2x120", AirDirection.IN, 750, 20)).coolantOverRoomK();
        double thick = solve(mount("front", "2x120", AirDirection.IN, 750, 47)).coolantOverRoomK();
        double wide = solve(mount("front", "3x120", AirDirection.IN, 750, 20)).coolantOverRoomK();
        assertThat(thick / plain).isBetween(0.9, 1.1);
        assertThat(wide / plain).isLessThan(0.75);
    }
}
