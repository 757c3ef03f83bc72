package loopwright.workshop.fasten;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import loopwright.catalog.part.ScrewThread;
import loopwright.catalog.standard.Standards;
import loopwright.catalog.standard.Standards.ThreadRow;
import loopwright.workshop.fasten.Fasteners.MixUp;

/** Screws that lie on the bench of a build, or in the box beside it, and get into holes that are not theirs. */
final class MixUps {

    private MixUps() {}

    /** Treacherous pairs: holes of the build, with its own screws and with M3.5, which comes with other trades' boxes. */
    static List<MixUp> of(Standards standards, List<ScrewSet> sets, List<FixedSet> fixed) {
        Set<ScrewThread> used = EnumSet.noneOf(ScrewThread.class);
        sets.forEach(s -> used.add(s.joint().seat().thread()));
        fixed.forEach(f -> used.add(f.thread()));
        used.remove(ScrewThread.FAN);
        List<MixUp> out = new ArrayList<>();
        for (ThreadRow hole : standards.threads()) {
            for (ThreadRow screw : standards.threads()) {
                boolean onBench = used.contains(screw.thread()) || screw.thread() == ScrewThread.M3_5;
                ThreadMix mix = ThreadMix.of(screw, hole);
                if (used.contains(hole.thread()) && onBench && mix.isTreacherous()) {
                    out.add(new MixUp(screw, hole, mix));
                }
            }
        }
        return out;
    }
}
