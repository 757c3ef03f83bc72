package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import loopwright.answer.why.BuildWhy;
import loopwright.answer.why.Cause;
import loopwright.answer.why.Conflict;
import loopwright.answer.why.Stated;
import loopwright.answer.why.WayOut;
import loopwright.answer.why.WhyAnswer;
import loopwright.catalog.chassis.Chassis;
import loopwright.loop.SoundPower;
import loopwright.rank.Build;

/** Conflicts and ways out as lines. */
final class WhyLines {

    private static final double CENTI = 100;
    private static final int MIN_PER_H = 60;

    private WhyLines() {}

    /** The conflicts, each a block; numbered on from those before. */
    static List<String> conflicts(List<Conflict> conflicts) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < conflicts.size(); i++) {
            String head = Letters.of(i) + "  ";
            for (Stated fact : conflicts.get(i).facts()) {
                out.addAll(Lines.wrap(head, "     ", fact.sentence()));
                head = " ".repeat(head.length());
            }
        }
        return out;
    }

    /** The ways out, each a block: what to change, what it takes. */
    static List<String> waysOut(List<WayOut> ways, WhyAnswer answer) {
        Chassis chassis = answer.fitCase().chassis();
        String currency = answer.fitCase().brief().terms().currency();
        List<String> out = new ArrayList<>();
        for (int i = 0; i < ways.size(); i++) {
            WayOut way = ways.get(i);
            String changes = way.changes().stream().map(Stated::sentence).collect(Collectors.joining("; and "));
            String head = padded(i + 1);
            out.addAll(Lines.wrap(head, " ".repeat(head.length()), changes));
            String does = way.mods().size() == 0
                    ? "as delivered, no work at the case"
                    : "with: " + ModWords.titles(way.mods(), chassis) + " ("
                            + Effort.money(way.effort().costCents()) + " " + currency + ", "
                            + Effort.hours(way.effort().handsOnMin()) + " h, "
                            + RankWords.count(way.effort().days(), "day") + ")";
            out.addAll(Lines.wrap("    ", does));
            way.instead().forEach(s -> out.addAll(Lines.wrap("    ", s.sentence())));
        }
        return out;
    }

    private static String padded(int number) {
        return number + " ".repeat(Math.max(1, 4 - Integer.toString(number).length()));
    }

    /** Conflicts of builds, with what keeps the coolant warm. */
    static List<String> told(List<BuildWhy.Told> conflicts) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < conflicts.size(); i++) {
            String head = Letters.of(i) + "  ";
            for (Stated fact : conflicts.get(i).conflict().facts()) {
                out.addAll(Lines.wrap(head, "     ", fact.sentence()));
                head = " ".repeat(head.length());
            }
            List<Cause> causes = conflicts.get(i).causes();
            if (!causes.isEmpty()) {
                out.addAll(Lines.wrap(
                        "   cause: ",
                        causes.get(0).name() + "; "
                                + causes.stream().map(WhyLines::cause).collect(Collectors.joining(", "))));
            }
        }
        return out;
    }

    private static String cause(Cause cause) {
        return cause.step() + ": " + Mm.rounded(cause.gainK(), 1) + " K";
    }

    /** What can be given up for a build. */
    static List<String> given(List<BuildWhy.Given> ways, WhyAnswer answer) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < ways.size(); i++) {
            String changes =
                    ways.get(i).changes().stream().map(Stated::sentence).collect(Collectors.joining("; and "));
            String head = padded(i + 1);
            out.addAll(Lines.wrap(head, " ".repeat(head.length()), changes));
            out.addAll(Lines.wrap("    ", "then: " + build(ways.get(i).build(), answer)));
        }
        return out;
    }

    /** A build in a line: what is mounted where, and its figures. */
    static String build(Build build, WhyAnswer answer) {
        double roomC = answer.fitCase().brief().limits().roomC();
        String stacks = build.layout().stacks().stream()
                .map(s -> s.frame().mount().id() + " " + StackWords.size(s))
                .collect(Collectors.joining(", "));
        double level = build.outcome().sound().equals(new SoundPower(0)) ? 0 : RankWords.levelDBA(build);
        return stacks + "; "
                + RankWords.money(build.outcome().priceCents(), answer.fitCase().brief()) + ", coolant "
                + Mm.rounded(roomC + build.outcome().coolantOverRoomCentiK() / CENTI, 1) + " C, "
                + Mm.rounded(level, 0) + " dB(A), "
                + Mm.rounded(build.outcome().labourMin() / (double) MIN_PER_H, 1) + " h, "
                + RankWords.count(build.outcome().days(), "day") + "; layout "
                + build.layout().key();
    }
}
