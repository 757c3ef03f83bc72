package loopwright.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.chassis.Mount.Where;
import loopwright.loop.Band;
import loopwright.loop.Machine;
import loopwright.loop.Steady;
import loopwright.loop.Swings;
import loopwright.loop.air.AirPath;
import loopwright.rank.Build;
import loopwright.rank.Neighbours;
import loopwright.rank.Neighbours.Neighbour;

/** What single changes of a build would gain and cost. */
public final class NextSteps {

    /** "Lose less than 5 %": of what the radiators conduct, the builder's question. */
    private static final double LOSS = 0.05;

    private static final double CENTI = 100;

    /** Open shares are told in hundredths. */
    private static final int SHARES = 100;

    private final Inspection inspection;
    private final List<Step> steps;

    /**
     * A change.
     *
     * @param gainK how much cooler the coolant gets; below 0 where it gets warmer
     * @param gainBand with what both builds share counted once
     * @param costCents how much dearer it is
     * @param labourMin how much more hands-on time it takes
     * @param noiseDB how much louder it is
     */
    public record Step(
            Neighbours.Kind kind,
            String what,
            Build build,
            double gainK,
            Band gainBand,
            long costCents,
            int labourMin,
            double noiseDB) {}

    /** The steps from a build. */
    public NextSteps(Inspection inspection) {
        this.inspection = inspection;
        List<Step> all = new ArrayList<>();
        for (Neighbour neighbour : new Neighbours(inspection.fitCase(), inspection.model()).of(inspection.build())) {
            Swings.find(inspection.model(), neighbour.build().machine())
                    .ifPresent(changed -> all.add(step(neighbour, changed)));
        }
        this.steps = List.copyOf(all);
    }

    private Step step(Neighbour neighbour, Swings changed) {
        Build.Outcome now = inspection.build().outcome();
        Build.Outcome then = neighbour.build().outcome();
        return new Step(
                neighbour.kind(),
                neighbour.what(),
                neighbour.build(),
                (now.coolantOverRoomCentiK() - then.coolantOverRoomCentiK()) / CENTI,
                inspection.swings().less(changed, Steady::coolantOverRoomK),
                then.priceCents() - now.priceCents(),
                then.labourMin() - now.labourMin(),
                then.sound().levelDBA().orElse(0) - now.sound().levelDBA().orElse(0));
    }

    /** Every step, the one that gains most first. */
    public List<Step> all() {
        return steps;
    }

    /** The cheapest single change that gains so much; empty when none does. */
    public Optional<Step> cheapestGain(double kelvin) {
        return steps.stream()
                .filter(s -> s.gainK() >= kelvin)
                .min(Comparator.comparingLong(Step::costCents)
                        .thenComparing(Comparator.comparingDouble(Step::gainK).reversed()));
    }

    /**
     * How open a panel has to be.
     *
     * @param openShare as it is
     * @param enough the least share, in hundredths, at which all radiators together lose less than 5 % of what they conduct with
     *     the panel cut away; absent where even cut away is not enough to tell
     */
    public record Enough(String mount, double openShare, Optional<Double> enough) {}

    /** For each mount with a radiator, how open its panel has to be to lose less than 5 %. */
    public List<Enough> openEnough() {
        List<Enough> out = new ArrayList<>();
        List<Machine.FanMount> mounts = inspection.machine().mounts();
        for (int i = 0; i < mounts.size(); i++) {
            if (mounts.get(i).radiator().isPresent()) {
                out.add(new Enough(
                        mounts.get(i).mount(), mounts.get(i).air().path().openShare(), enough(i)));
            }
        }
        return out;
    }

    private Optional<Double> enough(int mount) {
        Optional<Double> best = overRoomK(mount, SHARES);
        if (best.isEmpty()) {
            return Optional.empty();
        }
        int yes = SHARES;
        int no = 0;
        while (yes - no > 1) {
            int share = (yes + no) >>> 1;
            // Coolant over room goes with one over conductance.
            boolean enough = overRoomK(mount, share)
                    .filter(k -> best.get() >= (1 - LOSS) * k)
                    .isPresent();
            yes = enough ? share : yes;
            no = enough ? no : share;
        }
        return Optional.of(yes / (double) SHARES);
    }

    private Optional<Double> overRoomK(int mount, int hundredths) {
        Machine machine = inspection.machine();
        List<Machine.FanMount> mounts = new ArrayList<>(machine.mounts());
        Machine.FanMount old = mounts.get(mount);
        AirPath path = old.air().path();
        AirPath opened = new AirPath(
                hundredths / (double) SHARES, Where.FACE, path.filterShare(), path.cover(), path.outsideDepthM());
        mounts.set(
                mount,
                new Machine.FanMount(
                        old.mount(),
                        old.direction(),
                        old.fans(),
                        new Machine.MountAir(opened, old.air().face()),
                        old.radiator()));
        Machine changed = new Machine(machine.site(), mounts, machine.openings(), machine.water(), machine.caseHeatW());
        return inspection.model().solve(changed).found().map(Steady::coolantOverRoomK);
    }
}
