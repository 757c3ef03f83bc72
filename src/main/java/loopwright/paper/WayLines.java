package loopwright.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import loopwright.answer.DrivePlaces;
import loopwright.answer.Unlocks.Gain;
import loopwright.answer.Unlocks.Way;
import loopwright.catalog.brief.Terms;
import loopwright.catalog.chassis.Chassis;
import loopwright.fit.Layout;
import loopwright.fit.Layout.Stack;

/** One way to unlock a radiator class, for people. */
final class WayLines {

    private final Chassis chassis;
    private final Terms terms;

    WayLines(Chassis chassis, Terms terms) {
        this.chassis = chassis;
        this.terms = terms;
    }

    /**
     * What to do, what it takes, how the stack stands, what it gains.
     *
     * @param head stands at the start of the first line; the others are indented as deep
     */
    List<String> lines(String head, Way way) {
        String indent = " ".repeat(head.length());
        List<String> out = new ArrayList<>(effort(head, way));
        out.addAll(Lines.wrap(indent, "fans " + fans(way.stacks())));
        out.addAll(Lines.wrap(indent, way.gain().map(WayLines::gain).orElse(NO_COMPARISON)));
        out.addAll(Lines.wrap(indent, "best: " + layout(way.best().layout().layout())));
        return out;
    }

    /** What to do for one layout, what it takes, what it gains. */
    List<String> toLayout(String head, Way way) {
        List<String> out = new ArrayList<>(effort(head, way));
        out.addAll(Lines.wrap(
                " ".repeat(head.length()), way.gain().map(WayLines::gain).orElse(NO_COMPARISON)));
        return out;
    }

    private List<String> effort(String head, Way way) {
        List<String> out = new ArrayList<>(Lines.wrap(head, ModWords.titles(way.mods(), chassis)));
        out.addAll(Lines.wrap(
                " ".repeat(head.length()),
                ModWords.traces(way.bill()) + "; " + Effort.text(way.bill(), way.costCents(), way.days(), terms)));
        DrivePlaces places = DrivePlaces.of(chassis, way.mods().mods(chassis));
        if (!places.gone().isEmpty()) {
            out.addAll(Lines.wrap(" ".repeat(head.length()), "drives: " + DriveWords.shortly(places, chassis)));
        }
        return out;
    }

    static final String NO_COMPARISON = "no comparison: nothing fits as delivered";

    private static final int QUOTED_K = 10;

    private static String gain(Gain gain) {
        String text = Kelvin.gain(gain) + " at the same fan speed, "
                + Kelvin.signed(QUOTED_K * gain.conductanceGainWPerK(), 0) + " W at 10 K";
        return gain.gainK() < 0 && gain.conductanceGainWPerK() > 0 ? text + "; its air comes warmer" : text;
    }

    private static String layout(Layout layout) {
        return layout.stacks().stream().map(StackWords::brief).collect(Collectors.joining(", ")) + "  " + layout.key();
    }

    /** Where fans may be, with their thicknesses: {@code 15/25 below, 25 above}. */
    private static String fans(List<Stack> stacks) {
        Map<String, TreeSet<Integer>> byPlace = new LinkedHashMap<>();
        for (Stack stack : stacks) {
            String text = StackWords.fans(stack);
            byPlace.computeIfAbsent(text.substring(text.indexOf(' ') + 1), p -> new TreeSet<>())
                    .add(stack.shape().fanThickness().valueHmm());
        }
        return byPlace.entrySet().stream()
                .map(e -> e.getValue().stream().map(Mm::text).collect(Collectors.joining("/")) + " " + e.getKey())
                .collect(Collectors.joining("; or "));
    }
}
