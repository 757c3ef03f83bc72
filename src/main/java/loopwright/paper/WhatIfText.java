package loopwright.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import loopwright.answer.Flips;
import loopwright.answer.Flips.Changed;
import loopwright.answer.Flips.Died;
import loopwright.answer.Flips.Doubt;
import loopwright.answer.Flips.Hung;
import loopwright.answer.WhatIfAnswer;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.measure.Contradiction;
import loopwright.catalog.measure.Replacement;
import loopwright.fit.Gap;
import loopwright.quantity.Dimension;

/** What readings and assumptions change in one chassis, for people: a paragraph that stands before the answer. */
public final class WhatIfText {

    private static final String SET = "   set:      ";
    private static final String UNUSED = "   unused:   ";
    private static final String NOTE = "   note:     ";
    private static final String GONE = "   gone:     ";
    private static final String NEW = "   new:      ";
    private static final String VERDICT = "   verdict:  ";
    private static final String MODS = "   mods:     ";
    private static final String UNKNOWN = "   unknown:  ";

    /** Keys, lengths or reasons of one sort that are named. */
    private static final int NAMED_MAX = 3;

    private WhatIfText() {}

    /** The paragraph, with a blank line under it. */
    public static List<String> lines(WhatIfAnswer answer) {
        Chassis chassis = answer.fitCase().chassis();
        Flips flips = answer.flips();
        List<String> out = new ArrayList<>(
                Lines.wrap("WHAT IF  ", chassis.title() + " (" + chassis.id() + "). " + head(flips, answer) + "."));
        sets(answer).forEach(line -> out.addAll(Lines.wrap(SET, line)));
        for (Contradiction c : answer.whatIf().contradictions()) {
            out.addAll(Lines.wrap(UNUSED, c.sentence()));
        }
        answer.whatIf().notes().forEach(n -> out.addAll(Lines.wrap(NOTE, n)));
        gone(flips.died()).forEach(line -> out.addAll(Lines.wrap(GONE, line)));
        if (!flips.alive().isEmpty()) {
            out.addAll(Lines.wrap(
                    NEW,
                    some(
                            flips.alive(),
                            a -> a.layout().key() + of(a.only()) + " (" + ModWords.titles(a.mods(), chassis) + "; "
                                    + GapWords.margin(a.tightest()) + ")")));
        }
        verdicts(flips.verdicts()).forEach(line -> out.addAll(Lines.wrap(VERDICT, line)));
        if (!flips.otherMods().isEmpty()) {
            out.addAll(Lines.wrap(
                    MODS,
                    some(
                            flips.otherMods(),
                            c -> c.is().layout().key() + of(c.only()) + " (" + otherMods(c, chassis) + ")")));
        }
        doubts(flips.doubts()).forEach(line -> out.addAll(Lines.wrap(UNKNOWN, line)));
        out.add("");
        return out;
    }

    private static String head(Flips flips, WhatIfAnswer answer) {
        if (answer.whatIf().applied().isEmpty()) {
            return "No length takes another value, so nothing flips";
        }
        String stopped = flips.incompleteBecause()
                .map(b -> "INCOMPLETE (" + b + "): so far ")
                .orElse("");
        if (flips.isNothing()) {
            return stopped + "Nothing flips: " + counted(flips.same(), "layout") + " as before";
        }
        return stopped + counted(flips.died().size(), "layout") + " no longer "
                + (flips.died().size() == 1 ? "fits" : "fit") + ", "
                + flips.alive().size() + " new, "
                + flips.verdicts().size()
                + (flips.verdicts().size() == 1 ? " changes its verdict, " : " change their verdict, ")
                + (flips.otherMods().isEmpty() ? "" : flips.otherMods().size() + " by other mods, ")
                + (flips.doubts().isEmpty() ? "" : flips.doubts().size() + " from or to unknown, ")
                + flips.same() + " as before";
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    /** What was set, a line for each source. */
    private static List<String> sets(WhatIfAnswer answer) {
        Set<Replacement> here = new LinkedHashSet<>(answer.appliedHere());
        Map<String, List<Replacement>> bySource = new LinkedHashMap<>();
        answer.whatIf()
                .applied()
                .forEach(r ->
                        bySource.computeIfAbsent(r.by(), b -> new ArrayList<>()).add(r));
        List<String> out = new ArrayList<>();
        bySource.forEach((by, all) -> {
            List<Replacement> ours = all.stream().filter(here::contains).toList();
            int elsewhere = all.size() - ours.size();
            String others = elsewhere == 0
                    ? ""
                    : (ours.isEmpty() ? "" : "; ") + counted(elsewhere, ours.isEmpty() ? "length" : "more length")
                            + " of parts that this brief does not use";
            out.add(by + ": " + some(ours, WhatIfText::text) + others);
        });
        return out;
    }

    private static String text(Replacement one) {
        return one.address() + " " + text(one.from()) + " -> " + text(one.to()) + " mm";
    }

    private static String text(Dimension dimension) {
        return dimension.isUnknown()
                ? "unknown"
                : Mm.text(dimension.valueHmm()) + " +-" + Mm.text(dimension.plusMinusHmm());
    }

    private static <T> String some(List<T> list, Function<T, String> words) {
        String named = list.stream().limit(NAMED_MAX).map(words).collect(Collectors.joining(", "));
        return named + (list.size() > NAMED_MAX ? " and " + (list.size() - NAMED_MAX) + " more" : "");
    }

    private static String of(List<Hung> only) {
        return only.isEmpty()
                ? ""
                : " with "
                        + only.stream()
                                .map(h -> h.mount() + " " + String.join(" or ", h.radiators()))
                                .collect(Collectors.joining(", "));
    }

    /** Those that died by what is in the way, most first. */
    private static List<String> gone(List<Died> died) {
        Map<String, List<Died>> byClash = new TreeMap<>();
        died.forEach(
                d -> byClash.computeIfAbsent(reason(d), r -> new ArrayList<>()).add(d));
        List<Map.Entry<String, List<Died>>> most = new ArrayList<>(byClash.entrySet());
        most.sort((a, b) -> Integer.compare(b.getValue().size(), a.getValue().size()));
        List<String> out = new ArrayList<>();
        for (Map.Entry<String, List<Died>> entry : most.subList(0, Math.min(NAMED_MAX, most.size()))) {
            out.add(entry.getValue().size() + " by " + entry.getKey() + lacking(entry.getValue()) + ": "
                    + some(entry.getValue(), d -> d.layout().key() + of(d.only())));
        }
        int rest =
                most.stream().skip(NAMED_MAX).mapToInt(e -> e.getValue().size()).sum();
        if (rest > 0) {
            out.add(rest + " by other clashes");
        }
        return out;
    }

    private static String reason(Died died) {
        return died.clash()
                .gap()
                .map(g -> g.one() + " to " + g.other())
                .orElse(died.clash().why());
    }

    /** {@code , which lacks 0.5 to 2.5 mm}. */
    private static String lacking(List<Died> died) {
        List<Integer> lacks = died.stream()
                .flatMap(d -> d.clash().gap().stream())
                .map(g -> -g.marginHmm())
                .sorted()
                .toList();
        if (lacks.isEmpty()) {
            return "";
        }
        int least = lacks.get(0);
        int most = lacks.get(lacks.size() - 1);
        return ", which lacks " + Mm.text(least) + (least == most ? "" : " to " + Mm.text(most)) + " mm";
    }

    private static List<String> verdicts(List<Changed> changed) {
        Map<String, List<Changed>> byChange = new TreeMap<>();
        changed.forEach(c -> byChange.computeIfAbsent(
                        GapWords.verdict(c.was().tightest().verdict()) + " -> "
                                + GapWords.verdict(c.is().tightest().verdict()),
                        k -> new ArrayList<>())
                .add(c));
        List<String> out = new ArrayList<>();
        byChange.forEach((change, all) -> out.add(all.size() + " " + change + ": " + some(all, WhatIfText::text)));
        return out;
    }

    private static String text(Changed changed) {
        String now = changed.is().layout().key();
        String old = changed.was().layout().key();
        return now + (old.equals(now) ? "" : ", which was " + old) + of(changed.only()) + " ("
                + Mm.text(changed.was().tightest().marginHmm()) + " -> "
                + place(changed.is().tightest()) + (changed.needsOtherMods() ? ", by other mods" : "") + ")";
    }

    /** {@code also front-bay-out; no longer roof-cover}. */
    private static String otherMods(Changed changed, Chassis chassis) {
        List<String> more = new ArrayList<>(changed.is().mods().ids(chassis));
        List<String> less = new ArrayList<>(changed.was().mods().ids(chassis));
        less.removeAll(changed.is().mods().ids(chassis));
        more.removeAll(changed.was().mods().ids(chassis));
        String also = more.isEmpty() ? "" : "also " + String.join(", ", more);
        String not = less.isEmpty() ? "" : "no longer " + String.join(", ", less);
        return also + (more.isEmpty() || less.isEmpty() ? "" : "; ") + not;
    }

    private static String place(Gap gap) {
        return Mm.text(gap.marginHmm()) + " mm, " + gap.one() + " to " + gap.other();
    }

    private static List<String> doubts(List<Doubt> doubts) {
        Map<String, List<Doubt>> byChange = new TreeMap<>();
        doubts.forEach(d -> byChange.computeIfAbsent(word(d.was()) + " -> " + word(d.is()), k -> new ArrayList<>())
                .add(d));
        List<String> out = new ArrayList<>();
        byChange.forEach((change, all) -> out.add(
                all.size() + " " + change + ": " + some(all, d -> d.layout().key() + of(d.only()))));
        return out;
    }

    private static String word(Flips.State state) {
        return switch (state) {
            case FITS -> "fits";
            case UNKNOWN -> "unknown";
            case NOT -> "does not fit";
        };
    }
}
