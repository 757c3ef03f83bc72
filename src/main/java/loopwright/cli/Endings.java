package loopwright.cli;

import java.io.PrintWriter;
import java.util.function.IntSupplier;
import loopwright.catalog.read.ProblemsException;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** How a command ends that cannot answer: one line a problem, never a stack trace unless it is asked for. */
final class Endings {

    private Endings() {}

    /** Sets the endings of every command. */
    static void addTo(CommandLine line) {
        line.setParameterExceptionHandler(Endings::wrongCommandLine);
        line.setExecutionExceptionHandler(Endings::failed);
        for (CommandLine each : line.getSubcommands().values()) {
            addTo(each);
        }
        line.getCommandSpec()
                .usageMessage()
                .exitCodeListHeading("%nExit codes:%n")
                .exitCodeList(ExitCode.inWords());
        line.getCommandSpec().usageMessage().width(100);
    }

    /** Runs a command; running out of memory or stack is told in words too. */
    static int ofErrors(App.Streams streams, IntSupplier command) {
        try {
            return command.getAsInt();
        } catch (OutOfMemoryError e) {
            streams.err().println("loopwright: out of memory; give Java more with -Xmx, or ask with --limit");
            return ExitCode.BUG;
        } catch (StackOverflowError e) {
            streams.err().println("loopwright: stack overflow; this is our own bug");
            return ExitCode.BUG;
        }
    }

    private static int wrongCommandLine(ParameterException e, String[] args) {
        CommandLine line = e.getCommandLine();
        PrintWriter err = line.getErr();
        err.println("loopwright: " + e.getMessage());
        UnmatchedArgumentException.printSuggestions(e, err);
        err.println("Try: " + line.getCommandSpec().qualifiedName() + " --help");
        return ExitCode.COMMAND_LINE;
    }

    private static int failed(Exception e, CommandLine line, ParseResult parsed) {
        PrintWriter err = line.getErr();
        if (e instanceof ProblemsException problems) {
            problems.lines().forEach(err::println);
            return ExitCode.INPUT;
        }
        line.getOut().flush();
        err.println("loopwright: this is our own bug: " + e);
        Object app = line.getCommandSpec().root().userObject();
        if (app instanceof App root && root.trace()) {
            e.printStackTrace(err);
        } else {
            err.println("Run it again with --trace and send us what it prints.");
        }
        return ExitCode.BUG;
    }
}
