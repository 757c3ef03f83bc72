package loopwright.workshop.schedule;

import java.util.Set;
import loopwright.fit.FitCase;
import loopwright.rank.Build;

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
        return WorkPlanner.plan(
                fitCase.chassis(),
                build.mods().mods(fitCase.chassis()),
                fitCase.brief().terms().assemblyMin(),
                Schedule.practice(fitCase),
                late);
    }
}
