package loopwright.fit.rules;

import java.util.List;
import loopwright.catalog.part.Part;

/** A constraint on the parts of a build. */
public sealed interface PartRule {

    /** Stable name, printed. */
    String id();

    /** The rule in a sentence, with its numbers. */
    String statement();

    /** A rule on two roles at most, by a predicate; posted as a table. */
    non-sealed interface TupleRule extends PartRule {
        /** The roles it is about: one or two. */
        List<Role> roles();

        /** Whether these parts go together; roles outside {@link #roles()} are absent. */
        boolean allows(Chosen parts);
    }

    /** A rule on a sum over parts: the sum of contributions must be ≥ 0. Posted as a linear constraint. */
    non-sealed interface SumRule extends PartRule {
        /** The roles it sums over. */
        List<Role> roles();

        /** What a part adds, in the rule's scaled unit. */
        int contribution(Role role, Part part);

        /** What is there whatever the parts. */
        int constant();
    }
}
