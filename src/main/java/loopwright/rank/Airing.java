package loopwright.rank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import loopwright.fit.Layout;

/**
 * Real parts on the mounts, at work.
 *
 * @param blowings one a mount, in the order of the mounts
 * @param dutyPercent of every fan
 */
record Airing(List<Blowing> blowings, int dutyPercent) {

    static Airing of(List<Blowing> picked, int dutyPercent) {
        List<Blowing> out = new ArrayList<>(picked);
        out.sort(Comparator.comparingInt(b -> b.fitting().stack().frame().index()));
        return new Airing(List.copyOf(out), dutyPercent);
    }

    /** The fittings on the stacks of a layout that takes the same parts; bare rows stay. */
    List<Fitting> on(Layout layout) {
        List<Fitting> out = new ArrayList<>();
        for (Blowing blowing : blowings) {
            Fitting fitting = blowing.fitting();
            out.add(layout.stacks().stream()
                    .filter(s -> s.frame().index() == fitting.stack().frame().index())
                    .findFirst()
                    .map(fitting::on)
                    .orElse(fitting));
        }
        return List.copyOf(out);
    }
}
