package loopwright.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import loopwright.answer.BuildFinder;
import loopwright.answer.Halt;
import loopwright.answer.InspectAnswer;
import loopwright.answer.Inspection;
import loopwright.catalog.chassis.Chassis;
import loopwright.cli.BriefOptions.Asked;
import loopwright.fit.FitCase;
import loopwright.paper.Ink;
import loopwright.paper.InspectCsv;
import loopwright.paper.InspectJson;
import loopwright.paper.InspectPaper;
import loopwright.paper.InspectText;
import loopwright.paper.Origin;
import loopwright.rank.Order;
import loopwright.rank.RankResult.Ranked;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** One build in full. */
@Command(
        name = "inspect",
        description = "Shows one build in full: the brief line by line, clearances, air, loop, temperatures, sound, and"
                + " what single changes would gain and cost.%n",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = "%nExample:%n  loopwright inspect scenarios/demo.yaml --layout qcnry-ehrwd")
final class InspectCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private BriefOptions about = new BriefOptions();

    /** Which build. */
    static final class Which {
        @Option(names = "--build", paramLabel = "KEY", description = "The build with this key, as rank prints it.")
        private Optional<String> build = Optional.empty();

        @Option(
                names = "--layout",
                paramLabel = "KEY",
                description = "The coolest build of this layout that keeps the brief's limits.")
        private Optional<String> layout = Optional.empty();
    }

    @ArgGroup(multiplicity = "1")
    private Which which = new Which();

    @Option(
            names = "--by",
            paramLabel = "ORDER",
            defaultValue = "cost",
            description = "The order of the list the key is from: cost, temperature, noise, labour or days."
                    + " Default: cost.")
    private RankCommand.By by = RankCommand.By.COST;

    @Override
    public Integer call() {
        if (which.build.isEmpty() && which.layout.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "say which build: --build KEY or --layout KEY");
        }
        which.build.ifPresent(about::requireKey);
        which.layout.ifPresent(about::requireKey);
        Asked asked = about.read();
        Stopper stopper = about.stopper();
        InspectPaper paper = paper(about.origin(asked, stopper));
        for (Chassis chassis : asked.chassis()) {
            FitCase fitCase = new FitCase(asked.catalog(), chassis, asked.brief());
            Progress progress = Progress.on(spec.commandLine().getErr(), "builds in " + chassis.id());
            Optional<Ranked> found = find(fitCase, progress.around(stopper));
            progress.end();
            boolean sure =
                    which.build.isPresent() || stopper.because().isEmpty(); // a stopped search may miss cooler ones
            if (found.isPresent() && sure) {
                paper.write(new InspectAnswer(new Inspection(fitCase, found.get())));
                return ExitCode.ANSWERED;
            }
        }
        if (stopper.because().isPresent()) {
            paper.stopped("Stopped before the build was found.");
            return ExitCode.INCOMPLETE;
        }
        paper.nothing(none());
        return ExitCode.NO;
    }

    private Optional<Ranked> find(FitCase fitCase, Halt halt) {
        BuildFinder finder = new BuildFinder(fitCase, Order.valueOf(by.name()), halt);
        return which.build.isPresent() ? finder.find(which.build.get()) : finder.ofLayout(which.layout.orElseThrow());
    }

    private String none() {
        return which.build
                .map(key ->
                        "No build has the key " + key + ": rank prints the keys of this brief and catalogue; for one"
                                + " from a list by another order, say --by.")
                .orElseGet(() -> "No build of the layout " + which.layout.orElseThrow()
                        + " keeps the brief's limits, or no such layout fits: fit lists the keys.");
    }

    private InspectPaper paper(Origin origin) {
        PrintWriter out = spec.commandLine().getOut();
        return switch (about.format()) {
            case TABLE -> new InspectText(out, origin, Ansi.AUTO.enabled() ? Ink.COLOURED : Ink.PLAIN);
            case JSON -> new InspectJson(out, origin);
            case CSV -> new InspectCsv(out, origin);
        };
    }
}
