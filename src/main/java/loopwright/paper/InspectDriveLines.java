package loopwright.paper;

import java.util.Locale;
import java.util.Optional;
import loopwright.answer.InspectAnswer;
import loopwright.answer.cable.CablePlan;
import loopwright.answer.cable.DriveList;
import loopwright.catalog.part.Screw;

/** The drives of a build, for people: where they are, how they are screwed, whether they hum. */
final class InspectDriveLines {

    private InspectDriveLines() {}

    static Passages of(InspectAnswer answer) {
        DriveList list = answer.drives();
        Passages out = new Passages();
        for (DriveList.Line line : list.drives()) {
            out.say(
                    "drive " + line.number() + ": ",
                    line.drive().title() + ", in: " + line.place().title()
                            + line.madeBy().map(m -> " (made by: " + m + ")").orElse(""));
            out.say("         ", sentence(answer, line));
        }
        if (!list.onBoard().isEmpty()) {
            out.say("on the board: ", String.join(", ", list.onBoard()));
        }
        if (out.all().isEmpty()) {
            out.say("", "none");
        }
        return out.say("places: ", DriveWords.places(list.places()));
    }

    /** Screws, cable, heat and hum of one drive. */
    static String sentence(InspectAnswer answer, DriveList.Line line) {
        return screws(line) + "; " + cable(answer.cables(), line) + "; "
                + Mm.rounded(line.drive().heatW(), 1).stripTrailingZeros().toPlainString() + " W"
                + (line.heat() == DriveList.Heat.WANTS_MOVING_AIR ? ": wants moving air" : ": still air does") + "; "
                + hum(line);
    }

    private static String screws(DriveList.Line line) {
        if (line.screwing().isEmpty()) {
            return "screws not known";
        }
        DriveList.Screwing s = line.screwing().get();
        String from = line.place()
                .drive()
                .map(d -> d.from().name().toLowerCase(Locale.ROOT))
                .orElse("");
        return s.screws() + " screws " + thread(line) + " " + (from.equals("sides") ? "at both sides" : "from below")
                + ", at most " + Mm.rounded(s.longestMm(), 1) + " mm (" + Mm.rounded(s.depthMm(), 1)
                + " deep in the drive), "
                + s.screw().map(Screw::title).orElse("none so short in the catalogue");
    }

    private static String thread(DriveList.Line line) {
        return line.drive()
                .screws()
                .map(s -> switch (s.thread()) {
                    case M3 -> "M3";
                    case M4 -> "M4";
                    case UNC_6_32 -> "6-32";
                    case M3_5 -> "M3.5";
                    case FAN -> "fan";
                })
                .orElse("");
    }

    private static String cable(Optional<CablePlan> plan, DriveList.Line line) {
        String power = plan.stream()
                .flatMap(p -> p.feeds().stream())
                .filter(f -> f.to().equals("drive " + line.number()))
                .map(InspectCableLines::verdict)
                .findFirst()
                .orElse("not known");
        return "power cable " + power
                + line.dataMm().map(mm -> ", data lead at least " + mm + " mm").orElse("");
    }

    private static String hum(DriveList.Line line) {
        return switch (line.hum()) {
            case SILENT -> "no disk, no hum";
            case DAMPED -> "its disk hums, soft rings hold it";
            case NOT_DAMPED -> "its disk HUMS through the case: put soft rings under it";
            case UNKNOWN -> "hum not known";
        };
    }
}
