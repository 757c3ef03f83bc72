package loopwright.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import loopwright.answer.RankAnswer;
import loopwright.catalog.chassis.Chassis;
import loopwright.cli.BriefOptions.Asked;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.paper.Ink;
import loopwright.paper.Origin;
import loopwright.paper.RankCsv;
import loopwright.paper.RankJson;
import loopwright.paper.RankPaper;
import loopwright.paper.RankText;
import loopwright.paper.RankText.Detail;
import loopwright.rank.Order;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The builds worth offering for a brief's budget. */
@Command(
        name = "rank",
        description = "Ranks builds: those that no other beats in price and coolant temperature, then a list.%n",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = "%nExample:%n  loopwright rank scenarios/demo.yaml --by noise --top 5")
final class RankCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private BriefOptions about = new BriefOptions();

    /** What the list is ordered by, as the option spells it. */
    enum By {
        COST,
        TEMPERATURE,
        NOISE,
        LABOUR,
        DAYS;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Option(
            names = "--by",
            paramLabel = "ORDER",
            defaultValue = "cost",
            description = "Order of the list: cost, temperature, noise, labour or days. Default: cost.")
    private By by = By.COST;

    @Option(
            names = "--top",
            paramLabel = "N",
            defaultValue = "5",
            description = "Length of the list. Default: ${DEFAULT-VALUE}.")
    private int top = 5;

    @Option(names = "--layout", paramLabel = "KEY", description = "Only builds of this layout.")
    private Optional<String> layout = Optional.empty();

    @Option(names = "--all", description = "Show every unbeaten build, not only a few that stand for all.")
    private boolean all;

    @Override
    public Integer call() {
        about.requirePositive("--top", top);
        layout.ifPresent(about::requireKey);
        Asked asked = about.read();
        Stopper stopper = about.stopper();
        RankPaper paper = paper(about.origin(asked, stopper));
        Outcome outcome = new Outcome();
        paper.begin();
        for (Chassis chassis : asked.chassis()) {
            Progress progress = Progress.on(spec.commandLine().getErr(), "builds in " + chassis.id());
            RankAnswer answer = new RankAnswer(
                    new FitCase(asked.catalog(), chassis, asked.brief()),
                    FitWish.ALL,
                    new RankAnswer.RankWish(Order.valueOf(by.name()), top, layout),
                    progress.around(stopper));
            progress.end();
            outcome.note(paper.add(answer), answer.incompleteBecause().isEmpty());
        }
        paper.end();
        return outcome.code();
    }

    private RankPaper paper(Origin origin) {
        PrintWriter out = spec.commandLine().getOut();
        return switch (about.format()) {
            case JSON -> new RankJson(out, origin);
            case CSV -> new RankCsv(out, origin);
            case TABLE ->
                new RankText(
                        out, origin, Ansi.AUTO.enabled() ? Ink.COLOURED : Ink.PLAIN, all ? Detail.ALL : Detail.SPREAD);
        };
    }
}
