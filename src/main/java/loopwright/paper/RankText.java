package loopwright.paper;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import loopwright.answer.RankAnswer;
import loopwright.catalog.brief.Brief;
import loopwright.loop.Band;
import loopwright.rank.Build;
import loopwright.rank.RankResult.Ranked;

/** Ranked builds, for people: the unbeaten ones side by side, what each is, then the list by the order asked. */
public final class RankText implements RankPaper {

    /** Most unbeaten builds shown unless all are asked for. */
    private static final int SHOWN = 8;

    private static final int MIN_PER_H = 60;
    private static final int CENTS = 100;

    private final PrintWriter out;
    private final Origin origin;
    private final Ink ink;
    private final int shown;

    /** Writes the builds that stand for all unbeaten ones, or all of them. */
    public RankText(PrintWriter out, Origin origin, Ink ink, Detail detail) {
        this.out = out;
        this.origin = origin;
        this.ink = ink;
        this.shown = detail == Detail.ALL ? Integer.MAX_VALUE : SHOWN;
    }

    /** How many of the unbeaten builds are shown. */
    public enum Detail {
        /** A few that stand for all. */
        SPREAD,
        /** Every one. */
        ALL
    }

    @Override
    public void begin() {
        // The first chassis starts the page.
    }

    @Override
    public boolean add(RankAnswer answer) {
        head(answer);
        List<Ranked> spread = answer.spread(shown);
        if (spread.isEmpty()) {
            print("");
            Lines.wrap("", answer.whyNone()).forEach(this::print);
            answer.why()
                    .map(w -> w.had().isPresent() ? WhyShort.builds(w) : WhyShort.fit(w))
                    .orElse(List.of())
                    .forEach(this::print);
        } else {
            print("");
            table(answer, spread).forEach(this::print);
            differences(answer, spread).forEach(this::print);
        }
        cheaper(answer);
        for (int i = 0; i < spread.size(); i++) {
            print("");
            RankDetail.lines(Letters.of(i), spread.get(i), answer.fitCase()).forEach(this::print);
        }
        listed(answer);
        print("");
        return !spread.isEmpty();
    }

    private void head(RankAnswer answer) {
        Brief brief = answer.fitCase().brief();
        StringBuilder limits = new StringBuilder();
        brief.limits()
                .budgetCents()
                .ifPresent(b -> limits.append("at most ")
                        .append(RankWords.money(b, brief))
                        .append(", "));
        limits.append("room ")
                .append(Mm.rounded(brief.limits().roomC(), 1)
                        .stripTrailingZeros()
                        .toPlainString());
        limits.append(" C, coolant at most ")
                .append(Mm.rounded(brief.limits().coolantMaxC(), 1)
                        .stripTrailingZeros()
                        .toPlainString())
                .append(" C");
        brief.limits()
                .noiseMaxDBA()
                .ifPresent(n ->
                        limits.append(", at most ").append(Mm.rounded(n, 0)).append(" dB(A) at 1 m"));
        int unbeaten = answer.result().unbeaten().size();
        String complete =
                answer.incompleteBecause().map(b -> "INCOMPLETE (" + b + ")").orElse("Complete");
        Lines.wrap(
                        "RANK  ",
                        answer.fitCase().chassis().title() + " ("
                                + answer.fitCase().chassis().id() + "): " + limits
                                + ". " + complete + ": " + RankWords.count(unbeaten, "build")
                                + " that no other beats in price and temperature, from "
                                + RankWords.count(answer.result().fits().fits().size(), "layout")
                                + ".")
                .forEach(this::print);
    }

    private static List<String> table(RankAnswer answer, List<Ranked> builds) {
        Brief brief = answer.fitCase().brief();
        Columns table = Columns.headed(
                "",
                brief.terms().currency(),
                "coolant C",
                "noise dB",
                "hours",
                "days",
                "cuts seen",
                "hidden",
                "smallest margin");
        double first = RankWords.levelDBA(builds.get(0).build());
        for (int i = 0; i < builds.size(); i++) {
            Build build = builds.get(i).build();
            double difference = RankWords.levelDBA(build) - first;
            table.row(
                    Letters.of(i),
                    Mm.rounded(build.outcome().priceCents() / (double) CENTS, 0).toPlainString(),
                    RankWords.coolant(answer, build),
                    i == 0 ? Mm.rounded(first, 0) + " abs" : RankWords.difference(difference),
                    Mm.rounded(build.outcome().labourMin() / (double) MIN_PER_H, 1)
                            .toPlainString(),
                    Integer.toString(build.outcome().days()),
                    Integer.toString(build.bill().visibleCuts()),
                    Integer.toString(build.bill().hiddenCuts()),
                    GapWords.margin(builds.get(i).witness().tightest()).replace("tightest ", ""));
        }
        return table.lines("");
    }

    private static List<String> differences(RankAnswer answer, List<Ranked> builds) {
        List<String> out = new ArrayList<>();
        Build first = builds.get(0).build();
        for (int i = 1; i < builds.size(); i++) {
            Build other = builds.get(i).build();
            Band band = answer.gainBand(first, other);
            double costsK = answer.coolantOverRoomK(other) - answer.coolantOverRoomK(first);
            double savedH = (first.outcome().labourMin() - other.outcome().labourMin()) / (double) MIN_PER_H;
            String time = savedH >= 0
                    ? " and " + Mm.rounded(savedH, 1) + " h"
                    : ", takes " + Mm.rounded(-savedH, 1) + " h more";
            out.add(Letters.of(i) + " for A: saves "
                    + RankWords.money(
                            first.outcome().priceCents() - other.outcome().priceCents(),
                            answer.fitCase().brief())
                    + time + ", costs " + Mm.rounded(costsK, 1) + " +-"
                    + Mm.rounded((band.highK() - band.lowK()) / 2, 1) + " K");
        }
        return out;
    }

    private void cheaper(RankAnswer answer) {
        if (!answer.result().cheaper().isEmpty() && answer.incompleteBecause().isEmpty()) {
            Lines.wrap(
                            answer.result().unbeaten().isEmpty() ? "left out: " : "cheaper, but left out: ",
                            answer.result().cheaper().entrySet().stream()
                                    .map(e -> RankWords.count(e.getValue(), "layout") + " " + e.getKey())
                                    .collect(Collectors.joining("; ")))
                    .forEach(this::print);
        }
        int hidden = answer.result().unbeaten().size() - answer.spread(shown).size();
        if (hidden > 0) {
            print(RankWords.count(hidden, "more unbeaten build") + " between these: --all shows each.");
        }
    }

    private void listed(RankAnswer answer) {
        List<Ranked> listed = answer.result().listed();
        if (listed.isEmpty()) {
            return;
        }
        print("");
        print("The first " + listed.size() + " by " + JsonWords.of(answer.order())
                + ": the best build of each choice of radiators and fan layers:");
        Columns table = Columns.headed(
                answer.fitCase().brief().terms().currency(),
                "coolant C",
                "dB(A)",
                "hours",
                "days",
                "fits",
                "key",
                "layout");
        for (Ranked one : listed) {
            Build build = one.build();
            table.row(
                    Mm.rounded(build.outcome().priceCents() / (double) CENTS, 0).toPlainString(),
                    RankWords.coolant(answer, build),
                    Mm.rounded(RankWords.levelDBA(build), 0).toPlainString(),
                    Mm.rounded(build.outcome().labourMin() / (double) MIN_PER_H, 1)
                            .toPlainString(),
                    Integer.toString(build.outcome().days()),
                    ChanceWords.word(one.witness().probability()),
                    build.key(),
                    build.layout().stacks().stream().map(StackWords::brief).collect(Collectors.joining(" | ")));
        }
        table.lines("").forEach(this::print);
    }

    @Override
    public void end() {
        Notes.underRank(origin).forEach(this::print);
    }

    private void print(String line) {
        out.println(ink.on(line));
    }
}
