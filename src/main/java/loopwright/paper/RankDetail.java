package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import loopwright.fit.FitCase;
import loopwright.rank.Build;
import loopwright.rank.RankResult.Ranked;

/** What one build is: stacks, mods, parts. */
final class RankDetail {

    private static final String INDENT = "   ";

    private RankDetail() {}

    static List<String> lines(String letter, Ranked ranked, FitCase fitCase) {
        Build build = ranked.build();
        List<String> out = new ArrayList<>();
        String stacks = build.layout().stacks().stream().map(StackWords::full).collect(Collectors.joining(" | "));
        out.addAll(Lines.wrap(letter + " ".repeat(Math.max(1, INDENT.length() - letter.length())), INDENT, stacks));
        out.addAll(Lines.wrap(INDENT + "do:    ", ModWords.titles(build.mods(), fitCase.chassis())));
        out.addAll(Lines.wrap(INDENT + "air:   ", AirWords.of(build)));
        out.addAll(Lines.wrap(INDENT + "tight: ", GapWords.tightest(ranked.witness())));
        out.addAll(Lines.wrap(INDENT + "fits:  ", ChanceWords.fits(ranked.witness(), fitCase.brief())));
        out.addAll(Lines.wrap(INDENT + "parts: ", parts(build)));
        String equal = ranked.equal() == 1 ? "" : "; " + equal(ranked.equal() - 1);
        out.addAll(Lines.wrap(
                INDENT + "key:   ", build.key() + ", layout " + build.layout().key() + equal));
        return out;
    }

    private static String equal(int others) {
        return others == 1
                ? "1 more build costs the same and gets as cool"
                : others + " more builds cost the same and get as cool";
    }

    static String parts(Build build) {
        Map<String, Integer> counts = new TreeMap<>();
        build.parts().values().forEach(ids -> counts.merge(ids.get(0), ids.size(), Integer::sum));
        return counts.entrySet().stream()
                .map(e -> (e.getValue() == 1 ? "" : e.getValue() + " ") + e.getKey())
                .collect(Collectors.joining(", "));
    }
}
