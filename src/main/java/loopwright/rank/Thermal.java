package loopwright.rank;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.catalog.brief.BriefLimits;
import loopwright.fit.FitCase;
import loopwright.loop.CoolingBound;
import loopwright.loop.Junctions;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.Nudge;
import loopwright.loop.Steady;
import loopwright.loop.SteadyState;
import loopwright.loop.air.CaseAir;
import loopwright.loop.air.CaseFlow;
import loopwright.rank.Vents.Openings;

/** Temperatures of builds by the full model, each worked out once: first the air, then each loop in that air. */
final class Thermal {

    private final FitCase fitCase;
    private final MachineModel model;
    private final BriefLimits.HeatLimits limits;
    private final Map<Asked, InAir> known = new HashMap<>();

    /**
     * Temperatures of a case's builds.
     *
     * @param limits what parts and the air inside may reach
     */
    Thermal(FitCase fitCase, MachineModel model, BriefLimits.HeatLimits limits) {
        this.fitCase = fitCase;
        this.model = model;
        this.limits = limits;
    }

    private record Asked(List<Blowing> blowings, Openings openings) {}

    /** Parts at work in balance with the air inside. */
    InAir inAir(Airing airing, Openings openings) {
        return known.computeIfAbsent(new Asked(airing.blowings(), openings), a -> {
            CaseAir caseAir =
                    new CaseAir(airing.blowings().stream().map(Blowing::branch).toList(), openings.ways());
            return new InAir(this, a, caseAir.balance());
        });
    }

    /** One way of the air, and the loops in it. */
    static final class InAir {

        private final Thermal thermal;
        private final Asked asked;
        private final CaseFlow flow;
        private final double inWPerK;
        private final double outWPerK;
        private final double airWPerK;
        private final IdentityHashMap<LoopHeat, Optional<Integer>> centiK = new IdentityHashMap<>();

        private InAir(Thermal thermal, Asked asked, CaseFlow flow) {
            this.thermal = thermal;
            this.asked = asked;
            this.flow = flow;
            double in = 0;
            double out = 0;
            for (int i = 0; i < asked.blowings().size(); i++) {
                Blowing blowing = asked.blowings().get(i);
                double most = blowing.draught().mostConductanceWPerK(flow.coreFlowM3PerS(i));
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

        /** The machine with a loop. */
        Machine machine(LoopHeat heat) {
            return new Machine(
                    thermal.model.site(),
                    asked.blowings().stream().map(Blowing::mount).toList(),
                    asked.openings().vents(),
                    heat.water(),
                    heat.caseW());
        }

        /** Coolant over room, hundredths of a kelvin; empty when there is no steady state or a part gets too hot. */
        Optional<Integer> overRoomCentiK(LoopHeat heat) {
            return centiK.computeIfAbsent(
                    heat,
                    h -> thermal.solve(this, h).filter(thermal::keepsLimits).map(s -> Centi.of(s.coolantOverRoomK())));
        }
    }

    private Optional<Solved> solve(InAir in, LoopHeat heat) {
        Machine machine = in.machine(heat);
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
