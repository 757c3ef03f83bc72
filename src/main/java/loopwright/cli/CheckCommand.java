package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import loopwright.catalog.FileCheck;
import loopwright.catalog.read.Folder;
import loopwright.catalog.read.Problem;
import loopwright.catalog.read.Problems;
import loopwright.catalog.read.ProblemsException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks files without answering anything from them. */
@Command(
        name = "check",
        description = "Checks briefs and catalogue files, and tells every problem with its line and column.%n",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = "%nExample:%n  loopwright check scenarios catalogs")
final class CheckCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE|DIR", arity = "1..*", description = "Files, or folders with YAML files.")
    private List<Path> paths = List.of();

    @Option(
            names = "--catalog",
            paramLabel = "DIR",
            description = "Folder of the catalogue. Default: the nearest catalogs folder, from the first path upwards.")
    private Optional<Path> catalog = Optional.empty();

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        List<Problem> problems = FileCheck.check(paths, catalog.orElseGet(() -> CatalogFolder.nearest(paths.get(0))));
        ProblemsException.linesOf(problems).forEach(out::println);
        out.println(counted(files(), "file") + ", "
                + (problems.isEmpty() ? "no problems" : counted(problems.size(), "problem")));
        return problems.isEmpty() ? ExitCode.ANSWERED : ExitCode.INPUT;
    }

    private int files() {
        return paths.stream()
                .mapToInt(p -> Files.isDirectory(p)
                        ? Folder.yamlFiles(p, new Problems()).size()
                        : 1)
                .sum();
    }

    private static String counted(int count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }
}
