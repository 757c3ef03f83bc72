package loopwright.rank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loopwright.fit.FitCase;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.Nudge;
import loopwright.loop.air.AirResistance;

/** The passive openings of builds, each set of them worked out once and numbered. */
final class Vents {

    private final MachineModel model;
    private final StackAir air;
    private final AirMods airMods;
    private final Map<Asked, Openings> asked = new HashMap<>();
    private final Map<List<Machine.Vent>, Openings> known = new HashMap<>();

    Vents(FitCase fitCase, MachineModel model) {
        this.model = model;
        this.air = new StackAir(fitCase);
        this.airMods = new AirMods(fitCase.chassis());
    }

    private record Asked(long used, ModSet mods) {}

    /** The openings that some stacks and mods leave. */
    Openings of(List<Stack> stacks, ModSet mods) {
        long used = 0;
        for (Stack stack : stacks) {
            used |= 1L << stack.frame().index();
        }
        return asked.computeIfAbsent(
                new Asked(used, airMods.anywhere(mods)), a -> numbered(air.vents(StackAir.used(stacks), mods)));
    }

    private Openings numbered(List<Machine.Vent> vents) {
        return known.computeIfAbsent(vents, v -> new Openings(v, model));
    }

    /** One set of openings; told from others by identity. */
    static final class Openings {
        private final List<Machine.Vent> vents;
        private final List<AirResistance> ways;
        private final double heatPerM3;
        private final Map<Integer, AirBounds> bounds = new HashMap<>();

        private Openings(List<Machine.Vent> vents, MachineModel model) {
            this.vents = vents;
            List<AirResistance> all = new ArrayList<>();
            vents.forEach(v -> all.add(model.opening(v, Nudge.NONE)));
            this.ways = List.copyOf(all);
            this.heatPerM3 = model.air().densityKgPerM3() * model.air().heatCapacityJPerKgK();
        }

        List<Machine.Vent> vents() {
            return vents;
        }

        List<AirResistance> ways() {
            return ways;
        }

        AirBounds bounds(int dutyPercent) {
            return bounds.computeIfAbsent(dutyPercent, d -> new AirBounds(ways, d, heatPerM3));
        }
    }
}
