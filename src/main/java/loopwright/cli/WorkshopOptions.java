package loopwright.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.WorkCalendar;
import loopwright.workshop.drawing.Paper;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** Where the papers of a build go, and what they are printed on. */
final class WorkshopOptions {

    @Spec(Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            required = true,
            description = "The folder that the papers go into; it is made if it is not there.")
    private String out = "";

    @Option(
            names = "--sheet",
            paramLabel = "PAPER",
            defaultValue = "A4",
            converter = WorkshopSheet.Named.class,
            description = "What templates are printed on: A4, A3 or LETTER. Default: ${DEFAULT-VALUE}.")
    private WorkshopSheet sheet = WorkshopSheet.A4;

    @Option(
            names = "--start",
            paramLabel = "DATE",
            description =
                    "The day on which parts are ordered, like 2027-01-11. Default: what the brief's calendar says.")
    private Optional<String> start = Optional.empty();

    @Option(
            names = "--replace",
            description = "Papers of the same names that are there already give way, and those of the set before are"
                    + " taken away.")
    private boolean replace;

    /** What of the command line is wrong by itself, a sentence each. */
    List<String> wrong() {
        List<String> wrong = new ArrayList<>();
        if (out.isBlank()) {
            wrong.add("--out must name a folder but was \"" + out + "\"; a . is the folder you are in");
        }
        start.ifPresent(text -> {
            Optional<LocalDate> day = WorkCalendar.findDay(text);
            if (day.isEmpty()) {
                wrong.add("--start must be a day like 2027-01-11 but was \"" + text + "\"; nothing was written");
            } else if (!WorkCalendar.isPlanned(day.get())) {
                wrong.add("--start must be from " + WorkCalendar.FIRST_DAY + " to " + WorkCalendar.LAST_DAY
                        + " but was " + day.get() + "; nothing was written");
            }
        });
        return wrong;
    }

    Path out() {
        return Path.of(out);
    }

    Paper paper() {
        return sheet.paper();
    }

    /** The day to begin on. */
    LocalDate day(Brief brief) {
        return start.flatMap(WorkCalendar::findDay)
                .or(() -> brief.calendar().flatMap(WorkCalendar::startDay))
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(), "the brief says no day to begin on: say --start DATE, like 2027-01-11"));
    }

    /** Refuses papers that are there already, unless they are to give way. */
    void requireFree(List<String> taken) {
        if (!taken.isEmpty() && !replace) {
            throw new ParameterException(
                    spec.commandLine(),
                    out + " has " + taken.size() + " of these papers already, " + taken.get(0)
                            + " among them; nothing was written. Say --replace, or another folder");
        }
    }
}
