package loopwright.oracle.rank;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import loopwright.catalog.brief.BriefLimits;
import loopwright.catalog.standard.Practice;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.Steady;
import loopwright.oracle.OracleCase;

/** Temperatures of machines, each solved once: a machine is what hangs where, the ways for air, and the loop. */
final class BruteThermal {
    private static final double M3_PER_S_IN_L_PER_MIN = 60_000;

    private final Practice practice;
    private final BriefLimits.HeatLimits limits;
    private final MachineModel model;
    private final Numbers<Machine.FanMount> mounts = new Numbers<>();
    private final Numbers<List<Machine.Vent>> openings = new Numbers<>();
    private final Numbers<BruteLoop> loops = new Numbers<>();
    private final Numbers<Around> airs = new Numbers<>();
    private final Map<Long, OptionalLong> known = new HashMap<>();

    /** Mounts with fans, and the openings besides. */
    private record Around(List<Integer> mounts, int openings) {}

    BruteThermal(OracleCase question, RankFault fault) {
        BriefLimits all = question.brief().limits();
        BriefLimits.HeatLimits heat = all.heat().orElse(BriefLimits.HeatLimits.NONE);
        this.practice = question.catalog().practice();
        this.limits = fault == RankFault.PARTS_MAY_BURN ? BriefLimits.HeatLimits.NONE : heat;
        double altitudeM = fault == RankFault.AT_THE_SEA ? 0 : heat.altitudeM().orElse(0.0);
        this.model = new MachineModel(practice, new Machine.Site(all.roomC(), altitudeM));
    }

    int mount(Machine.FanMount mount) {
        return mounts.of(mount);
    }

    int openings(List<Machine.Vent> vents) {
        return openings.of(vents);
    }

    int loop(BruteLoop loop) {
        return loops.of(loop);
    }

    int air(List<Integer> mountNumbers, int openingsNumber) {
        return airs.of(new Around(mountNumbers, openingsNumber));
    }

    /** How many machines were solved. */
    int solved() {
        return known.size();
    }

    /** Coolant over room, hundredths of a kelvin; empty without a steady state, or when a part gets too hot. */
    OptionalLong centiK(int air, int loop) {
        return known.computeIfAbsent(((long) air << Integer.SIZE) + loop, k -> solve(airs.the(air), loops.the(loop)));
    }

    private OptionalLong solve(Around around, BruteLoop loop) {
        Machine machine = new Machine(
                model.site(),
                around.mounts().stream().map(mounts::the).toList(),
                openings.the(around.openings()),
                loop.water(),
                loop.caseW());
        Optional<Steady> state = model.solve(machine).found();
        if (state.isEmpty() || !keeps(state.get(), loop)) {
            return OptionalLong.empty();
        }
        return OptionalLong.of(new BigDecimal(state.get().coolantOverRoomK())
                .movePointRight(2)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact());
    }

    private boolean keeps(Steady state, BruteLoop loop) {
        boolean keeps = state.caseC() <= limits.caseMaxC().orElse(Double.MAX_VALUE);
        for (Machine.BlockAt block : loop.water().blocks()) {
            Optional<Double> limit = block.name().equals(Machine.CARD) ? limits.cardMaxC() : limits.processorMaxC();
            keeps &= limit.isEmpty() || partC(state, block) <= limit.get();
        }
        return keeps;
    }

    /** The part under a block: halfway between the coolant before and after it, and the block's step. */
    private double partC(Steady state, Machine.BlockAt block) {
        Steady.Stop stop = state.stops().stream()
                .filter(s -> s.name().equals(block.name()))
                .findFirst()
                .orElseThrow();
        Practice.BlockStep step = practice.heat().block();
        double film = StrictMath.pow(stop.flowM3PerS() * M3_PER_S_IN_L_PER_MIN / step.ratedLPerMin(), -step.exponent());
        double factor = 1 - step.flowShare() + step.flowShare() * film;
        return (stop.inC() + stop.outC()) / 2 + block.heatW() * block.flow().resistanceKPerW() * factor;
    }
}
