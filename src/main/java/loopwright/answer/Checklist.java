package loopwright.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.BriefLimits;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.fit.Layout.Stack;
import loopwright.fit.rules.Role;
import loopwright.geometry.Verdict;
import loopwright.loop.Machine;
import loopwright.rank.Build;
import loopwright.tolerance.Chance;

/** Every line of a brief, what a build gives for it, and whether it is kept. */
public final class Checklist {

    private static final double CENTS = 100;
    private static final double MIN_PER_H = 60;
    private static final double PERCENT = 100;

    private final Inspection inspection;
    private final Brief brief;
    private final Build build;
    private final List<Line> lines = new ArrayList<>();

    private Checklist(Inspection inspection) {
        this.inspection = inspection;
        this.brief = inspection.fitCase().brief();
        this.build = inspection.build();
    }

    /** Whether a line is kept. */
    public enum Kept {
        /** It is. */
        KEPT,
        /** It is not. */
        BROKEN,
        /** Nobody can say. */
        UNKNOWN
    }

    /**
     * A line of the brief.
     *
     * @param line what it is about, with its unit
     * @param wanted what the brief says
     * @param given what the build gives
     * @param margin how much is left; absent where there is nothing to measure
     */
    public record Line(String line, String wanted, String given, OptionalDouble margin, Kept kept) {}

    /** The lines of a build's brief, in the brief's order. */
    public static List<Line> of(Inspection inspection) {
        Checklist list = new Checklist(inspection);
        list.parts();
        list.limits();
        list.temperatures();
        list.mods();
        return List.copyOf(list.lines);
    }

    private void parts() {
        choice("board", brief.parts().board(), Role.BOARD);
        choice("processor", brief.parts().processor(), Role.PROCESSOR);
        choice("card", brief.parts().card(), Role.CARD);
        choice("memory", brief.parts().memory(), Role.MEMORY);
        choice("processor block", brief.parts().processorBlock(), Role.BLOCK);
        brief.parts().supply().ifPresent(c -> choice("supply", c, Role.SUPPLY));
        brief.loop().pumps().ifPresent(c -> choice("pump", c, Role.PUMP));
        brief.loop()
                .reservoirs()
                .filter(c -> build.chosen().find(Role.RESERVOIR, Part.class).isPresent())
                .ifPresent(c -> choice("reservoir", c, Role.RESERVOIR));
        brief.loop().radiators().ifPresent(c -> all("radiators", c, radiators()));
        brief.loop().fans().ifPresent(c -> all("fans", c, fans()));
        Machine.Water water = inspection.machine().water();
        all("which tube", brief.loop().tube(), List.of(water.runs().tube().id()));
        all("which coolant", brief.loop().coolant(), List.of(water.coolant().id()));
        if (!brief.parts().drives().isEmpty()) {
            String drives = String.join(", ", brief.parts().drives());
            add("drives", drives, drives, OptionalDouble.empty(), Kept.KEPT);
        }
    }

    private void choice(String line, Choice wish, Role role) {
        Optional<Part> part = build.chosen().find(role, Part.class);
        String wanted = wish.anyOf().isEmpty()
                ? wish.performanceMin().map(f -> "at least class " + f).orElse("any")
                : String.join(" or ", wish.anyOf());
        boolean kept = part.isPresent()
                && (wish.anyOf().isEmpty() || wish.anyOf().contains(part.get().id()))
                && performance(part.get()) >= wish.performanceMin().orElse(0);
        add(line, wanted, part.map(Part::id).orElse("none"), OptionalDouble.empty(), kept ? Kept.KEPT : Kept.BROKEN);
    }

    /** How fast a part is, on our own scale; a part without a figure is as fast as any. */
    private static int performance(Part part) {
        if (part instanceof Processor processor) {
            return processor.performance();
        }
        return part instanceof GraphicsCard card ? card.performance() : Integer.MAX_VALUE;
    }

    private List<String> radiators() {
        return inspection.machine().mounts().stream()
                .flatMap(m -> m.radiator().stream())
                .map(r -> r.radiator().id())
                .distinct()
                .sorted()
                .toList();
    }

    private List<String> fans() {
        return inspection.machine().mounts().stream()
                .map(m -> m.fans().fan().id())
                .distinct()
                .sorted()
                .toList();
    }

    private void all(String line, Choice wish, List<String> ids) {
        boolean kept = wish.anyOf().isEmpty() || wish.anyOf().containsAll(ids);
        add(
                line,
                wish.anyOf().isEmpty() ? "any" : "any of " + wish.anyOf().size(),
                String.join(", ", ids),
                OptionalDouble.empty(),
                kept(kept));
    }

    private void limits() {
        BriefLimits limits = brief.limits();
        limits.budgetCents()
                .ifPresent(b -> atMost(
                        "budget, " + brief.terms().currency(),
                        b / CENTS,
                        build.outcome().priceCents() / CENTS));
        limits.noiseMaxDBA()
                .ifPresent(n -> atMost(
                        "noise at 1 m, dB(A)",
                        n,
                        build.outcome().sound().levelDBA().orElse(0)));
        limits.labourMaxH()
                .ifPresent(h -> atMost("hands-on hours", h, build.outcome().labourMin() / MIN_PER_H));
        limits.leadMaxDays()
                .ifPresent(d -> atMost("days until handover", d, build.outcome().days()));
        for (Stack stack : build.stacks()) {
            double free = inspection
                    .fitCase()
                    .openings()
                    .freeArea(stack.frame().mount(), stack.shape().pattern(), build.mods());
            atLeast("free area of " + stack.frame().mount().id(), limits.freeAreaMin(), free);
        }
    }

    private void temperatures() {
        BriefLimits limits = brief.limits();
        atMost(
                "coolant, C",
                limits.coolantMaxC(),
                limits.roomC() + build.outcome().coolantOverRoomCentiK() / CENTS);
        BriefLimits.HeatLimits heat = limits.heat().orElse(BriefLimits.HeatLimits.NONE);
        heat.processorMaxC().ifPresent(max -> junction("processor, C", max, Machine.PROCESSOR));
        heat.cardMaxC().ifPresent(max -> junction("card, C", max, Machine.CARD));
        heat.caseMaxC()
                .ifPresent(max -> atMost("case air, C", max, inspection.state().caseC()));
    }

    private void junction(String line, double most, String block) {
        Optional<Inspection.Hot> hot = inspection.junctions().stream()
                .filter(h -> h.name().equals(block))
                .findFirst();
        if (hot.isPresent()) {
            atMost(line, most, hot.get().temperatureC());
        } else {
            add(line, "at most " + text(most), "no block: its own cooler", OptionalDouble.empty(), Kept.UNKNOWN);
        }
    }

    private void mods() {
        BriefLimits.ModLimits mods = brief.limits().mods();
        mods.visibleCutsMax()
                .ifPresent(max -> atMost("cuts that show", max, build.bill().visibleCuts()));
        mods.cutsMax().ifPresent(max -> atMost("cuts", max, build.bill().cuts()));
        if (!mods.forbid().isEmpty()) {
            List<String> broken =
                    build.modIds().stream().filter(mods.forbid()::contains).toList();
            add(
                    "mods not wanted",
                    String.join(", ", mods.forbid()),
                    broken.isEmpty() ? "none of them" : String.join(", ", broken),
                    OptionalDouble.empty(),
                    broken.isEmpty() ? Kept.KEPT : Kept.BROKEN);
        }
        mods.confidencePercent().ifPresent(this::confidence);
        if (mods.noTightPlaces()) {
            boolean tight = inspection.witness().gaps().stream().anyMatch(g -> g.verdict() == Verdict.TIGHT);
            add(
                    "no tight places",
                    "yes",
                    tight ? "tight" : "none",
                    OptionalDouble.empty(),
                    tight ? Kept.BROKEN : Kept.KEPT);
        }
    }

    private void confidence(double percent) {
        OptionalDouble probability = inspection.witness().probability();
        if (probability.isPresent()) {
            atLeast("chance that all fits, %", percent, Chance.told(probability.getAsDouble()) * PERCENT);
        } else {
            add(
                    "chance that all fits, %",
                    "at least " + text(percent), "not all is measured", OptionalDouble.empty(), Kept.UNKNOWN);
        }
    }

    private void atMost(String line, double most, double given) {
        add(
                line,
                "at most " + text(most),
                text(given),
                OptionalDouble.of(most - given),
                kept(given <= most + ROUNDING));
    }

    private void atLeast(String line, double least, double given) {
        add(
                line,
                "at least " + text(least),
                text(given),
                OptionalDouble.of(given - least),
                kept(given >= least - ROUNDING));
    }

    /** Far below anything shown: sums in binary fractions. */
    private static final double ROUNDING = 1e-9;

    private static Kept kept(boolean yes) {
        return yes ? Kept.KEPT : Kept.BROKEN;
    }

    private void add(String line, String wanted, String given, OptionalDouble margin, Kept kept) {
        lines.add(new Line(line, wanted, given, margin, kept));
    }

    private static String text(double value) {
        return java.math.BigDecimal.valueOf(value)
                .setScale(2, java.math.RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
