package loopwright.paper;

import java.util.List;

/** What the columns of a schedule mean, a sentence each. */
public final class ScheduleWords {

    /** Of the tasks. */
    public static final List<String> TASKS = List.of(
            "hands: minutes in which somebody is kept at it, the flashes between coats among them; the price counts the"
                    + " build's own minutes without those flashes.",
            "spare: working minutes by which a task may begin later, in this order of the work, while the handover stays; with"
                    + " 0 the end hangs on it. A night, a weekend or a wait behind a task can leave it some.");

    /** Of the parts. */
    public static final List<String> PARTS = List.of(
            "comes: the day it arrives if it is ordered on the first working day; parcels come during the day, so it is used"
                    + " from the next start of work.",
            "needed: when the first task that handles it begins in this schedule.",
            "latest order: the last working day to order it that leaves the handover where it is when the rest is planned anew,"
                    + " with nothing kept in hand; the days in this schedule may shift then.",
            "slack: the days it may come later than \"comes\" under the same condition, at most 60.",
            "if a week late: when all is done if it alone comes seven days after \"comes\" and the rest is planned anew.");

    private ScheduleWords() {}
}
