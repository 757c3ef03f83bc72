package loopwright.fit;

import java.util.List;
import loopwright.fit.rules.Chosen;
import loopwright.fit.rules.PartRule;

/** The rules on parts that a case makes. */
public final class PartRuleList {

    private PartRuleList() {}

    /** The rules, in the order in which they are posted. */
    public static List<PartRule> of(FitCase fitCase) {
        return PartModel.rules(fitCase);
    }

    /** Whether parts keep a rule; all its roles are filled. */
    public static boolean isKept(PartRule rule, Chosen chosen) {
        return PartFacts.isKept(rule, chosen);
    }
}
