package loopwright.cli;

import java.util.concurrent.Callable;
import loopwright.answer.FitAnswer;
import loopwright.catalog.chassis.Chassis;
import loopwright.cli.BriefOptions.Asked;
import loopwright.fit.FitCase;
import loopwright.paper.FitPaper;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Every radiator layout that fits a brief's chassis. */
@Command(
        name = "fit",
        description = "Lists every radiator layout that fits, what has to be done for it, and its tightest place.%n",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = "%nExample:%n  loopwright fit scenarios/demo.yaml --without roof-cover-140 --mount floor")
final class FitCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private BriefOptions about = new BriefOptions();

    @Mixin
    private FitOptions narrowed = new FitOptions();

    @Override
    public Integer call() {
        Asked asked = about.read();
        narrowed.check(about, asked);
        Stopper stopper = about.stopper();
        FitPaper paper = narrowed.paper(about.format(), spec.commandLine().getOut(), about.origin(asked, stopper));
        Outcome outcome = new Outcome();
        paper.begin();
        for (Chassis chassis : asked.chassis()) {
            FitCase fitCase = new FitCase(asked.catalog(), chassis, asked.brief());
            Progress progress = Progress.on(spec.commandLine().getErr(), "layouts in " + chassis.id());
            FitAnswer answer =
                    new FitAnswer(fitCase, narrowed.wish(chassis), narrowed.view(), progress.around(stopper));
            progress.end();
            outcome.note(paper.add(answer), answer.incompleteBecause().isEmpty());
        }
        paper.end();
        return outcome.code();
    }
}
