package loopwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.cli.BriefOptions.Asked;
import loopwright.cli.BriefOptions.Format;
import loopwright.fit.FitWish;
import loopwright.paper.Ink;
import loopwright.paper.Origin;
import loopwright.paper.UnlockCsv;
import loopwright.paper.UnlockJson;
import loopwright.paper.UnlockPaper;
import loopwright.paper.UnlockText;
import loopwright.paper.UnlockView;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Option;

/** How {@code unlock} is narrowed, and how much of the answer is shown. */
final class UnlockOptions {

    /** Most cuts that can be asked about. */
    private static final int CUTS_MAX = 1000;

    @Option(names = "--mount", paramLabel = "MOUNT", description = "Show only this mount; may be given again.")
    private List<String> mounts = List.of();

    @Option(names = "--with", paramLabel = "MOD", description = "This mod is done in any case.")
    private List<String> with = List.of();

    @Option(names = "--without", paramLabel = "MOD", description = "This mod is not done.")
    private List<String> without = List.of();

    @Option(
            names = "--cuts",
            paramLabel = "N",
            description = "The other way round: the largest radiators with at most 0 to N cuts.")
    private Optional<Integer> cuts = Optional.empty();

    @Option(names = "--layout", paramLabel = "KEY", description = "Every way to have this one layout.")
    private Optional<String> layout = Optional.empty();

    @Option(
            names = "--top",
            paramLabel = "N",
            defaultValue = "15",
            description = "Show the first N combinations. Default: ${DEFAULT-VALUE}.")
    private int top = 15;

    FitWish wish(Chassis chassis) {
        List<String> ids = chassis.mods().stream().map(Mod::id).toList();
        return new FitWish(
                with, without.stream().filter(ids::contains).toList(), OptionalInt.empty(), OptionalLong.empty());
    }

    List<String> mounts() {
        return mounts;
    }

    /** Refuses ids that no chassis asked about has, and numbers out of range. */
    void check(BriefOptions about, Asked asked) {
        about.requireMods(asked, with, without);
        about.requireMounts(asked, mounts);
        about.requirePositive("--top", top);
        layout.ifPresent(about::requireKey);
        cuts.ifPresent(n -> about.requireWithin("--cuts", n, 0, CUTS_MAX));
    }

    UnlockPaper paper(Format format, PrintWriter out, Origin origin) {
        UnlockView asked = new UnlockView(cuts.map(OptionalInt::of).orElse(OptionalInt.empty()), layout);
        Ink ink = Ansi.AUTO.enabled() ? Ink.COLOURED : Ink.PLAIN;
        return switch (format) {
            case JSON -> new UnlockJson(out, origin, asked);
            case CSV -> new UnlockCsv(out, origin, asked);
            case TABLE -> new UnlockText(out, origin, ink, top, asked);
        };
    }
}
