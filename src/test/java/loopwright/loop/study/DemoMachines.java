package loopwright.loop.study;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.brief.LoopWish.BlockOrder;
import loopwright.catalog.chassis.Mount.Where;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Tube;
import loopwright.catalog.standard.Practice;
import loopwright.loop.Duty;
import loopwright.loop.Machine;
import loopwright.loop.Machine.FanMount;
import loopwright.loop.MachineModel;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.AirPath;

/** Machines of the demo catalogue's invented parts. */
final class DemoMachines {

    private static final Catalog CATALOG = CatalogReader.read(Path.of("catalogs"));

    static final Machine.Site SITE = new Machine.Site(25, 0);

    private DemoMachines() {}

    static Practice practice() {
        return CATALOG.practice();
    }

    static MachineModel model() {
        return new MachineModel(practice(), SITE);
    }

    /** Front 2x140 in, roof 2x120 out, a bare fan out at the rear: a short tower's usual loop. */
    static Machine usual() {
        return of(List.of(
                radiator("front", AirDirection.IN, "rad-2x140-30a", "fan-140-25-1200", 0.45),
                radiator("roof", AirDirection.OUT, "rad-2x120-30a", "fan-120-25-1300", 0.6),
                bare("rear", AirDirection.OUT, "fan-120-25-1300", 0.7)));
    }

    /** Front and roof of the same, all blown in. */
    static Machine allIn() {
        return of(List.of(
                radiator("front", AirDirection.IN, "rad-2x140-30a", "fan-140-25-1200", 0.45),
                radiator("roof", AirDirection.IN, "rad-2x120-30a", "fan-120-25-1300", 0.6)));
    }

    /** One radiator that blows in. */
    static Machine single() {
        return of(List.of(radiator("front", AirDirection.IN, "rad-3x120-30a", "fan-120-25-1850", 0.5)));
    }

    static Machine of(List<FanMount> mounts) {
        Machine.Vent leaks = new Machine.Vent("seams and slots", Optional.empty(), 20e-4);
        Machine.Vent floor = new Machine.Vent("floor", Optional.of(air(new Pattern(2, 120), 0.5)), 0);
        Machine.Water water = new Machine.Water(
                new Machine.PumpAt(CATALOG.part(Pump.class, "combo-tube-150"), new Duty(60)),
                CATALOG.part(Coolant.class, "coolant-pg-25"),
                new Machine.Runs(CATALOG.part(Tube.class, "tube-soft-10-16"), 2),
                List.of(
                        new Machine.BlockAt(
                                Machine.PROCESSOR,
                                "cpu",
                                CATALOG.part(Block.class, "block-jet-a").flow(),
                                110),
                        new Machine.BlockAt(
                                Machine.CARD,
                                "gpu",
                                CATALOG.part(GraphicsCard.class, "gpu-mid-block")
                                        .power()
                                        .block()
                                        .orElseThrow(),
                                190)),
                BlockOrder.SERIES);
        return new Machine(SITE, mounts, List.of(floor, leaks), water, 75);
    }

    static FanMount radiator(String mount, AirDirection way, String radiator, String fan, double open) {
        Radiator r = CATALOG.part(Radiator.class, radiator);
        return new FanMount(
                mount,
                way,
                fans(fan, r.pattern().fans()),
                air(r.pattern(), open),
                Optional.of(new Machine.RadiatorAt(r, 0, 0)));
    }

    static FanMount bare(String mount, AirDirection way, String fan, double open) {
        Fan f = CATALOG.part(Fan.class, fan);
        Pattern one = new Pattern(1, f.frame().sizeMm());
        return new FanMount(mount, way, fans(fan, 1), air(one, open), Optional.empty());
    }

    private static Machine.Fans fans(String fan, int row) {
        return new Machine.Fans(CATALOG.part(Fan.class, fan), row, 1, new Duty(70));
    }

    private static Machine.MountAir air(Pattern pattern, double open) {
        double sizeM = pattern.sizeMm() / 1000.0;
        return new Machine.MountAir(
                new AirPath(open, Where.FACE, OptionalDouble.empty(), Optional.empty(), Double.POSITIVE_INFINITY),
                new AirPath.Face(pattern.fans() * sizeM * sizeM, 2 * sizeM * (pattern.fans() + 1)));
    }
}
