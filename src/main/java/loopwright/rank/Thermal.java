package loopwright.rank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.brief.BriefLimits;
import loopwright.fit.FitCase;
import loopwright.fit.ModSet;
import loopwright.loop.CoolingBound;
import loopwright.loop.Junctions;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.Nudge;
import loopwright.loop.Steady;
import loopwright.loop.SteadyState;
import loopwright.loop.air.AirResistance;
import loopwright.loop.air.CaseAir;
import loopwright.loop.air.CaseFlow;

/** Temperatures of builds by the full model, each worked out once: first the air, then each loop in that air. */
final class Thermal {

    private final FitCase fitCase;
    private final MachineModel model;
    private final StackAir air;
    private final BriefLimits.HeatLimits limits;
    private final Map<Openings, Integer> openings = new HashMap<>();
    private final Map<Asked, InAir> known = new HashMap<>();
    private final Map<List<Machine.Vent>, Integer> ventNumbers = new HashMap<>();
    private final List<List<Machine.Vent>> vents = new ArrayList<>();

    Thermal(FitCase fitCase, MachineModel model) {
        this.fitCase = fitCase;
        this.model = model;
        this.air = new StackAir(fitCase);
        this.limits = fitCase.brief().limits().heat().orElse(BriefLimits.HeatLimits.NONE);
    }

    private record Openings(Set<Integer> used, ModSet mods) {}

    private record Asked(List<Blowing> blowings, int vents) {}

    /** The machine of parts at work, a loop, and a mod set. */
    Machine machine(Airing airing, LoopHeat heat, ModSet mods) {
        return new Machine(
                model.site(),
                airing.blowings().stream().map(Blowing::mount).toList(),
                vents.get(number(airing, mods)),
                heat.water(),
                heat.caseW());
    }

    private int number(Airing airing, ModSet mods) {
        Set<Integer> used = new HashSet<>();
        airing.blowings().forEach(b -> used.add(b.fitting().stack().frame().index()));
        return openings.computeIfAbsent(
                new Openings(used, mods),
                o -> ventNumbers.computeIfAbsent(air.vents(o.used(), o.mods()), v -> {
                    vents.add(v);
                    return vents.size() - 1;
                }));
    }

    /** Parts at work in balance with the air inside. */
    InAir inAir(Airing airing, ModSet mods) {
        int number = number(airing, mods);
        return known.computeIfAbsent(new Asked(airing.blowings(), number), a -> {
            List<AirResistance> ways = vents.get(number).stream()
                    .map(v -> model.opening(v, Nudge.NONE))
                    .toList();
            CaseAir caseAir =
                    new CaseAir(airing.blowings().stream().map(Blowing::branch).toList(), ways);
            return new InAir(this, airing, mods, caseAir.balance());
        });
    }

    /** One way of the air, and the loops in it. */
    static final class InAir {

        private final Thermal thermal;
        private final Airing airing;
        private final ModSet mods;
        private final CaseFlow flow;
        private final double inWPerK;
        private final double outWPerK;
        private final double airWPerK;
        private final IdentityHashMap<LoopHeat, Optional<Integer>> centiK = new IdentityHashMap<>();

        InAir(Thermal thermal, Airing airing, ModSet mods, CaseFlow flow) {
            this.thermal = thermal;
            this.airing = airing;
            this.mods = mods;
            this.flow = flow;
            double in = 0;
            double out = 0;
            for (int i = 0; i < airing.blowings().size(); i++) {
                Blowing blowing = airing.blowings().get(i);
                double most = blowing.mostConductanceWPerK(flow.coreFlowM3PerS(i));
                in += blowing.blowsOut() ? 0 : most;
                out += blowing.blowsOut() ? most : 0;
            }
            inWPerK = in;
            outWPerK = out;
            airWPerK = flow.inM3PerS()
                    * thermal.model.air().densityKgPerM3()
                    * thermal.model.air().heatCapacityJPerKgK();
        }

        /** A temperature that no loop with at least so much heat undercuts in this air, K over the room. */
        double leastOverRoomK(double coolantW, double caseW) {
            return CoolingBound.leastOverRoomK(coolantW, caseW, inWPerK, outWPerK, airWPerK);
        }

        /** Coolant over room, hundredths of a kelvin; empty when there is no steady state or a part gets too hot. */
        Optional<Integer> overRoomCentiK(LoopHeat heat) {
            return centiK.computeIfAbsent(
                    heat,
                    h -> thermal.solve(this, h).filter(thermal::keepsLimits).map(s -> Centi.of(s.coolantOverRoomK())));
        }
    }

    private Optional<Solved> solve(InAir in, LoopHeat heat) {
        Machine machine = machine(in.airing, heat, in.mods);
        SteadyState state = model.solve(machine, in.flow, Nudge.NONE);
        return state.found().map(s -> new Solved(machine, s));
    }

    private record Solved(Machine machine, Steady state) {
        double coolantOverRoomK() {
            return state.coolantOverRoomK();
        }
    }

    private boolean keepsLimits(Solved solved) {
        if (limits.equals(BriefLimits.HeatLimits.NONE)) {
            return true;
        }
        return Junctions.keep(
                solved.machine(), solved.state(), fitCase.catalog().practice(), limits);
    }
}
