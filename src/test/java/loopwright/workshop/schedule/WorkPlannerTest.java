package loopwright.workshop.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.standard.Finishing;
import loopwright.catalog.standard.Finishing.Surface;
import loopwright.catalog.standard.WorkStage;
import loopwright.catalog.standard.Workshop;
import loopwright.workshop.finish.PaintedPart;
import loopwright.workshop.finish.PaintedPart.Kind;
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

    private static final Finishing FINISHING = CATALOG.practice().finishing();
    private static final RuleCheck RULES = new RuleCheck(CLOCK, FINISHING.cure());

    private static List<Mod> mods(Chassis chassis, String... ids) {
        return chassis.mods().stream()
                .filter(m -> List.of(ids).contains(m.id()))
                .toList();
    }

    private static WorkPlan plan(Set<String> late, String... ids) {
        return plan("short-tower", late, 360, ids);
    }

    private static WorkPlan plan(String chassisId, Set<String> late, int dayMin, String... ids) {
        Chassis chassis = CATALOG.chassis(chassisId);
        List<PaintedPart> painted = mods(chassis, ids).stream()
                .filter(m -> !m.effect().inserts().isEmpty())
                .map(m -> new PaintedPart(
                        "insert-front", "insert panel at the front", Kind.INSERT, Surface.METAL, 1, m.id(), true))
                .toList();
        return WorkPlanner.plan(
                new Commission(chassis, mods(chassis, ids), painted, ASSEMBLY_MIN, dayMin, late), PRACTICE, FINISHING);
    }

    private static List<String> broken(WorkPlan plan) {
        Handwork work = Handwork.of(plan.network(t -> 0), CLOCK, 200);
        return RULES.broken(plan.tasks(), work.timing().starts());
    }

    @Test
    void minutesAddUpAndRulesAreKeptForEveryPairOfMods() {
        for (Mod one : CHASSIS.mods()) {
            for (Mod other : CHASSIS.mods()) {
                WorkPlan plan = plan(Set.of(), one.id(), other.id());
                int mods = mods(CHASSIS, one.id(), other.id()).stream()
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
        assertThat(RULES.broken(plan.tasks(), starts)).isEmpty();
        assertThatThrownBy(() -> plan(Set.of("front-open"), "front-open")).hasMessageContaining("electronics inside");
    }

    /** An order that a rule forbids: with the rule there is no such plan, without it there is. */
    private record Forbidden(WorkRule rule, WorkPlan plan, String first, String then, List<WorkRule> besides) {

        Forbidden(WorkRule rule, WorkPlan plan, String first, String then, WorkRule... besides) {
            this(rule, plan, first, then, List.of(besides));
        }
    }

    private static List<Forbidden> forbidden() {
        WorkPlan front = plan(Set.of(), "front-open");
        WorkPlan late = plan(Set.of("side-window"), "side-window");
        WorkPlan two = plan(Set.of(), "rear-grille-cut", "front-bay-out");
        WorkPlan needs = plan("mid-tower", Set.of(), 360, "front-sockets-moved", "front-pattern-420");
        return List.of(
                new Forbidden(WorkRule.STAGES_FOLLOW, front, "cut:front-open", "mark:front-open"),
                new Forbidden(WorkRule.STAGES_FOLLOW, front, "deburr:front-open", "cut:front-open"),
                new Forbidden(WorkRule.STAGES_FOLLOW, front, "measure", "strip"),
                new Forbidden(WorkRule.STAGES_FOLLOW, front, "plumb", "assemble"),
                new Forbidden(WorkRule.STAGES_FOLLOW, front, "burn-in", "leak-watch"),
                new Forbidden(WorkRule.STAGES_FOLLOW, front, "prime:front-sheet", "prep:front-sheet"),
                new Forbidden(WorkRule.STAGES_FOLLOW, front, "colour:front-sheet", "prime:front-sheet"),
                new Forbidden(WorkRule.STAGES_FOLLOW, front, "cure:front-sheet", "clear:front-sheet"),
                new Forbidden(
                        WorkRule.STAGES_FOLLOW, late, "handover", "deburr:side-window", WorkRule.CUT_BEFORE_OWN_PAINT),
                new Forbidden(WorkRule.TAKE_OUT_FIRST, two, "deburr:rear-grille-cut", "mark:front-bay-out"),
                new Forbidden(WorkRule.NEEDED_MOD_FIRST, needs, "deburr:front-pattern-420", "mark:front-sockets-moved"),
                new Forbidden(
                        WorkRule.SECOND_FIT_AFTER_CUTS,
                        plan(Set.of(), "front-bay-out"),
                        "second-dry-fit",
                        "cut:front-bay-out"),
                new Forbidden(WorkRule.DRY_FIT_BEFORE_PAINT, front, "clear:front-sheet", "second-dry-fit"),
                new Forbidden(WorkRule.CUT_BEFORE_OWN_PAINT, late, "clear:side-window", "cut:side-window"),
                new Forbidden(
                        WorkRule.NO_CUT_WITH_ELECTRONICS,
                        two,
                        "assemble",
                        "cut:front-bay-out",
                        WorkRule.SECOND_FIT_AFTER_CUTS,
                        WorkRule.TAKE_OUT_FIRST),
                new Forbidden(WorkRule.TEST_PIECE_BEFORE_PAINT, front, "prep:front-sheet", "test-piece"),
                new Forbidden(WorkRule.COATS_AT_ONCE, front, "clear:front-sheet", "colour:front-sheet"),
                new Forbidden(WorkRule.PAINT_HARD_BEFORE_ASSEMBLY, front, "assemble", "cure:front-sheet"),
                new Forbidden(WorkRule.DECIDED_LATE, late, "mark:side-window", "burn-in"));
    }

    @Test
    void eachRuleAloneForbidsWhatItIsThereFor() {
        Set<WorkRule> tried = new HashSet<>();
        for (Forbidden one : forbidden()) {
            String as = one.rule() + " " + one.first() + " " + one.then();
            Before order = new Before(one.first(), one.then(), 0, WorkRule.TAKE_OUT_FIRST);
            WorkPlan alone = one.plan().keeping(b -> !one.besides().contains(b.rule()));
            assertThatThrownBy(() -> alone.with(order).network(t -> 0)).as(as).hasMessageContaining("circle");
            WorkPlan without = alone.keeping(b -> b.rule() != one.rule()).with(order);
            assertThat(without.network(t -> 0).jobs()).as(as).isNotEmpty();
            tried.add(one.rule());
        }
        assertThat(tried).containsExactlyInAnyOrder(WorkRule.values());
    }

    /** Waits that a rule holds: without them the check of the finished schedule speaks. */
    @Test
    void waitsOfPaintAreKept() {
        WorkPlan plan = plan(Set.of(), "front-insert-140");
        assertThat(broken(plan)).isEmpty();
        for (WorkRule rule : List.of(WorkRule.TEST_PIECE_BEFORE_PAINT, WorkRule.PAINT_HARD_BEFORE_ASSEMBLY)) {
            List<Before> hasty = plan.before().stream()
                    .map(b -> b.rule() == rule ? new Before(b.first(), b.then(), 0, rule) : b)
                    .toList();
            assertThat(broken(new WorkPlan(plan.tasks(), hasty)))
                    .as(rule.statement())
                    .isNotEmpty()
                    .allMatch(b -> b.startsWith(rule.name()));
        }
    }

    /** Clear two to forty-seven hours after colour lies in the time in which solvent lifts the film. */
    @Test
    void noCoatInTheForbiddenTime() {
        WorkPlan plan = plan(Set.of(), "front-insert-140");
        for (int hours : new int[] {2, 24, 47}) {
            List<Before> apart = plan.before().stream()
                    .map(b -> b.rule() == WorkRule.COATS_AT_ONCE
                            ? new Before(b.first(), b.then(), hours * 60, WorkRule.STAGES_FOLLOW)
                            : b)
                    .toList();
            WorkPlan late = new WorkPlan(plan.tasks(), apart);
            List<String> found = broken(late);
            Handwork work = Handwork.of(late.network(t -> 0), CLOCK, 200);
            long min = Duration.between(
                            CLOCK.end(work.timing().starts().get(late.indexOf("colour:insert-front"))
                                    + late.tasks()
                                            .get(late.indexOf("colour:insert-front"))
                                            .steps()),
                            CLOCK.begin(work.timing().starts().get(late.indexOf("clear:insert-front"))))
                    .toMinutes();
            assertThat(found.stream().anyMatch(b -> b.startsWith(WorkRule.COATS_AT_ONCE.name())))
                    .as(hours + " h asked, " + min + " min had")
                    .isEqualTo(min > 60 && min < 48 * 60);
            assertThat(hours == 2 ? found : List.of("")).isNotEmpty();
        }
    }

    /** Where a day has no room for colour and clear, clear waits for the end of the lock-out. */
    @Test
    void onShortDaysClearGoesOnAfterTheLockOut() {
        WorkPlan plan = plan("short-tower", Set.of(), 75, "front-insert-140");
        assertThat(plan.before())
                .contains(new Before("colour:insert-front", "clear:insert-front", 48 * 60, WorkRule.STAGES_FOLLOW));
        Clock shortDays = new Clock(LocalDate.of(2026, 3, 2), d -> true, 9 * 60, 75);
        Handwork work = Handwork.of(plan.network(t -> 0), shortDays, 200);
        assertThat(new RuleCheck(shortDays, FINISHING.cure())
                        .broken(plan.tasks(), work.timing().starts()))
                .isEmpty();
        assertThatThrownBy(() -> plan.fitsADay(new Clock(LocalDate.of(2026, 3, 2), d -> true, 9 * 60, 40)))
                .hasMessageStartingWith("terms.work_h_per_day: found 40 min, allowed at least the ");
    }

    /** What is painted gives the task its name: the insert, not the panel that it goes into. */
    @Test
    void theInsertIsPaintedNotItsPanel() {
        assertThat(plan(Set.of(), "front-insert-140").tasks())
                .filteredOn(t -> t.stage() == WorkStage.PRIME)
                .singleElement()
                .satisfies(t -> {
                    assertThat(t.title()).isEqualTo("prime: insert panel at the front");
                    // two of metal primer, two of filler; 15 min of flash after each but the last
                    assertThat(t.busyMin()).isEqualTo(t.handsMin() + 45);
                });
    }
}
