package loopwright.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.measure.Replacement;
import loopwright.catalog.part.Part;
import loopwright.catalog.read.FileKind;
import loopwright.fit.FitCase;
import loopwright.fit.rules.Role;

/**
 * What readings and assumptions change for one brief in one chassis.
 *
 * @param fitCase with everything applied
 */
public record WhatIfAnswer(FitCase fitCase, WhatIf whatIf, Flips flips) {

    /** Applies and compares. */
    public static WhatIfAnswer of(WhatIf whatIf, String chassis, Brief brief, Halt halt) {
        FitCase before = new FitCase(whatIf.before(), whatIf.before().chassis(chassis), brief);
        FitCase after = new FitCase(whatIf.after(), whatIf.after().chassis(chassis), brief);
        Flips flips = whatIf.applied().isEmpty() ? Flips.NONE : FlipSearch.flips(before, after, halt);
        return new WhatIfAnswer(after, whatIf, flips);
    }

    /** What was applied to things that this brief and chassis have to do with. */
    public List<Replacement> appliedHere() {
        Set<String> here =
                new TreeSet<>(Set.of(fitCase.chassis().id(), FileKind.PRACTICE.word(), FileKind.STANDARDS.word()));
        List<Part> parts = new ArrayList<>(fitCase.drives());
        for (Role role : Role.values()) {
            parts.addAll(fitCase.candidates(role));
        }
        fitCase.shapes().radiators().values().forEach(parts::addAll);
        fitCase.shapes().fans().values().forEach(parts::addAll);
        parts.forEach(p -> here.add(p.id()));
        fitCase.chassis().mods().forEach(m -> m.effect().covers().forEach(c -> here.add(c.cover())));
        return whatIf.applied().stream().filter(r -> here.contains(r.id())).toList();
    }
}
