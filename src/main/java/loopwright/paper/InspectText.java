package loopwright.paper;

import java.io.PrintWriter;
import java.util.List;
import loopwright.answer.Checklist;
import loopwright.answer.InspectAnswer;
import loopwright.answer.Inspection;
import loopwright.fit.Gap;
import loopwright.rank.Build;

/** One build in full, for people. */
public final class InspectText implements InspectPaper {

    /** Gaps shown: the tightest. */
    private static final int GAPS = 8;

    private static final double CENTS = 100;

    private final PrintWriter out;
    private final Origin origin;
    private final Ink ink;

    /** Writes to a terminal or a file. */
    public InspectText(PrintWriter out, Origin origin, Ink ink) {
        this.out = out;
        this.origin = origin;
        this.ink = ink;
    }

    @Override
    public void write(InspectAnswer answer) {
        Inspection in = answer.inspection();
        head(in);
        section("THE BRIEF, LINE BY LINE", checklist(in));
        section("CLEARANCES, the tightest " + GAPS, clearances(in));
        section(
                "ROOM LEFT: one thing larger, all else as it is",
                RoomWords.table(in.roomLeft()).lines(""));
        section("AIR", InspectAirLines.of(in));
        section("LOOP", InspectLoopLines.of(in));
        section("MATERIALS: does the coolant bear what it touches", InspectMaterialLines.of(in));
        section(
                "MASS: what it weighs, how it stands, how it is lifted",
                InspectMassLines.of(in).lines());
        InspectPlumbingLines.of(answer).forEach((title, passages) -> section(title, passages.lines()));
        section("TEMPERATURES", InspectHeatLines.temperatures(answer));
        section("WHAT DECIDES THEM", InspectHeatLines.causes(answer));
        section("SOUND", InspectSoundLines.of(answer));
        section("POWER", InspectPowerLines.of(in.powering()).lines());
        section("CABLES: do they reach", InspectCableLines.of(answer).lines());
        section("DRIVES", InspectDriveLines.of(answer).lines());
        section("WARM-UP, AND WHEN SOMETHING STOPS", InspectHeatLines.warmUp(answer));
        section("NEXT STEPS: one change each, what it gains and costs", InspectStepLines.of(answer));
        print("");
        Notes.underInspect(origin).forEach(this::print);
    }

    @Override
    public void nothing(String why) {
        Lines.wrap("INSPECT  ", why).forEach(this::print);
        print(origin.line());
    }

    private void head(Inspection in) {
        Build build = in.build();
        String stacks = build.layout().stacks().stream()
                .map(StackWords::full)
                .collect(java.util.stream.Collectors.joining(" | "));
        Lines.wrap(
                        "INSPECT  ",
                        in.fitCase().chassis().title() + ", build " + build.key() + ", layout "
                                + build.layout().key() + ": " + stacks)
                .forEach(this::print);
        Lines.wrap("   do:    ", ModWords.titles(build.mods(), in.fitCase().chassis()))
                .forEach(this::print);
        Lines.wrap("   air:   ", AirWords.of(build)).forEach(this::print);
        Lines.wrap("   fits:  ", ChanceWords.fits(in.witness(), in.fitCase().brief()))
                .forEach(this::print);
        Lines.wrap("   parts: ", RankDetail.parts(build)).forEach(this::print);
        Lines.wrap(
                        "   gives: ",
                        RankWords.money(
                                        build.outcome().priceCents(),
                                        in.fitCase().brief()) + ", coolant "
                                + Mm.rounded(in.state().water().meanC(), 1) + " +-"
                                + Mm.rounded(in.coolantBand().halfK(), 1) + " C, "
                                + Mm.rounded(RankWords.levelDBA(build), 0) + " dB(A) at 1 m, "
                                + Mm.rounded(build.outcome().labourMin() / 60.0, 1) + " hands-on hours, "
                                + build.outcome().days() + " days")
                .forEach(this::print);
    }

    private static List<String> checklist(Inspection in) {
        Columns table = Columns.headed("line", "kept", "margin", "the build gives", "the brief says");
        for (Checklist.Line line : Checklist.of(in)) {
            table.row(
                    line.line(),
                    switch (line.kept()) {
                        case KEPT -> "kept";
                        case BROKEN -> "BROKEN";
                        case UNKNOWN -> "UNKNOWN";
                    },
                    line.margin().isPresent()
                            ? Mm.rounded(line.margin().getAsDouble(), 2)
                                    .stripTrailingZeros()
                                    .toPlainString()
                            : "-",
                    line.given(),
                    line.wanted());
        }
        return table.lines("");
    }

    private static List<String> clearances(Inspection in) {
        Columns table =
                Columns.headed("margin mm", "clear", "need", "worst case", "rss", "verdict", "chance", "between");
        for (Gap gap : in.witness().gaps().stream().limit(GAPS).toList()) {
            table.row(
                    mm(gap.marginHmm()),
                    mm(gap.clearanceHmm()),
                    mm(gap.needHmm()),
                    mm(gap.worstCaseHmm()),
                    mm(gap.rssHmm()),
                    JsonWords.of(gap.verdict()),
                    ChanceWords.word(gap.probability()),
                    gap.one() + " and " + gap.other());
        }
        return table.lines("");
    }

    private static String mm(int hmm) {
        return Mm.rounded(hmm / CENTS, 1).toPlainString();
    }

    private void section(String title, List<String> lines) {
        print("");
        print(title);
        lines.forEach(this::print);
    }

    private void print(String line) {
        out.println(ink.on(line));
    }
}
