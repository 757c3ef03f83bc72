package loopwright.cli;

import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints what a shell needs to complete our words. */
@Command(
        name = "completion",
        description = "Prints a completion script for bash and zsh.%n",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = "%nExample:%n  loopwright completion > loopwright.bash && source loopwright.bash")
final class CompletionCommand implements Runnable {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        spec.commandLine()
                .getOut()
                .println(AutoComplete.bash("loopwright", spec.root().commandLine()));
    }
}
