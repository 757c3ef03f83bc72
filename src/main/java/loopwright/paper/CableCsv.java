package loopwright.paper;

import loopwright.answer.InspectAnswer;
import loopwright.answer.cable.CablePlan.Feed;
import loopwright.answer.cable.CablePlan.Verdict;
import loopwright.answer.cable.DriveList;

/** A cable or a drive of a build in one sentence. */
final class CableCsv {

    private CableCsv() {}

    static String sentence(InspectAnswer answer, Feed feed) {
        return JsonWords.of(feed.plug()) + " to " + feed.to() + ": wants " + feed.wantedMm() + " mm, has "
                + feed.hasMm() + " mm, " + InspectCableLines.verdict(feed) + ", " + InspectCableLines.goes(feed)
                + (feed.verdict() == Verdict.TOO_SHORT
                        ? "; "
                                + InspectCableLines.cure(
                                        feed.cure(),
                                        answer.inspection().fitCase().brief().terms())
                        : "");
    }

    static String sentence(InspectAnswer answer, DriveList.Line line) {
        return "drive " + line.number() + " " + line.drive().id() + " in "
                + line.place().id() + ": " + InspectDriveLines.sentence(answer, line);
    }
}
