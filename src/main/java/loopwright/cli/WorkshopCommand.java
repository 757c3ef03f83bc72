package loopwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import loopwright.answer.BuildFinder;
import loopwright.answer.InspectAnswer;
import loopwright.answer.Inspection;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.read.ProblemsException;
import loopwright.cli.BriefOptions.Asked;
import loopwright.fit.FitCase;
import loopwright.paper.Manifest;
import loopwright.paper.Origin;
import loopwright.paper.Passages;
import loopwright.paper.WorkshopJson;
import loopwright.paper.book.Against;
import loopwright.paper.book.Papers;
import loopwright.paper.book.WorkPapers;
import loopwright.rank.Order;
import loopwright.rank.RankResult.Ranked;
import loopwright.workshop.schedule.DayTooShortException;
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
        footer = "%nExample:%n  loopwright workshop scenarios/demo.yaml --build KEY --out papers --start 2027-01-11,"
                + "%n  with a key that rank printed")
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

    @Mixin
    private WorkshopOptions wish = new WorkshopOptions();

    @Override
    public Integer call() {
        about.requireKey(build);
        if (about.format() == BriefOptions.Format.CSV) {
            throw new ParameterException(
                    spec.commandLine(),
                    "workshop answers as table or json; for spreadsheets, orders.csv is among the papers");
        }
        Asked asked = read();
        LocalDate day = wish.day(asked.brief());
        OutFolder folder = new OutFolder(wish.out());
        try {
            ready(folder);
            return written(asked, day, folder);
        } catch (IOException e) {
            problem(OutRefused.reason(e, wish.out()) + "; nothing was written");
            return ExitCode.OUTPUT;
        }
    }

    /** The files; what is wrong with the command line is told with what is wrong in them. */
    private Asked read() {
        List<String> wrong = wish.wrong();
        try {
            Asked asked = about.read();
            if (!wrong.isEmpty()) {
                throw new ParameterException(spec.commandLine(), String.join("\nloopwright: ", wrong));
            }
            return asked;
        } catch (ProblemsException e) {
            wrong.forEach(this::problem);
            throw e;
        }
    }

    /** Everything that can be known of the folder before the search. */
    private void ready(OutFolder folder) throws IOException {
        folder.requireUsable();
        if (folder.putBack()) {
            problem("a run into " + wish.out() + " was stopped half way: the papers before it are back in their place");
        }
        folder.requireFiles(Papers.ALWAYS);
        wish.requireFree(folder.taken(Papers.ALWAYS));
    }

    private int written(Asked asked, LocalDate day, OutFolder folder) throws IOException {
        Stopper stopper = about.stopper();
        for (Chassis chassis : asked.chassis()) {
            FitCase fitCase = new FitCase(asked.catalog(), chassis, asked.brief());
            Progress progress = Progress.on(spec.commandLine().getErr(), "builds in " + chassis.id());
            BuildFinder finder = new BuildFinder(fitCase, Order.COST, progress.around(stopper));
            Optional<Ranked> found = finder.find(build);
            progress.end();
            if (found.isPresent()) {
                Inspection inspection = new Inspection(fitCase, found.get());
                try {
                    WorkPapers all = WorkPapers.of(new InspectAnswer(inspection), finder.unbeaten(), day);
                    return write(all, about.origin(asked, stopper), folder);
                } catch (DayTooShortException e) {
                    return nothing(asked, stopper, e.getMessage() + "; nothing was written");
                }
            }
        }
        return nothing(
                asked,
                stopper,
                stopper.because().isPresent()
                        ? "stopped before the build was found; nothing was written"
                        : "no build has the key " + build + ": rank prints the keys of this brief and catalogue");
    }

    private int nothing(Asked asked, Stopper stopper, String why) {
        boolean stopped = stopper.because().isPresent();
        if (about.format() == BriefOptions.Format.TABLE) {
            problem(why);
        } else if (stopped) {
            new WorkshopJson(out(), about.origin(asked, stopper)).stopped(why);
        } else {
            new WorkshopJson(out(), about.origin(asked, stopper)).nothing(why);
        }
        return stopped ? ExitCode.INCOMPLETE : ExitCode.NO;
    }

    private int write(WorkPapers all, Origin origin, OutFolder folder) throws IOException {
        Papers papers = new Papers(all, wish.paper(), origin);
        SortedMap<String, byte[]> files = papers.all();
        folder.requireFiles(files.keySet());
        wish.requireFree(folder.taken(files.keySet()));
        List<String> kept = folder.write(files);
        kept.forEach(name -> problem(wish.out().resolve(name) + " is not of this set; it was kept, as it was changed or"
                + " made by something else. Do not work from it: move it away, or delete it"));
        if (about.format() == BriefOptions.Format.JSON) {
            WorkshopJson.Written written =
                    new WorkshopJson.Written(wish.out().toString(), rows(papers), kept, Against.of(all));
            new WorkshopJson(out(), origin)
                    .write(
                            all.inspection().fitCase().chassis().id(),
                            written,
                            all.quote(),
                            all.plan().schedule(),
                            all.templates());
        } else {
            table(files, wish.out());
            against(all);
        }
        return ExitCode.ANSWERED;
    }

    private static List<WorkshopJson.Paper> rows(Papers papers) {
        List<WorkshopJson.Paper> out = new ArrayList<>();
        papers.all()
                .forEach((name, bytes) -> out.add(new WorkshopJson.Paper(
                        name, bytes.length, Manifest.sum(bytes), papers.titles().getOrDefault(name, ""))));
        return out;
    }

    private void table(SortedMap<String, byte[]> files, Path folder) {
        out().println("WORKSHOP  build " + build + ": " + files.size() + " papers in " + folder);
        files.forEach((name, bytes) -> out().println("   " + name + "  " + (bytes.length + 1023) / 1024 + " kB"));
        out().println("Open index.html first.");
    }

    private void against(WorkPapers all) {
        List<String> against = Against.of(all);
        if (!against.isEmpty()) {
            out().println("What stands against this build:");
            Passages passages = new Passages();
            against.forEach(a -> passages.say("   ", a));
            passages.lines().forEach(out()::println);
        }
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private void problem(String text) {
        spec.commandLine().getErr().println("loopwright: " + text);
    }
}
