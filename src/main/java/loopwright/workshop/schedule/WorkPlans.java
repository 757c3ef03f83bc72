package loopwright.workshop.schedule;

import java.util.Set;
import loopwright.catalog.chassis.Chassis;
import loopwright.fit.FitCase;
import loopwright.rank.Build;
import loopwright.workshop.finish.PaintedParts;

/** The tasks of a build. */
public final class WorkPlans {

    private WorkPlans() {}

    /**
     * The tasks of a build; their hands-on minutes sum to the build's own.
     *
     * @param late ids of mods that are decided only after the build
     * @throws IllegalArgumentException if practice.yaml says nothing of the workshop, or a mod cannot be decided late
     */
    public static WorkPlan of(FitCase fitCase, Build build, Set<String> late) {
        Chassis chassis = fitCase.chassis();
        Commission commission = new Commission(
                chassis,
                build.mods().mods(chassis),
                PaintedParts.of(fitCase, build.mods()).all(),
                fitCase.brief().terms().assemblyMin(),
                Schedule.dayMin(fitCase.brief()),
                late);
        return WorkPlanner.plan(
                commission,
                Schedule.practice(fitCase),
                fitCase.catalog().practice().finishing());
    }
}
