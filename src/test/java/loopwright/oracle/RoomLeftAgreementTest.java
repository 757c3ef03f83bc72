package loopwright.oracle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Radiator;
import loopwright.fit.FitCase;
import loopwright.fit.FitQuery;
import loopwright.fit.FitSearch;
import loopwright.fit.FitWish;
import loopwright.fit.FoundLayout;
import loopwright.fit.Growth;
import loopwright.fit.Growth.Measure;
import loopwright.fit.Layout;
import loopwright.fit.MountFrame;
import loopwright.fit.RadiatorOutline;
import loopwright.fit.RoomLeft;
import loopwright.fit.Shape;
import loopwright.fit.Witness;
import loopwright.fit.WitnessFinder;
import loopwright.oracle.brute.BruteForce;
import loopwright.oracle.brute.Fault;
import loopwright.oracle.cases.CaseGenerator;
import loopwright.oracle.cases.CaseGenerator.Mode;
import loopwright.quantity.Dimension;
import org.junit.jupiter.api.Test;

/**
 * The room left against records that are really so much larger: at the size that is said the layout still fits, a
 * hundredth beyond it no longer does, and every size tried between fits too.
 */
class RoomLeftAgreementTest {

    /** Tiny cases, each hundredth walked by an oracle that shares no code. */
    private static final int TINY_SEEDS = 90;

    /** Cases with slot ranges of real millimetres. */
    private static final int SMALL_SEEDS = 90;

    /** Does a layout fit with exactly a witness's mods, in a case in which nothing else can be chosen? */
    private interface Oracle {
        boolean fits(OracleCase question, Layout layout, Witness witness);
    }

    private static boolean brute(OracleCase question, Layout layout, Witness witness) {
        Set<?> sets = new BruteForce(Fault.NONE).fits(question).getOrDefault(layout.text(), ModSetOrder.sets());
        return sets.contains(new TreeSet<>(witness.mods().ids(question.chassis())));
    }

    private static boolean query(OracleCase question, Layout layout, Witness witness) {
        FitCase fitCase = new FitCase(question.catalog(), question.chassis(), question.brief());
        FitQuery query = new FitQuery(new FitSearch(fitCase, FitWish.ALL, () -> false));
        return query.validSets().contains(witness.mods())
                && query.partSets().stream().anyMatch(p -> query.fits(layout.stacks(), witness.mods(), p));
    }

    /** Growths of one layout, asked about one by one. */
    private static final class Asked {
        private final OracleCase question;
        private final FitCase fitCase;
        private final Layout layout;
        private final Witness witness;
        private final Oracle oracle;
        private final SplittableRandom random;
        private final Map<Measure, Integer> asked = new EnumMap<>(Measure.class);
        private int emptyMounts;
        private int stoppedByStacks;

        private Asked(OracleCase question, FitCase fitCase, Layout layout, Witness witness, Oracle oracle) {
            this.question = question;
            this.fitCase = fitCase;
            this.layout = layout;
            this.witness = witness;
            this.oracle = oracle;
            this.random = new SplittableRandom(question.seed());
        }

        private String about(Growth growth, int size) {
            return "seed " + question.seed() + ", " + layout.text() + " with "
                    + witness.mods().ids(question.chassis()) + ": " + growth + " at " + size;
        }

        void check(Growth growth) {
            if (growth.nowHmm().isPresent() && growth.mostHmm().isPresent()) {
                int now = growth.nowHmm().get();
                int most = growth.mostHmm().get();
                assertThat(fits(growth, most)).as(about(growth, most)).isTrue();
                assertThat(fits(growth, most + 1)).as(about(growth, most + 1)).isFalse();
                int between = random.nextInt(now, most + 1);
                assertThat(fits(growth, between)).as(about(growth, between)).isTrue();
                asked.merge(growth.measure(), 1, Integer::sum);
                checkStopped(growth, most + 1);
            } else if (growth.nowHmm().isPresent()) {
                int much = growth.nowHmm().get() + random.nextInt(1, 5000);
                assertThat(fits(growth, much)).as(about(growth, much)).isTrue();
            } else {
                checkEmpty(growth);
                emptyMounts++;
            }
        }

        /** Without the stack that is said to stop it, it goes further, if there is another stack. */
        private void checkStopped(Growth growth, int size) {
            String name = growth.stoppedBy().endsWith(" wall") ? "" : growth.stoppedBy();
            List<Layout.Stack> others = layout.stacks().stream()
                    .filter(s -> !name.startsWith(s.frame().mount().id() + " "))
                    .toList();
            if (others.size() < layout.stacks().size() && !others.isEmpty()) {
                Layout less = new Layout(layout.chassis(), others);
                assertThat(new Asked(question, fitCase, less, witness, oracle).fits(growth, size))
                        .as(about(growth, size) + " without what stops it")
                        .isTrue();
                stoppedByStacks++;
            }
        }

        private boolean fits(Growth growth, int size) {
            LargerPart larger = new LargerPart(question, witness);
            return switch (growth.measure()) {
                case CARD_LENGTH -> oracle.fits(larger.card(size, own()), layout, witness);
                case SUPPLY_LENGTH -> oracle.fits(larger.supply(size, own()), layout, witness);
                case MEMORY_HEIGHT -> oracle.fits(larger.memory(size, own()), layout, witness);
                case RADIATOR_THICKNESS -> {
                    Growth.At at = growth.at().orElseThrow();
                    yield fits(at.frame(), at.shape().orElseThrow(), size);
                }
            };
        }

        /** With a stack in place of what is on its mount, its radiator so thick. */
        private boolean fits(MountFrame frame, Shape shape, int thicknessHmm) {
            Radiator thick = LargerPart.thick(radiator(shape), thicknessHmm);
            Map<String, Part> stacks = new LinkedHashMap<>();
            own().forEach(p -> stacks.put(p.id(), p));
            stacks.put(thick.id(), thick);
            Fan fan = fan(shape);
            stacks.put(fan.id(), fan);
            List<Layout.Stack> changed = new ArrayList<>();
            layout.stacks().stream()
                    .filter(s -> s.frame().index() != frame.index())
                    .forEach(changed::add);
            changed.add(new Layout.Stack(
                    frame,
                    new Shape(RadiatorOutline.of(thick), shape.fanThickness(), shape.arrangement(), shape.portEnd())));
            changed.sort(Comparator.comparingInt(s -> s.frame().index()));
            OracleCase larger = new LargerPart(question, witness).asItIs(stacks.values());
            return oracle.fits(larger, new Layout(layout.chassis(), changed), witness);
        }

        private void checkEmpty(Growth growth) {
            Growth.At at = growth.at().orElseThrow();
            int least = thinnestHmm();
            if (growth.mostHmm().isPresent()) {
                int most = growth.mostHmm().get();
                assertThat(fits(at.frame(), at.shape().orElseThrow(), most))
                        .as(about(growth, most))
                        .isTrue();
                assertThat(fits(at.frame(), at.shape().orElseThrow(), most + 1))
                        .as(about(growth, most + 1))
                        .isFalse();
                least = most + 1;
            }
            for (Shape other : candidates(growth)) {
                assertThat(fits(at.frame(), other, least))
                        .as(about(growth, least) + " as " + other)
                        .isFalse();
            }
        }

        private int thinnestHmm() {
            return question.catalog().all(Radiator.class).stream()
                    .map(r -> r.body().thicknessMm())
                    .filter(d -> !d.isUnknown())
                    .mapToInt(d -> d.valueHmm())
                    .min()
                    .orElseThrow();
        }

        private List<Shape> candidates(Growth growth) {
            List<Shape> out = new ArrayList<>();
            for (Shape shape : fitCase.shapes().all()) {
                boolean thin = fitCase.shapes().all().stream()
                        .filter(s -> s.pattern().equals(shape.pattern()))
                        .allMatch(s -> s.fanThickness().valueHmm()
                                >= shape.fanThickness().valueHmm());
                if (thin
                        && isKnown(shape)
                        && shape.pattern().equals(growth.at().orElseThrow().pattern())) {
                    out.add(shape);
                }
            }
            return out;
        }

        private boolean isKnown(Shape shape) {
            return Stream.of(
                                    shape.outline().width(),
                                    shape.outline().portOverhang(),
                                    shape.outline().blankOverhang())
                            .noneMatch(d -> d.isUnknown())
                    && shape.outline().ports().stream()
                            .noneMatch(p ->
                                    p.fromFanAreaMm().isUnknown() || p.asideMm().isUnknown())
                    && !shape.outline().thickness().isUnknown();
        }

        private Collection<Part> own() {
            Set<Part> out = new LinkedHashSet<>();
            for (Layout.Stack stack : layout.stacks()) {
                out.add(fitCase.shapes().radiatorsOf(stack.shape()).get(0));
                out.add(fan(stack.shape()));
            }
            return out;
        }

        private Fan fan(Shape shape) {
            return fitCase.shapes().fansOf(shape).get(0);
        }

        private Radiator radiator(Shape shape) {
            return fitCase.catalog().all(Radiator.class).stream()
                    .filter(r -> withoutThickness(RadiatorOutline.of(r)).equals(withoutThickness(shape.outline())))
                    .findFirst()
                    .orElseThrow();
        }

        private static String withoutThickness(RadiatorOutline outline) {
            return new RadiatorOutline(
                            outline.pattern(),
                            outline.width(),
                            Dimension.ofHmm(0),
                            outline.portOverhang(),
                            outline.blankOverhang(),
                            outline.ports())
                    .text();
        }
    }

    /** Asked only where tight places are let be: the larger records here have not each dimension's own ±. */
    private static Optional<Asked> ask(OracleCase question, Oracle oracle, int pick) {
        if (question.brief().limits().mods().noTightPlaces()) {
            return Optional.empty();
        }
        FitCase fitCase = new FitCase(question.catalog(), question.chassis(), question.brief());
        FitSearch search = new FitSearch(fitCase, FitWish.ALL, () -> false);
        List<FoundLayout> fits = search.run().fits();
        if (fits.isEmpty()) {
            return Optional.empty();
        }
        FoundLayout found = fits.get(Math.floorMod(pick, fits.size()));
        Witness witness = new WitnessFinder(search)
                .witness(found.layout(), found.needed().get(found.needed().size() - 1));
        Asked asked = new Asked(question, fitCase, found.layout(), witness, oracle);
        new RoomLeft(fitCase).of(witness).forEach(asked::check);
        return Optional.of(asked);
    }

    private static Map<Measure, Integer> sum(List<Asked> all) {
        Map<Measure, Integer> out = new EnumMap<>(Measure.class);
        all.forEach(a -> a.asked.forEach((m, n) -> out.merge(m, n, Integer::sum)));
        return out;
    }

    /** Which of the layouts that fit is taken from a case: any, but always the same. */
    private static int pick(long seed) {
        return (int) (7919 * seed);
    }

    /** Seed 381 has ports at half of an odd number of hundredths. */
    @Test
    void agreesWithBruteForceOnTinyCases() {
        List<Asked> all = new ArrayList<>();
        LongStream.concat(LongStream.range(0, TINY_SEEDS), LongStream.of(381))
                .forEach(seed -> ask(CaseGenerator.generate(seed, Mode.TINY), RoomLeftAgreementTest::brute, pick(seed))
                        .ifPresent(all::add));
        assertThat(sum(all)).containsOnlyKeys(Measure.values());
        assertThat(all).anyMatch(a -> a.emptyMounts > 0).anyMatch(a -> a.stoppedByStacks > 0);
    }

    @Test
    void agreesWithTheSearchOnCasesOfRealMillimetres() {
        List<Asked> all = new ArrayList<>();
        LongStream.range(0, SMALL_SEEDS)
                .forEach(seed -> ask(CaseGenerator.generate(seed, Mode.SMALL), RoomLeftAgreementTest::query, pick(seed))
                        .ifPresent(all::add));
        assertThat(sum(all)).containsOnlyKeys(Measure.values());
        assertThat(all).anyMatch(a -> a.emptyMounts > 0).anyMatch(a -> a.stoppedByStacks > 0);
    }

    @Test
    void agreesWithTheSearchOnTheReducedDemo() {
        for (int pick : List.of(0, 7, 60)) {
            assertThat(ask(DemoQuestion.reduced(), RoomLeftAgreementTest::query, pick))
                    .hasValueSatisfying(a -> assertThat(a.asked).hasSize(Measure.values().length));
        }
    }

    /** An oracle whose fans want a hundredth less room is found out. */
    @Test
    void doesNotAgreeWithAFaultyOracle() {
        Oracle faulty = (question, layout, witness) -> new BruteForce(Fault.NEED_OFF_BY_ONE)
                .fits(question)
                .getOrDefault(layout.text(), ModSetOrder.sets())
                .contains(new TreeSet<>(witness.mods().ids(question.chassis())));
        assertThatThrownBy(() -> LongStream.range(0, TINY_SEEDS)
                        .forEach(seed -> ask(CaseGenerator.generate(seed, Mode.TINY), faulty, pick(seed))))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("Growth");
    }
}
