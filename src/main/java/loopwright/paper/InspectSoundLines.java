package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.answer.InspectAnswer;
import loopwright.answer.InspectAnswer.AtDuty;
import loopwright.answer.Inspection.Source;
import loopwright.loop.Machine;
import loopwright.loop.study.Quiet;
import loopwright.loop.study.SpeedPoint;

/** What sounds in a build, and how loud it is against its loudest part. */
final class InspectSoundLines {

    private InspectSoundLines() {}

    static List<String> of(InspectAnswer answer) {
        List<Source> sources = answer.inspection().sounds();
        Columns table = Columns.headed("source", "dB(A) at 1 m", "against the loudest");
        for (Source source : sources) {
            table.row(
                    source.name(),
                    Mm.rounded(source.levelDBA(), 1).toPlainString(),
                    RankWords.difference(source.levelDBA() - sources.get(0).levelDBA()));
        }
        List<String> out = new ArrayList<>(table.lines(""));
        out.add("");
        out.addAll(curve(answer));
        out.addAll(Lines.wrap("quietest within the limits: ", quietest(answer)));
        out.add("Levels by themselves are weak (sheets, rooms); differences are better.");
        return out;
    }

    /** Duties shown of the curve: every second of a fine grid. */
    private static final int STEPS_SHOWN = 10;

    private static List<String> curve(InspectAnswer answer) {
        List<AtDuty> points = answer.curve();
        int every = Math.max(1, (points.size() + STEPS_SHOWN - 1) / STEPS_SHOWN);
        double roomC = answer.inspection().state().roomC();
        double nowDBA = RankWords.levelDBA(answer.inspection().build());
        Columns table = Columns.headed("all fans %", "coolant C", "dB(A)", "against now");
        for (int i = 0; i < points.size(); i += every) {
            SpeedPoint point = points.get(i).point();
            double level = point.sound().levelDBA().orElse(0);
            table.row(
                    Integer.toString(point.dutyPercent()),
                    point.coolantOverRoomK().isPresent()
                            ? Mm.rounded(roomC + point.coolantOverRoomK().getAsDouble(), 1) + " +-"
                                    + Mm.rounded(points.get(i).coolantK().orElse(0), 1)
                            : "none",
                    Mm.rounded(level, 1).toPlainString(),
                    RankWords.difference(level - nowDBA));
        }
        return table.lines("");
    }

    private static String quietest(InspectAnswer answer) {
        Optional<Quiet> found = answer.quietest();
        if (found.isEmpty()) {
            return "not even full speed holds them";
        }
        Quiet quiet = found.get();
        StringBuilder duties = new StringBuilder();
        List<Machine.FanMount> mounts = answer.inspection().machine().mounts();
        for (int i = 0; i < mounts.size(); i++) {
            duties.append(mounts.get(i).mount())
                    .append(" ")
                    .append(quiet.duties().mountPercent(i))
                    .append(" %, ");
        }
        return duties + "pump " + quiet.duties().pumpPercent() + " %: "
                + Mm.rounded(quiet.sound().levelDBA().orElse(0), 1) + " dB(A), "
                + Mm.rounded(quiet.quieterDB(), 1) + " dB less than now, coolant "
                + Mm.rounded(quiet.state().water().meanC(), 1) + " C";
    }
}
