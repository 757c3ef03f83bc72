package loopwright.loop;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import loopwright.catalog.brief.LoopWish.BlockOrder;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Pump;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.AirPath;
import loopwright.loop.fluid.Air;
import loopwright.loop.fluid.CoolantLiquid;
import loopwright.loop.fluid.Liquid;
import loopwright.testing.MachineParts;

/**
 * What holds of every machine in steady state. Each law reads the machine that was asked about, works out what it can by
 * itself (sums, lines through a sheet's points, fan laws), and tells by how much the state is off.
 */
enum Law {

    /** The radiators take out what blocks and pump bring in. */
    HEAT_CLOSES(1e-9) {
        @Override
        double off(Machine asked, Steady got) {
            double in = loadW(asked);
            return (radiators(asked, got).stream()
                                    .mapToDouble(r -> r.state().heatW())
                                    .sum()
                            - in)
                    / in;
        }
    },

    /** As much air leaves the case as comes in. */
    AIR_CLOSES(1e-9) {
        @Override
        double off(Machine asked, Steady got) {
            double in = got.air().inM3PerS();
            return (got.air().outM3PerS() - in) / in;
        }
    },

    /** What the air carries out of the case is the heat in it and that of radiators that blow in. */
    CASE_AIR_CLOSES(1e-9) {
        @Override
        double off(Machine asked, Steady got) {
            double carriedW = got.air().inM3PerS()
                    * heatPerM3(asked)
                    * (got.caseC() - asked.site().roomC());
            double broughtW = asked.caseHeatW();
            for (RadiatorOn radiator : radiators(asked, got)) {
                broughtW += radiator.mount().direction() == AirDirection.IN
                        ? radiator.state().heatW()
                        : 0;
            }
            return (carriedW - broughtW) / loadW(asked);
        }
    },

    /** Radiators that blow in breathe the room, those that blow out the air inside; either warms what it breathes. */
    RADIATORS_BREATHE(1e-9) {
        @Override
        double off(Machine asked, Steady got) {
            double worst = 0;
            for (RadiatorOn radiator : radiators(asked, got)) {
                boolean in = radiator.mount().direction() == AirDirection.IN;
                double breathesC = in ? asked.site().roomC() : got.caseC();
                worst = Math.max(worst, Math.abs(radiator.state().inletC() - breathesC));
                double airWPerK = got.air().coreFlowM3PerS(radiator.branch()) * heatPerM3(asked);
                double warmedW = airWPerK
                        * (radiator.state().outletC() - radiator.state().inletC());
                double heatW = airWPerK > 0 ? radiator.state().heatW() : 0;
                worst = Math.max(worst, Math.abs(warmedW - heatW) / loadW(asked));
            }
            return worst;
        }
    },

    /** The coolant's rise over each block is the block's heat over the capacity rate of what passes it. */
    BLOCKS_WARM_THE_COOLANT(1e-9) {
        @Override
        double off(Machine asked, Steady got) {
            double worst = 0;
            for (Machine.BlockAt block : asked.water().blocks()) {
                Steady.Stop stop = stop(got, block.name());
                double heatW = capacityWPerK(asked, got, stop.flowM3PerS()) * (stop.outC() - stop.inC());
                worst = Math.max(worst, Math.abs(heatW - block.heatW()) / loadW(asked));
            }
            return worst;
        }
    },

    /** Side by side the blocks' flows add up to the loop's and lose the same pressure; in a row each is the loop's. */
    BLOCKS_SHARE_THE_FLOW(1e-6) {
        @Override
        double off(Machine asked, Steady got) {
            List<Steady.Stop> stops = new ArrayList<>();
            asked.water().blocks().forEach(b -> stops.add(stop(got, b.name())));
            double whole = got.water().flowM3PerS();
            if (asked.water().order() == BlockOrder.PARALLEL && stops.size() > 1) {
                double sum = stops.stream().mapToDouble(Steady.Stop::flowM3PerS).sum();
                double split = Math.abs(stops.get(0).lossPa() / stops.get(1).lossPa() - 1);
                return Math.max(Math.abs(sum / whole - 1), split);
            }
            return stops.stream()
                    .mapToDouble(s -> Math.abs(s.flowM3PerS() / whole - 1))
                    .max()
                    .orElse(0);
        }
    },

    /** The pump's sheet at its speed and the flow gives the head that all stations take; to the straightness of a sheet. */
    PUMP_MEETS_LOOP(0.01) {
        @Override
        double off(Machine asked, Steady got) {
            Machine.PumpAt at = asked.water().pump();
            List<Pump.CurvePoint> curve = at.pump().water().curve();
            double speed = Math.max(at.duty().percent(), at.pump().electric().dutyMinPercent()) / 100;
            double litres = got.water().flowM3PerS() * 60_000 / speed;
            double sheetKPa = OnSheet.line(curve, Pump.CurvePoint::flowLPerMin, Pump.CurvePoint::headKPa, litres);
            double takenPa = 0;
            for (Steady.Stop stop : got.stops()) {
                boolean beside = asked.water().order() == BlockOrder.PARALLEL
                        && asked.water().blocks().size() > 1
                        && asked.water().blocks().stream()
                                .anyMatch(b -> b.name().equals(stop.name()));
                takenPa += beside ? 0 : stop.lossPa();
            }
            return (sheetKPa * 1000 * speed * speed - takenPa) / (curve.get(0).headKPa() * 1000 * speed * speed);
        }
    },

    /** Each mount's fans, by their sheet, the fan laws and the air of the site, give what path, core and case take. */
    FANS_MEET_PATHS(0.015) {
        @Override
        double off(Machine asked, Steady got) {
            double worst = 0;
            for (int i = 0; i < asked.mounts().size(); i++) {
                worst = Math.max(worst, Math.abs(FanSheet.off(asked, got, i)));
            }
            return worst;
        }
    };

    private final double allowed;

    Law(double allowed) {
        this.allowed = allowed;
    }

    /** By how much a state breaks the law, as a share of what counts; its sign does not matter. */
    abstract double off(Machine asked, Steady got);

    /** Whether a state keeps the law; not a number does not. */
    boolean keeps(Machine asked, Steady got) {
        return Math.abs(off(asked, got)) <= allowed;
    }

    /** A radiator with its mount and the mount's number. */
    record RadiatorOn(int branch, Machine.FanMount mount, Steady.RadiatorState state) {}

    static List<RadiatorOn> radiators(Machine asked, Steady got) {
        List<RadiatorOn> out = new ArrayList<>();
        for (int i = 0; i < asked.mounts().size(); i++) {
            Machine.FanMount mount = asked.mounts().get(i);
            if (mount.radiator().isPresent()) {
                out.add(new RadiatorOn(i, mount, got.radiators().get(out.size())));
            }
        }
        return out;
    }

    /** Heat into the coolant: the blocks', and the pump's, which goes with the cube of its speed. */
    static double loadW(Machine asked) {
        Pump.Electric pump = asked.water().pump().pump().electric();
        double speed = Math.max(asked.water().pump().duty().percent(), pump.dutyMinPercent()) / 100;
        DoubleStream blocks = asked.water().blocks().stream().mapToDouble(Machine.BlockAt::heatW);
        return blocks.sum() + pump.heatToCoolantW() * speed * speed * speed;
    }

    static double heatPerM3(Machine asked) {
        Air air = Air.at(asked.site().roomC(), asked.site().altitudeM());
        return air.densityKgPerM3() * air.heatCapacityJPerKgK();
    }

    private static double capacityWPerK(Machine asked, Steady got, double flowM3PerS) {
        Liquid liquid = CoolantLiquid.of(asked.water().coolant());
        double meanC = got.water().meanC();
        return flowM3PerS * liquid.densityKgPerM3(meanC) * liquid.heatCapacityJPerKgK(meanC);
    }

    private static Steady.Stop stop(Steady got, String name) {
        return got.stops().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** A mount's fans by their sheet. */
    private static final class FanSheet {
        private FanSheet() {}

        static double off(Machine asked, Steady got, int branch) {
            Machine.FanMount mount = asked.mounts().get(branch);
            Air air = Air.at(asked.site().roomC(), asked.site().altitudeM());
            double speed = Math.max(
                            mount.fans().duty().percent(),
                            mount.fans().fan().air().dutyMinPercent())
                    / 100;
            double core = got.air().coreFlowM3PerS(branch);
            OptionalDouble corePa = mount.radiator().isPresent()
                    ? OptionalDouble.of(corePa(asked.site(), mount.radiator().get(), core))
                    : OptionalDouble.empty();
            double whole = core;
            if (mount.radiator().isPresent()) {
                double gapM2 = mount.radiator().get().gapM2();
                whole += 0.6 * gapM2 * Math.sqrt(2 * corePa.getAsDouble() / air.densityKgPerM3());
            }
            double scale = mount.fans().layers() * speed * speed * air.densityKgPerM3() / 1.2;
            List<Fan.CurvePoint> curve = mount.fans().fan().air().curve();
            double perFan = whole * 3600 / (mount.fans().row() * speed);
            double fansPa = scale * OnSheet.line(curve, Fan.CurvePoint::flowM3PerH, Fan.CurvePoint::pressurePa, perFan);
            double help = mount.direction() == AirDirection.OUT
                    ? got.air().insidePa()
                    : -got.air().insidePa();
            double over = fansPa + help - path(mount, air).lossPa(whole) - corePa.orElse(0);
            boolean stalled = core == 0 && over <= 0;
            boolean driven = perFan > curve.get(curve.size() - 1).flowM3PerH();
            return stalled || driven ? 0 : over / (scale * curve.get(0).pressurePa());
        }

        private static double corePa(Machine.Site site, Machine.RadiatorAt at, double core) {
            MachineModel model = MachineDice.model(site);
            double areaM2 = model.core(at.radiator()).faceAreaM2() * (1 - at.maskedShare());
            return model.inAir(at.radiator()).lossPa(core / areaM2);
        }

        private static loopwright.loop.air.AirResistance path(Machine.FanMount mount, Air air) {
            AirPath.Medium medium = new AirPath.Medium(
                    air.densityKgPerM3(),
                    air.viscosityPaS(),
                    MachineParts.PRACTICE.air().panelHoleMm() * 1e-3,
                    MachineParts.PRACTICE.air().filterHoleMm() * 1e-3);
            return mount.air().path().resistance(mount.air().face(), medium);
        }
    }
}
