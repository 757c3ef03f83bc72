package loopwright.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import loopwright.answer.why.WhyAnswer;
import loopwright.answer.why.Wishes;
import loopwright.catalog.chassis.Chassis;
import loopwright.cli.BriefOptions.Asked;
import loopwright.fit.FitCase;
import loopwright.paper.Ink;
import loopwright.paper.Origin;
import loopwright.paper.WhyCsv;
import loopwright.paper.WhyJson;
import loopwright.paper.WhyPaper;
import loopwright.paper.WhyText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Why wishes cannot be had together, and what would change that. */
@Command(
        name = "why",
        description = "Tells why wishes cannot be had together, and everything that would change that.%n",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer =
                "%nExample:%n  loopwright why scenarios/demo.yaml --want front=2x140/45 --want without=drive-tower-out")
final class WhyCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private BriefOptions about = new BriefOptions();

    @Option(
            names = "--want",
            paramLabel = "WISH",
            description = "A wish; may be given again. MOUNT=2x140/45, MOUNT=2x140, MOUNT=RADIATOR-ID, MOUNT=radiator,"
                    + " MOUNT=nothing, card=PART-ID (or another role), with=MOD, without=MOD, coolant=40C, noise=30dBA,"
                    + " price=2900, labour=16h, days=14, ready=2027-03-01. Default: any radiator.")
    private List<String> wants = List.of();

    @Option(names = "--start", paramLabel = "DATE", description = "The day the work starts, for ready=DATE.")
    private Optional<String> start = Optional.empty();

    @Option(
            names = "--top",
            paramLabel = "N",
            defaultValue = "12",
            description = "Show the first N ways out. Default: ${DEFAULT-VALUE}.")
    private int top = 12;

    /** A chassis and the wishes in it. */
    private record InChassis(Chassis chassis, Wishes wishes) {}

    @Override
    public Integer call() {
        about.requirePositive("--top", top);
        Optional<LocalDate> day = start.map(this::day);
        Asked asked = about.read();
        List<InChassis> all = wishes(asked, day);
        Stopper stopper = about.stopper();
        WhyPaper paper = paper(about.origin(asked, stopper));
        Outcome outcome = new Outcome();
        paper.begin();
        for (InChassis each : all) {
            WhyAnswer answer =
                    new WhyAnswer(new FitCase(asked.catalog(), each.chassis(), asked.brief()), each.wishes(), stopper);
            boolean had = paper.add(answer);
            outcome.note(had, answer.isComplete());
        }
        paper.end();
        return outcome.code();
    }

    private List<InChassis> wishes(Asked asked, Optional<LocalDate> day) {
        List<InChassis> out = new ArrayList<>();
        Set<String> problems = new LinkedHashSet<>();
        for (Chassis chassis : asked.chassis()) {
            Wishes.Read read = Wishes.read(wants, asked.catalog(), chassis, day);
            problems.addAll(read.problems());
            out.add(new InChassis(chassis, read.wishes()));
        }
        if (!problems.isEmpty()) {
            throw new ParameterException(spec.commandLine(), String.join("\nloopwright: ", problems));
        }
        return out;
    }

    private LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new ParameterException(
                    spec.commandLine(), "--start must be a day like 2027-01-15 but was " + text, e);
        }
    }

    private WhyPaper paper(Origin origin) {
        PrintWriter out = spec.commandLine().getOut();
        return switch (about.format()) {
            case JSON -> new WhyJson(out, origin);
            case CSV -> new WhyCsv(out, origin);
            case TABLE -> new WhyText(out, origin, Ansi.AUTO.enabled() ? Ink.COLOURED : Ink.PLAIN, top);
        };
    }
}
