package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import loopwright.answer.InspectAnswer;
import loopwright.answer.Inspection.Source;

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
        out.add("Levels by themselves are weak (sheets, rooms); differences are better.");
        return out;
    }
}
