package loopwright.plumbing.rule;

import java.util.List;
import loopwright.catalog.standard.PlumbingPractice;
import loopwright.plumbing.LoopPlan;

/** A rule of the trade on a loop; common practice, no published source. */
interface LoopRule {

    /** Stable, printed. */
    String id();

    /** In general. */
    String statement();

    /** What it says of a plan. */
    List<Finding> of(LoopPlan plan, PlumbingPractice practice);
}
