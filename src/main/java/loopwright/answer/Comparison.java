package loopwright.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import loopwright.catalog.part.Part;
import loopwright.fit.rules.Role;
import loopwright.loop.Band;
import loopwright.loop.Machine;
import loopwright.loop.Steady;
import loopwright.quantity.Units;
import loopwright.rank.Build;

/** Two builds of one chassis side by side, with what they differ by and how sure that is. */
public final class Comparison {

    private static final double CENTS = 100;
    private static final double MIN_PER_H = 60;

    private final Inspection first;
    private final Inspection second;

    /** Compares two builds. */
    public Comparison(Inspection first, Inspection second) {
        this.first = first;
        this.second = second;
    }

    /** The first build. */
    public Inspection first() {
        return first;
    }

    /** The second build. */
    public Inspection second() {
        return second;
    }

    /**
     * A figure of both.
     *
     * @param figure what it is, with its unit
     * @param plusMinus of the difference, one standard deviation, with what both share counted once; absent where the figure is
     *     exact
     */
    public record Row(String figure, double first, double second, OptionalDouble plusMinus) {
        /** Second less first. */
        public double difference() {
            return second - first;
        }
    }

    /** All figures. */
    public List<Row> rows() {
        Build a = first.build();
        Build b = second.build();
        List<Row> out = new ArrayList<>();
        out.add(exact(
                "price, " + first.fitCase().brief().terms().currency(),
                a.outcome().priceCents() / CENTS,
                b.outcome().priceCents() / CENTS));
        out.add(sure("coolant, C", s -> s.water().meanC()));
        junctions(out);
        out.add(sure("air inside, C", Steady::caseC));
        out.add(sure("coolant flow, L/min", s -> Units.lPerMin(s.water().flowM3PerS())));
        out.add(sure("air in, m3/h", s -> Units.m3PerH(s.air().inM3PerS())));
        out.add(exact("noise at 1 m, dB(A)", level(a), level(b)));
        out.add(exact(
                "hands-on hours",
                a.outcome().labourMin() / MIN_PER_H,
                b.outcome().labourMin() / MIN_PER_H));
        out.add(exact("days", a.outcome().days(), b.outcome().days()));
        out.add(exact("cuts that show", a.bill().visibleCuts(), b.bill().visibleCuts()));
        out.add(exact("cuts that do not", a.bill().hiddenCuts(), b.bill().hiddenCuts()));
        out.add(exact(
                "smallest margin, mm",
                first.witness().tightest().marginHmm() / CENTS,
                second.witness().tightest().marginHmm() / CENTS));
        return out;
    }

    private static double level(Build build) {
        return build.outcome().sound().levelDBA().orElse(0);
    }

    private static Row exact(String figure, double first, double second) {
        return new Row(figure, first, second, OptionalDouble.empty());
    }

    private Row sure(String figure, ToDoubleFunction<Steady> of) {
        Band band = second.swings().less(first.swings(), of);
        return new Row(
                figure,
                of.applyAsDouble(first.state()),
                of.applyAsDouble(second.state()),
                OptionalDouble.of(band.halfK()));
    }

    /** Parts under blocks that both have; a block's own scatter counts unless both have the same. */
    private void junctions(List<Row> out) {
        Map<String, Inspection.Hot> there = new TreeMap<>();
        second.junctions().forEach(h -> there.put(h.name(), h));
        for (Inspection.Hot hot : first.junctions()) {
            Inspection.Hot other = there.get(hot.name());
            if (other != null) {
                Band shared = second.swings().less(first.swings(), Steady::coolantOverRoomK);
                double apartK = block(first, hot.name()).equals(block(second, hot.name()))
                        ? other.stepK() - hot.stepK()
                        : Math.sqrt(hot.stepK() * hot.stepK() + other.stepK() * other.stepK());
                double own = Inspection.BLOCK_SCATTER * apartK;
                out.add(new Row(
                        hot.name().replace(" block", "") + ", C",
                        hot.temperatureC(),
                        other.temperatureC(),
                        OptionalDouble.of(Math.sqrt(shared.halfK() * shared.halfK() + own * own))));
            }
        }
    }

    /** Id of the part with the block: the processor's block, or the card, which has its own. */
    private static String block(Inspection inspection, String name) {
        if (name.equals(Machine.PROCESSOR)) {
            return inspection
                    .build()
                    .chosen()
                    .find(Role.BLOCK, Part.class)
                    .map(Part::id)
                    .orElse("");
        }
        return inspection.machine().water().blocks().stream()
                .filter(b -> b.name().equals(name))
                .map(Machine.BlockAt::part)
                .findFirst()
                .orElse("");
    }

    /** What parts, mods and ways to blow only one of them has: first, then second. */
    public List<List<String>> onlyOne() {
        return List.of(only(first.build(), second.build()), only(second.build(), first.build()));
    }

    private static List<String> only(Build here, Build there) {
        TreeSet<String> out = new TreeSet<>(facts(here));
        facts(there).forEach(out::remove);
        return List.copyOf(out);
    }

    private static List<String> facts(Build build) {
        List<String> out = new ArrayList<>();
        build.parts()
                .forEach((role, ids) -> out.add(role + ": " + (ids.size() > 1 ? ids.size() + " " : "") + ids.get(0)));
        build.modIds().forEach(m -> out.add("mod " + m));
        build.machine()
                .mounts()
                .forEach(m ->
                        out.add(m.mount() + " blows " + m.direction().name().toLowerCase(java.util.Locale.ROOT)));
        out.add("fans at " + build.dutyPercent() + " %");
        return out;
    }
}
