package loopwright.rank;

import java.util.ArrayList;
import java.util.List;
import loopwright.loop.air.AirDirection;

/** What can be fitted to a stack that blows one way at a duty, and the best of it, each figure by itself. */
final class Slot {

    private final MountFits fits;
    private final AirDirection direction;
    private final int dutyPercent;
    private final Floor floor;
    private final List<Blowing> all = new ArrayList<>();
    private final List<Blowing> probes = new ArrayList<>();

    Slot(MountFits fits, AirDirection direction, int dutyPercent) {
        this.fits = fits;
        this.direction = direction;
        this.dutyPercent = dutyPercent;
        Floor.Figures figures = fits.figures(0, dutyPercent);
        for (int i = 1; i < fits.count(); i++) {
            figures = figures.with(fits.figures(i, dutyPercent));
        }
        this.floor = Floor.of(this::draughts, figures);
    }

    private List<Draught> draughts() {
        List<Draught> out = new ArrayList<>();
        for (int i = 0; i < fits.count(); i++) {
            out.add(fits.draught(i, dutyPercent));
        }
        return out;
    }

    /** The best of all, each figure by itself. */
    Floor floor() {
        return floor;
    }

    /** Every fit. */
    List<Blowing> all() {
        if (all.isEmpty()) {
            for (int i = 0; i < fits.count(); i++) {
                all.add(fits.blowing(i, direction, dutyPercent));
            }
        }
        return all;
    }

    /** The cheapest and the one that conducts most: what a first look takes. */
    List<Blowing> probes() {
        if (probes.isEmpty()) {
            Blowing cheapest = all().get(0);
            Blowing most = all().get(0);
            for (Blowing one : all()) {
                cheapest = one.fitting().cents() < cheapest.fitting().cents() ? one : cheapest;
                most = conducts(one) > conducts(most) ? one : most;
            }
            probes.add(cheapest);
            if (cheapest != most) {
                probes.add(most);
            }
        }
        return probes;
    }

    private static double conducts(Blowing one) {
        return one.draught().conductanceWPerK(PressureSteps.middle());
    }
}
