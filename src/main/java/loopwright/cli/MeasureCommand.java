package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import loopwright.answer.measure.MeasureAnswer;
import loopwright.answer.measure.MeasureView;
import loopwright.catalog.chassis.Chassis;
import loopwright.cli.BriefOptions.Asked;
import loopwright.fit.FitCase;
import loopwright.paper.Ink;
import loopwright.paper.MeasureCsv;
import loopwright.paper.MeasureJson;
import loopwright.paper.MeasurePaper;
import loopwright.paper.MeasureText;
import loopwright.paper.Origin;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Which dimension to measure first. */
@Command(
        name = "measure",
        description = "Tells which dimension to measure first, with what, where, and what it would change.%n",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = "%nExample:%n  loopwright measure scenarios/demo.yaml --record scenarios/readings/short-tower.yaml")
final class MeasureCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private BriefOptions about = new BriefOptions();

    @Option(names = "--layout", paramLabel = "KEY", description = "Only what this layout hangs on.")
    private Optional<String> layout = Optional.empty();

    @Option(
            names = "--top",
            paramLabel = "N",
            defaultValue = "10",
            description = "Show the first N dimensions. Default: ${DEFAULT-VALUE}.")
    private int top = 10;

    @Option(
            names = "--record",
            paramLabel = "FILE",
            description = "What was measured since: a file of readings; the answer first says what they change."
                    + " May be given again.")
    private List<Path> records = List.of();

    @Override
    public Integer call() {
        about.requirePositive("--top", top);
        layout.ifPresent(about::requireKey);
        Asked asked = about.read(records);
        Stopper stopper = about.stopper();
        MeasurePaper paper = paper(about.origin(asked, stopper));
        Outcome outcome = new Outcome();
        paper.begin();
        for (Chassis chassis : asked.chassis()) {
            Progress progress = Progress.on(spec.commandLine().getErr(), "what to measure in " + chassis.id());
            MeasureAnswer answer = new MeasureAnswer(
                    new FitCase(asked.catalog(), chassis, asked.brief()),
                    new MeasureView(layout, top),
                    more -> about.reread(asked, more),
                    progress.around(stopper));
            progress.end();
            outcome.note(paper.add(answer), answer.incompleteBecause().isEmpty());
        }
        paper.end();
        return outcome.code();
    }

    private MeasurePaper paper(Origin origin) {
        PrintWriter out = spec.commandLine().getOut();
        return switch (about.format()) {
            case JSON -> new MeasureJson(out, origin);
            case CSV -> new MeasureCsv(out, origin);
            case TABLE -> new MeasureText(out, origin, Ansi.AUTO.enabled() ? Ink.COLOURED : Ink.PLAIN);
        };
    }
}
