package loopwright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program and its commands. */
@Command(
        name = "loopwright",
        description =
                "Plans liquid-cooled computers in modified cases: which radiator layouts fit, what has to come out"
                        + " or be cut for them and what that gains, and which build is best for the budget.%n",
        subcommands = {
            FitCommand.class,
            UnlockCommand.class,
            RankCommand.class,
            InspectCommand.class,
            CompareCommand.class,
            WhyCommand.class,
            MeasureCommand.class,
            WorkshopCommand.class,
            CheckCommand.class,
            CompletionCommand.class
        },
        versionProvider = Version.class,
        mixinStandardHelpOptions = true,
        footerHeading = "%nExamples:%n",
        footer = {
            "  loopwright fit scenarios/demo.yaml",
            "  loopwright unlock scenarios/demo.yaml --mount floor",
            "  loopwright rank scenarios/demo.yaml --by noise",
            "  loopwright inspect scenarios/demo.yaml --layout KEY",
            "  loopwright compare scenarios/demo.yaml KEY KEY",
            "  loopwright why scenarios/demo.yaml --want front=2x140/45 --want without=drive-tower-out",
            "  loopwright measure scenarios/demo.yaml",
            "  loopwright check scenarios",
            "  loopwright completion > loopwright.bash"
        })
public final class App implements Runnable {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--trace",
            scope = ScopeType.INHERIT,
            description = "If the program itself fails, print where: for a report of the bug.")
    private boolean trace;

    /** Runs the program on the process's own streams, always in UTF-8. */
    static int run(String... args) {
        PrintWriter out = writer(FileDescriptor.out);
        PrintWriter err = writer(FileDescriptor.err);
        Stopper.catchInterrupts();
        return Stopper.done(run(new Streams(out, err), args));
    }

    /** Runs the program on other streams. */
    static int run(Streams streams, String... args) {
        CommandLine line = new CommandLine(new App());
        line.setOut(streams.out()).setErr(streams.err());
        Endings.addTo(line);
        int code = Endings.ofErrors(streams, () -> line.execute(args));
        streams.err().flush();
        if (streams.out().checkError()) {
            streams.err().println("loopwright: the output cannot be written");
            streams.err().flush();
            return ExitCode.OUTPUT;
        }
        return code;
    }

    private static PrintWriter writer(FileDescriptor descriptor) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(descriptor), StandardCharsets.UTF_8));
    }

    /** Where answers and problems go. */
    record Streams(PrintWriter out, PrintWriter err) {}

    boolean trace() {
        return trace;
    }

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(),
                "a command is missing: fit, unlock, rank, inspect, compare, why, measure, workshop, check or completion");
    }
}
