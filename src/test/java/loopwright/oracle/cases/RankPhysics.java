package loopwright.oracle.cases;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.brief.BriefLimits;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.brief.LoopWish;
import loopwright.catalog.standard.Practice;

/** What decides temperatures besides parts: allowances, where the machine stands, how the loop runs, what may get how hot. */
final class RankPhysics {

    private static final Choice ANY = new Choice(List.of(), Optional.empty());

    private final Dice dice;
    private final boolean parallel;

    RankPhysics(Dice dice) {
        this.dice = dice;
        this.parallel = dice.chance(25);
    }

    /** Whether blocks stand side by side: then solving takes longer. */
    boolean isParallel() {
        return parallel;
    }

    Practice practice(Practice was) {
        Practice.Air air = new Practice.Air(
                was.air().outsideDepthMinMm(),
                was.air().solidSkinFreeAreaMin(),
                dice.oneOf(List.of(0, 5, 20)),
                4,
                1,
                dice.oneOf(List.of(0.0, 0.5, 2.0)));
        Practice.Heat heat = new Practice.Heat(
                dice.oneOf(List.of(5, 20)),
                dice.oneOf(List.of(1.0, 0.95, 0.8)),
                dice.oneOf(List.of(0.0, 0.5, 1.0)),
                85,
                new Practice.BlockStep(4, 0.25, 0.5));
        Practice.Loop loop = new Practice.Loop(dice.between(0, 2), 0.0015, dice.oneOf(List.of(60, 100)));
        return new Practice(was.room(), air, heat, loop, was.core(), was.measuring()).withElectric(was.electric());
    }

    Optional<BriefLimits.HeatLimits> limits() {
        if (dice.chance(40)) {
            return Optional.empty();
        }
        return Optional.of(new BriefLimits.HeatLimits(
                dice.chance(40) ? Optional.of(dice.oneOf(List.of(600.0, 2500.0))) : Optional.empty(),
                dice.chance(25) ? Optional.of(dice.between(50, 90) + 0.5) : Optional.empty(),
                dice.chance(25) ? Optional.of(dice.between(45, 85) + 0.5) : Optional.empty(),
                dice.chance(30) ? Optional.of(dice.between(30, 60) + 0.5) : Optional.empty()));
    }

    LoopWish loop() {
        Choice tube = dice.chance(20) ? new Choice(List.of("tube-b"), Optional.empty()) : ANY;
        Optional<Integer> pumpDuty = dice.chance(25) ? Optional.of(dice.oneOf(List.of(40, 90))) : Optional.empty();
        Optional<LoopWish.Run> run = parallel || pumpDuty.isPresent()
                ? Optional.of(new LoopWish.Run(
                        parallel ? Optional.of(LoopWish.BlockOrder.PARALLEL) : Optional.empty(), pumpDuty))
                : Optional.empty();
        return new LoopWish(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                tube,
                dice.oneOf(List.of(2.0, 1.1, 1.7)),
                ANY,
                dice.oneOf(List.of(1.0, 1.3)),
                run);
    }
}
