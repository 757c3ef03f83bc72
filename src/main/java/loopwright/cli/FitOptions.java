package loopwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import loopwright.answer.FitView;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.cli.BriefOptions.Asked;
import loopwright.cli.BriefOptions.Format;
import loopwright.fit.FitWish;
import loopwright.paper.FitCsv;
import loopwright.paper.FitFull;
import loopwright.paper.FitJson;
import loopwright.paper.FitLines;
import loopwright.paper.FitPaper;
import loopwright.paper.FitText;
import loopwright.paper.Ink;
import loopwright.paper.Origin;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Option;

/** How {@code fit} is narrowed, and how much of the answer is shown. */
final class FitOptions {

    @Option(names = "--mount", paramLabel = "MOUNT", description = "Show only layouts with a stack there.")
    private List<String> mounts = List.of();

    @Option(names = "--with", paramLabel = "MOD", description = "This mod is done in any case.")
    private List<String> with = List.of();

    @Option(names = "--without", paramLabel = "MOD", description = "This mod is not done.")
    private List<String> without = List.of();

    @Option(names = "--layout", paramLabel = "KEY", description = "Show one layout in full.")
    private Optional<String> layout = Optional.empty();

    @Option(names = "--all", description = "List every layout in a line or two.")
    private boolean all;

    @Option(names = "--limit", paramLabel = "N", description = "Stop after N layouts, marked incomplete.")
    private Optional<Integer> limit = Optional.empty();

    @Option(
            names = "--top",
            paramLabel = "N",
            defaultValue = "12",
            description = "Show the first N groups. Default: ${DEFAULT-VALUE}.")
    private int top = 12;

    FitWish wish(Chassis chassis) {
        List<String> ids = chassis.mods().stream().map(Mod::id).toList();
        return new FitWish(
                with,
                without.stream().filter(ids::contains).toList(),
                limit.map(OptionalInt::of).orElse(OptionalInt.empty()),
                OptionalLong.empty());
    }

    FitView view() {
        return new FitView(mounts, layout);
    }

    /** Refuses ids that no chassis asked about has, and numbers below 1. */
    void check(BriefOptions about, Asked asked) {
        about.requireMods(asked, with, without);
        about.requireMounts(asked, mounts);
        about.requirePositive("--top", top);
        layout.ifPresent(about::requireKey);
        limit.ifPresent(n -> about.requirePositive("--limit", n));
    }

    FitPaper paper(Format format, PrintWriter out, Origin origin) {
        Ink ink = Ansi.AUTO.enabled() ? Ink.COLOURED : Ink.PLAIN;
        return switch (format) {
            case JSON -> new FitJson(out, origin);
            case CSV -> new FitCsv(out, origin);
            case TABLE ->
                layout.<FitPaper>map(key -> new FitFull(out, origin, ink, key))
                        .orElseGet(() -> all ? new FitLines(out, origin, ink) : new FitText(out, origin, ink, top));
        };
    }
}
