package loopwright.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import loopwright.answer.BuildFinder;
import loopwright.answer.Comparison;
import loopwright.answer.Inspection;
import loopwright.catalog.chassis.Chassis;
import loopwright.cli.BriefOptions.Asked;
import loopwright.fit.FitCase;
import loopwright.paper.CompareCsv;
import loopwright.paper.CompareJson;
import loopwright.paper.ComparePaper;
import loopwright.paper.CompareText;
import loopwright.paper.Ink;
import loopwright.paper.Origin;
import loopwright.rank.Order;
import loopwright.rank.RankResult.Ranked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Two builds side by side. */
@Command(
        name = "compare",
        description = "Puts two builds of one chassis side by side, with what they differ by and how sure that is.%n",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = "%nExample:%n  loopwright compare scenarios/demo.yaml KEY KEY, with two keys that rank printed")
final class CompareCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private BriefOptions about = new BriefOptions();

    @Parameters(index = "1", paramLabel = "KEY", description = "The first build, as rank prints it.")
    private String first = "";

    @Parameters(index = "2", paramLabel = "KEY", description = "The second build.")
    private String second = "";

    @Option(
            names = "--by",
            paramLabel = "ORDER",
            defaultValue = "cost",
            description = "The order of the list the keys are from: cost, temperature, noise, labour or days."
                    + " Default: cost.")
    private RankCommand.By by = RankCommand.By.COST;

    @Override
    public Integer call() {
        about.requireKey(first);
        about.requireKey(second);
        Asked asked = about.read();
        Stopper stopper = about.stopper();
        ComparePaper paper = paper(about.origin(asked, stopper));
        List<String> missing = new ArrayList<>(List.of(first, second));
        for (Chassis chassis : asked.chassis()) {
            FitCase fitCase = new FitCase(asked.catalog(), chassis, asked.brief());
            Progress progress = Progress.on(spec.commandLine().getErr(), "builds in " + chassis.id());
            BuildFinder finder = new BuildFinder(fitCase, Order.valueOf(by.name()), progress.around(stopper));
            Optional<Ranked> a = finder.find(first);
            Optional<Ranked> b = finder.find(second);
            progress.end();
            if (a.isPresent() && b.isPresent()) {
                paper.write(new Comparison(new Inspection(fitCase, a.get()), new Inspection(fitCase, b.get())));
                return ExitCode.ANSWERED;
            }
            a.ifPresent(found -> missing.remove(first));
            b.ifPresent(found -> missing.remove(second));
        }
        if (stopper.because().isPresent()) {
            paper.stopped("Stopped before both builds were found.");
            return ExitCode.INCOMPLETE;
        }
        paper.nothing(
                missing.isEmpty()
                        ? "The two builds are of different cases: compare puts builds of one case side by side."
                        : "No build has the key " + String.join(", nor ", missing)
                                + ": rank prints the keys of this brief and catalogue.");
        return ExitCode.NO;
    }

    private ComparePaper paper(Origin origin) {
        PrintWriter out = spec.commandLine().getOut();
        return switch (about.format()) {
            case TABLE -> new CompareText(out, origin, Ansi.AUTO.enabled() ? Ink.COLOURED : Ink.PLAIN);
            case JSON -> new CompareJson(out, origin);
            case CSV -> new CompareCsv(out, origin);
        };
    }
}
