package loopwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import loopwright.answer.BuildFinder;
import loopwright.answer.Halt;
import loopwright.answer.InspectAnswer;
import loopwright.answer.Inspection;
import loopwright.catalog.brief.WorkCalendar;
import loopwright.catalog.chassis.Chassis;
import loopwright.cli.BriefOptions.Asked;
import loopwright.fit.FitCase;
import loopwright.paper.book.Papers;
import loopwright.paper.book.WorkPapers;
import loopwright.rank.Order;
import loopwright.rank.RankResult.Ranked;
import loopwright.workshop.drawing.Paper;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The papers of a build. */
@Command(
        name = "workshop",
        description = "Writes what the bench needs and what the client signs, all from one build.%n",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = "%nExample:%n  loopwright workshop scenarios/demo.yaml --build 5wwdz-vpagt --out papers")
final class WorkshopCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private BriefOptions about = new BriefOptions();

    @Option(
            names = "--build",
            paramLabel = "KEY",
            required = true,
            description = "The build with this key, as rank prints it.")
    private String build = "";

    @Option(
            names = "--out",
            paramLabel = "DIR",
            required = true,
            description = "The folder that the papers go into; it is made if it is not there.")
    private Path out = Path.of("");

    /** Papers that templates are printed on. */
    enum Sheet {
        /** 210 x 297 mm. */
        A4(Paper.A4),
        /** 420 x 297 mm. */
        A3(Paper.A3),
        /** 215.9 x 279.4 mm. */
        LETTER(Paper.LETTER);

        private final Paper paper;

        Sheet(Paper paper) {
            this.paper = paper;
        }
    }

    @Option(
            names = "--sheet",
            paramLabel = "PAPER",
            defaultValue = "A4",
            description = "What templates are printed on: A4, A3 or LETTER. Default: ${DEFAULT-VALUE}.")
    private Sheet sheet = Sheet.A4;

    @Option(
            names = "--start",
            paramLabel = "DATE",
            description =
                    "The day on which parts are ordered, like 2027-01-11. Default: what the brief's calendar says.")
    private Optional<String> start = Optional.empty();

    @Option(names = "--replace", description = "Papers of the same names that are there already give way.")
    private boolean replace;

    @Override
    public Integer call() throws IOException {
        about.requireKey(build);
        if (about.format() != BriefOptions.Format.TABLE) {
            throw new ParameterException(
                    spec.commandLine(), "workshop writes papers into a folder; --format is for the other commands");
        }
        Asked asked = about.read();
        LocalDate day = day(asked);
        Stopper stopper = about.stopper();
        for (Chassis chassis : asked.chassis()) {
            FitCase fitCase = new FitCase(asked.catalog(), chassis, asked.brief());
            Progress progress = Progress.on(spec.commandLine().getErr(), "builds in " + chassis.id());
            Halt halt = progress.around(stopper);
            BuildFinder finder = new BuildFinder(fitCase, Order.COST, halt);
            Optional<Ranked> found = finder.find(build);
            progress.end();
            if (found.isPresent()) {
                Inspection inspection = new Inspection(fitCase, found.get());
                return write(new Papers(
                                WorkPapers.of(new InspectAnswer(inspection), finder.unbeaten(), day),
                                sheet.paper,
                                about.origin(asked, stopper))
                        .all());
            }
        }
        if (stopper.because().isPresent()) {
            spec.commandLine().getErr().println("loopwright: stopped before the build was found; nothing was written");
            return ExitCode.INCOMPLETE;
        }
        spec.commandLine()
                .getErr()
                .println("loopwright: no build has the key " + build
                        + ": rank prints the keys of this brief and catalogue");
        return ExitCode.NO;
    }

    private LocalDate day(Asked asked) {
        if (start.isEmpty()) {
            return asked.brief()
                    .calendar()
                    .flatMap(WorkCalendar::startDay)
                    .orElseThrow(() -> new ParameterException(
                            spec.commandLine(),
                            "the brief says no day to begin on: say --start DATE, like 2027-01-11"));
        }
        try {
            return LocalDate.parse(start.get());
        } catch (DateTimeParseException e) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--start must be a day like 2027-01-11 but was \"" + start.get() + "\"; nothing was written",
                    e);
        }
    }

    private int write(SortedMap<String, byte[]> papers) {
        OutFolder folder = new OutFolder(out);
        List<String> taken = folder.taken(papers.keySet());
        if (!taken.isEmpty() && !replace) {
            throw new ParameterException(
                    spec.commandLine(),
                    out + " has " + taken.size() + " of these papers already, " + taken.get(0)
                            + " among them; nothing was written. Say --replace, or another folder");
        }
        try {
            folder.write(papers);
        } catch (IOException e) {
            spec.commandLine()
                    .getErr()
                    .println("loopwright: the papers cannot be written to " + out + ": " + e.getMessage());
            return ExitCode.OUTPUT;
        }
        spec.commandLine().getOut().println("WORKSHOP  build " + build + ": " + papers.size() + " papers in " + out);
        papers.forEach((name, bytes) ->
                spec.commandLine().getOut().println("   " + name + "  " + (bytes.length + 1023) / 1024 + " kB"));
        spec.commandLine().getOut().println("Open index.html first.");
        return ExitCode.ANSWERED;
    }
}
