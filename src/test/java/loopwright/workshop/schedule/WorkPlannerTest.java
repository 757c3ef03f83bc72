package loopwright.workshop.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.standard.Workshop;
import loopwright.workshop.schedule.WorkPlan.Before;
import org.junit.jupiter.api.Test;

/** The trade's rules in the plan: kept with every mod set, broken when the rule is taken out. */
class WorkPlannerTest {

    private static final Catalog CATALOG = CatalogReader.read(Path.of("catalogs"));
    private static final Workshop PRACTICE = CATALOG.practice().workshop().orElseThrow();
    private static final Chassis CHASSIS = CATALOG.chassis("short-tower");
    private static final int ASSEMBLY_MIN = 907;
    private static final Clock CLOCK = new Clock(
            LocalDate.of(2026, 3, 2), d -> d.getDayOfWeek().getValue() <= 5, PRACTICE.dayStartsH() * 60, 6 * 60);

    private static List<Mod> mods(String... ids) {
        return CHASSIS.mods().stream()
                .filter(m -> List.of(ids).contains(m.id()))
                .toList();
    }

    private static WorkPlan plan(Set<String> late, String... ids) {
        return WorkPlanner.plan(CHASSIS, mods(ids), ASSEMBLY_MIN, PRACTICE, late);
    }

    private static List<String> broken(WorkPlan plan) {
        Handwork work = Handwork.of(plan.network(t -> 0), CLOCK, 200);
        return RuleCheck.broken(plan.tasks(), work.timing().starts());
    }

    @Test
    void minutesAddUpAndRulesAreKeptForEveryPairOfMods() {
        for (Mod one : CHASSIS.mods()) {
            for (Mod other : CHASSIS.mods()) {
                WorkPlan plan = plan(Set.of(), one.id(), other.id());
                int mods = mods(one.id(), other.id()).stream()
                        .mapToInt(m -> m.work().labourMin() + m.work().paintMin())
                        .sum();
                assertThat(plan.handsMin()).as(one.id() + " " + other.id()).isEqualTo(ASSEMBLY_MIN + mods);
                assertThat(broken(plan)).as(one.id() + " " + other.id()).isEmpty();
            }
        }
        assertThat(plan(Set.of()).handsMin()).isEqualTo(ASSEMBLY_MIN);
    }

    /** Without the rule, the order it forbids is possible, and the check of the finished schedule sees it. */
    private static void matters(WorkPlan plan, WorkRule rule, Before forbidden, WorkRule... impliedBy) {
        assertThatThrownBy(() -> plan.with(forbidden).network(t -> 0)).hasMessageContaining("circle");
        List<WorkRule> out = new ArrayList<>(List.of(impliedBy));
        out.add(rule);
        WorkPlan without = plan.keeping(b -> !out.contains(b.rule())).with(forbidden);
        assertThat(broken(without)).as(rule.statement()).anyMatch(b -> b.startsWith(rule.name()));
    }

    @Test
    void noPaintBeforeTheCutsOfItsOwnPart() {
        matters(
                plan(Set.of("side-window"), "side-window"),
                WorkRule.CUT_BEFORE_OWN_PAINT,
                new Before("clear:side-window", "cut:side-window", 0, WorkRule.STAGES_FOLLOW));
        matters(
                plan(Set.of(), "front-open", "roof-cover-120"),
                WorkRule.CUT_BEFORE_OWN_PAINT,
                new Before("clear:front-sheet", "cut:front-open", 0, WorkRule.STAGES_FOLLOW),
                WorkRule.DRY_FIT_BEFORE_PAINT);
    }

    @Test
    void noPaintBeforeTheWholeDryFit() {
        matters(
                plan(Set.of(), "front-open"),
                WorkRule.DRY_FIT_BEFORE_PAINT,
                new Before("clear:front-sheet", "second-dry-fit", 0, WorkRule.STAGES_FOLLOW));
    }

    @Test
    void noCutWithElectronicsInside() {
        matters(
                plan(Set.of(), "rear-grille-cut", "front-bay-out"),
                WorkRule.NO_CUT_WITH_ELECTRONICS,
                new Before("assemble", "mark:front-bay-out", 0, WorkRule.STAGES_FOLLOW),
                WorkRule.SECOND_FIT_AFTER_CUTS,
                WorkRule.TAKE_OUT_FIRST);
    }

    @Test
    void noSecondFitBeforeACut() {
        matters(
                plan(Set.of(), "front-bay-out"),
                WorkRule.SECOND_FIT_AFTER_CUTS,
                new Before("second-dry-fit", "cut:front-bay-out", 0, WorkRule.STAGES_FOLLOW));
    }

    @Test
    void aWindowMayBeDecidedAfterTheBuildOthersNot() {
        WorkPlan plan = plan(Set.of("side-window"), "side-window", "front-open");
        Handwork work = Handwork.of(plan.network(t -> 0), CLOCK, 200);
        List<Integer> starts = work.timing().starts();
        assertThat(starts.get(plan.indexOf("mark:side-window")))
                .isGreaterThanOrEqualTo(starts.get(plan.indexOf("burn-in")));
        assertThat(RuleCheck.broken(plan.tasks(), starts)).isEmpty();
        assertThatThrownBy(() -> plan(Set.of("front-open"), "front-open")).hasMessageContaining("electronics inside");
    }
}
