package loopwright.loop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import loopwright.catalog.brief.LoopWish.BlockOrder;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Pump;
import loopwright.loop.air.AirBranch;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.AirPath;
import loopwright.loop.air.CaseAir;
import loopwright.loop.air.CaseFlow;
import loopwright.loop.fluid.Air;
import loopwright.testing.MachineParts;

/** Ways in which the physics is wrong on purpose: each solves another machine than the one it is asked about, or otherwise. */
enum Fault {

    /** What blows in is taken to blow out. */
    IN_AND_OUT_SWAPPED {
        @Override
        SteadyState solve(Machine m) {
            return solved(
                    m,
                    mount -> mount.blowing(mount.direction() == AirDirection.IN ? AirDirection.OUT : AirDirection.IN));
        }
    },

    /** A pump's sheet in L/min is read as m³/h. */
    PUMP_FLOW_AS_M3_PER_H {
        @Override
        SteadyState solve(Machine m) {
            return pumped(m, 1000.0 / 60, 1, 1);
        }
    },

    /** A pump's sheet in kPa is read as Pa. */
    PUMP_HEAD_AS_PA {
        @Override
        SteadyState solve(Machine m) {
            return pumped(m, 1, 1e-3, 1);
        }
    },

    /** The pump's heat is forgotten. */
    PUMP_HEAT_FORGOTTEN {
        @Override
        SteadyState solve(Machine m) {
            return pumped(m, 1, 1, 0);
        }
    },

    /** A fan's sheet in Pa is read as millimetres of water. */
    FAN_PRESSURE_AS_MM_OF_WATER {
        @Override
        SteadyState solve(Machine m) {
            return blown(m, 1, 9.80665);
        }
    },

    /** A fan's sheet in m³/h is read as cubic feet a minute. */
    FAN_FLOW_AS_CUBIC_FEET {
        @Override
        SteadyState solve(Machine m) {
            return blown(m, 1.699, 1);
        }
    },

    /** Fans push as in standard air wherever they are. */
    DENSITY_NOT_APPLIED_TO_FANS {
        @Override
        SteadyState solve(Machine m) {
            return blown(
                    m, 1, 1.2 / Air.at(m.site().roomC(), m.site().altitudeM()).densityKgPerM3());
        }
    },

    /** Two layers of fans are taken to stand side by side. */
    LAYERS_SIDE_BY_SIDE {
        @Override
        SteadyState solve(Machine m) {
            return solved(m, mount -> {
                Machine.Fans f = mount.fans();
                return fanned(mount, new Machine.Fans(f.fan(), f.row() * f.layers(), 1, f.duty()));
            });
        }
    },

    /** All fans run at full speed whatever they are told. */
    DUTY_IGNORED {
        @Override
        SteadyState solve(Machine m) {
            return solved(m, mount -> mount.at(Duty.FULL));
        }
    },

    /** A filter is forgotten. */
    FILTER_FORGOTTEN {
        @Override
        SteadyState solve(Machine m) {
            return solved(m, mount -> {
                AirPath p = mount.air().path();
                AirPath bare =
                        new AirPath(p.openShare(), p.where(), OptionalDouble.empty(), p.cover(), p.outsideDepthM());
                return new Machine.FanMount(
                        mount.mount(),
                        mount.direction(),
                        mount.fans(),
                        new Machine.MountAir(bare, mount.air().face()),
                        mount.radiator());
            });
        }
    },

    /** The gap round a radiator is forgotten. */
    GAP_FORGOTTEN {
        @Override
        SteadyState solve(Machine m) {
            return solved(
                    m,
                    mount -> cooled(
                            mount,
                            mount.radiator().map(r -> new Machine.RadiatorAt(r.radiator(), r.maskedShare(), 0))));
        }
    },

    /** What masks a core is forgotten. */
    MASK_FORGOTTEN {
        @Override
        SteadyState solve(Machine m) {
            return solved(
                    m,
                    mount -> cooled(
                            mount, mount.radiator().map(r -> new Machine.RadiatorAt(r.radiator(), 0, r.gapM2()))));
        }
    },

    /** Radiators breathe the room whichever way they blow. */
    ALL_BREATHE_THE_ROOM {
        @Override
        SteadyState solve(Machine m) {
            MachineModel model = MachineDice.model(m.site());
            CaseFlow flow = flow(model, m);
            List<AirBranch> in = new ArrayList<>();
            flow.air().branches().forEach(b -> in.add(new AirBranch(b.name(), AirDirection.IN, b.fans(), b.way())));
            CaseFlow turned =
                    new CaseFlow(new CaseAir(in, flow.air().openings()), flow.insidePa(), flow.coreFlowsM3PerS());
            return model.solve(m, turned, Nudge.NONE);
        }
    },

    /** Heat in the case is read in milliwatts. */
    CASE_HEAT_IN_MILLIWATTS {
        @Override
        SteadyState solve(Machine m) {
            return solved(new Machine(m.site(), m.mounts(), m.openings(), m.water(), m.caseHeatW() / 1000));
        }
    },

    /** Glycol is taken for water. */
    GLYCOL_AS_WATER {
        @Override
        SteadyState solve(Machine m) {
            Machine.Water w = m.water();
            return solved(wet(
                    m,
                    new Machine.Water(
                            w.pump(),
                            MachineParts.coolant(Coolant.BaseLiquid.WATER, 0),
                            w.runs(),
                            w.blocks(),
                            w.order())));
        }
    },

    /** Blocks side by side are taken to stand in a row, and the other way round. */
    BLOCK_ORDER_TURNED {
        @Override
        SteadyState solve(Machine m) {
            Machine.Water w = m.water();
            BlockOrder other = w.order() == BlockOrder.SERIES ? BlockOrder.PARALLEL : BlockOrder.SERIES;
            return solved(wet(m, new Machine.Water(w.pump(), w.coolant(), w.runs(), w.blocks(), other)));
        }
    },

    /** Air that comes in by openings without fans does not cool the inside. */
    OPENINGS_BRING_NO_AIR {
        @Override
        SteadyState solve(Machine m) {
            MachineModel model = MachineDice.model(m.site());
            CaseFlow flow = flow(model, m);
            CaseFlow shut = new CaseFlow(
                    new CaseAir(flow.air().branches(), List.of()), flow.insidePa(), flow.coreFlowsM3PerS());
            return model.solve(m, shut, Nudge.NONE);
        }
    };

    /** Solves wrongly. */
    abstract SteadyState solve(Machine asked);

    private static SteadyState solved(Machine machine) {
        return MachineDice.solve(machine);
    }

    private static SteadyState solved(Machine m, UnaryOperator<Machine.FanMount> change) {
        return solved(Cooled.mounted(m, m.mounts().stream().map(change).toList()));
    }

    private static CaseFlow flow(MachineModel model, Machine m) {
        List<AirBranch> branches = m.mounts().stream()
                .map(mount -> model.branch(mount, Nudge.NONE))
                .toList();
        return new CaseAir(
                        branches,
                        m.openings().stream()
                                .map(v -> model.opening(v, Nudge.NONE))
                                .toList())
                .balance();
    }

    private static Machine.FanMount fanned(Machine.FanMount m, Machine.Fans fans) {
        return new Machine.FanMount(m.mount(), m.direction(), fans, m.air(), m.radiator());
    }

    private static Machine.FanMount cooled(Machine.FanMount m, Optional<Machine.RadiatorAt> radiator) {
        return new Machine.FanMount(m.mount(), m.direction(), m.fans(), m.air(), radiator);
    }

    private static Machine wet(Machine m, Machine.Water water) {
        return new Machine(m.site(), m.mounts(), m.openings(), water, m.caseHeatW());
    }

    private static SteadyState pumped(Machine m, double flowFactor, double headFactor, double heatFactor) {
        Machine.Water w = m.water();
        Pump pump = w.pump().pump();
        List<Pump.CurvePoint> curve = pump.water().curve().stream()
                .map(p -> new Pump.CurvePoint(p.flowLPerMin() * flowFactor, p.headKPa() * headFactor))
                .toList();
        Pump other =
                MachineParts.pump(pump.id() + " misread", curve, pump.electric().heatToCoolantW() * heatFactor);
        return solved(wet(
                m,
                new Machine.Water(
                        new Machine.PumpAt(other, w.pump().duty()), w.coolant(), w.runs(), w.blocks(), w.order())));
    }

    private static SteadyState blown(Machine m, double flowFactor, double pressureFactor) {
        return solved(m, mount -> {
            Fan fan = mount.fans().fan();
            List<Fan.CurvePoint> curve = fan.air().curve().stream()
                    .map(p -> new Fan.CurvePoint(p.flowM3PerH() * flowFactor, p.pressurePa() * pressureFactor))
                    .toList();
            Fan other = MachineParts.fan(
                    fan.id() + " misread", fan.frame().sizeMm(), fan.air().dutyMinPercent(), curve);
            return fanned(
                    mount,
                    new Machine.Fans(
                            other,
                            mount.fans().row(),
                            mount.fans().layers(),
                            mount.fans().duty()));
        });
    }
}
