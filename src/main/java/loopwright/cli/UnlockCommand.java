package loopwright.cli;

import java.util.concurrent.Callable;
import loopwright.answer.UnlockAnswer;
import loopwright.catalog.chassis.Chassis;
import loopwright.cli.BriefOptions.Asked;
import loopwright.fit.FitCase;
import loopwright.paper.UnlockPaper;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Which mod buys a larger radiator in a brief's chassis, what it takes, and what it gains. */
@Command(
        name = "unlock",
        description = "Shows which mods unlock larger radiators, what they take, what they gain, and what stays"
                + " impossible by how many millimetres.%n",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {
            "%nExamples:%n  loopwright unlock scenarios/demo.yaml --mount floor",
            "  loopwright unlock scenarios/demo.yaml --cuts 3"
        })
final class UnlockCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private BriefOptions about = new BriefOptions();

    @Mixin
    private UnlockOptions narrowed = new UnlockOptions();

    @Override
    public Integer call() {
        Asked asked = about.read();
        narrowed.check(about, asked);
        Stopper stopper = about.stopper();
        UnlockPaper paper = narrowed.paper(about.format(), spec.commandLine().getOut(), about.origin(asked, stopper));
        Outcome outcome = new Outcome();
        paper.begin();
        for (Chassis chassis : asked.chassis()) {
            FitCase fitCase = new FitCase(asked.catalog(), chassis, asked.brief());
            Progress progress = Progress.on(spec.commandLine().getErr(), "layouts in " + chassis.id());
            UnlockAnswer answer =
                    new UnlockAnswer(fitCase, narrowed.wish(chassis), narrowed.mounts(), progress.around(stopper));
            progress.end();
            outcome.note(paper.add(answer), answer.incompleteBecause().isEmpty());
        }
        paper.end();
        return outcome.code();
    }
}
