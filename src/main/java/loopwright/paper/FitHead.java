package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import loopwright.answer.FitAnswer;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.chassis.Chassis;
import loopwright.fit.FoundLayout;
import loopwright.fit.Layout.Stack;
import loopwright.fit.MountFrame;

/** The lines at the head of a chassis: how much fits, whether that is all, and what fits without any mod. */
final class FitHead {

    private FitHead() {}

    static List<String> lines(FitAnswer answer, List<FoundLayout> fits, int groups) {
        Chassis chassis = answer.fitCase().chassis();
        List<String> out = new ArrayList<>(Lines.wrap(
                "FIT  ",
                chassis.title() + " (" + chassis.id() + "). " + state(answer) + ": "
                        + count(answer, fits.size(), groups) + "."));
        if (!fits.isEmpty() && answer.wish().with().isEmpty()) {
            out.addAll(Lines.wrap("     ", "As delivered: " + uncut(answer)));
        }
        TightWords.ofFits(answer.fitCase()).ifPresent(w -> out.addAll(Lines.wrap("     ", w)));
        if (answer.fitsInAll() == 0
                && answer.incompleteBecause().isEmpty()
                && answer.unknown().isEmpty()) {
            out.add("");
            out.addAll(WhyShort.fit(answer.why()));
        }
        return out;
    }

    /** Complete, or why not. */
    static String state(FitAnswer answer) {
        return answer.incompleteBecause().map(b -> "INCOMPLETE (" + b + ")").orElse("Complete");
    }

    private static String count(FitAnswer answer, int layouts, int groups) {
        if (layouts == 0) {
            return answer.fitsInAll() == 0
                    ? answer.incompleteBecause().isPresent()
                            ? "nothing found yet"
                            : answer.unknown().isEmpty() ? "nothing fits" : "nothing is known to fit"
                    : "none of the " + answer.fitsInAll() + " layouts that fit is of the kind asked for";
        }
        String fit = answer.incompleteBecause().isPresent() ? " found so far" : layouts == 1 ? " fits" : " fit";
        return layouts + (layouts == 1 ? " layout" : " layouts") + fit + ", in " + groups
                + (groups == 1 ? " group" : " groups");
    }

    /** For each mount the thickest radiator of each pattern that it takes without any mod. */
    private static String uncut(FitAnswer answer) {
        Map<String, SortedMap<Pattern, Integer>> thickest = new TreeMap<>();
        for (FoundLayout found : answer.all()) {
            if (found.needed().get(0).size() == 0) {
                for (Stack stack : found.layout().stacks()) {
                    thickest.computeIfAbsent(stack.frame().mount().id(), m -> new TreeMap<>())
                            .merge(stack.shape().pattern(), stack.shape().thicknessHmm(), Math::max);
                }
            }
        }
        List<String> some = new ArrayList<>();
        List<String> none = new ArrayList<>();
        for (MountFrame frame : answer.fitCase().frames()) {
            String mount = frame.mount().id();
            SortedMap<Pattern, Integer> patterns = thickest.getOrDefault(mount, new TreeMap<>());
            if (patterns.isEmpty()) {
                none.add(mount);
            } else {
                some.add(mount + " "
                        + patterns.entrySet().stream()
                                .map(e -> e.getKey() + "x" + Mm.text(e.getValue()))
                                .collect(Collectors.joining(", ")));
            }
        }
        if (!none.isEmpty()) {
            String word = answer.incompleteBecause().isEmpty() ? " nothing" : " nothing so far";
            some.add(String.join(", ", none) + (none.size() == 1 ? " takes" : " take") + word);
        }
        return String.join("; ", some) + ".";
    }
}
