package loopwright.power.cable;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;
import loopwright.catalog.standard.Cabling.PlugSize;
import loopwright.geometry.SpaceBox;

/** Cross-sections of cables, the volume that they take, and the volume that is free for them. */
public final class CableVolume {

    private static final double MM3_PER_L = 1e6;
    private static final double HMM3_PER_L = 1e12;
    private static final double ROUND = Math.PI / 4;

    private CableVolume() {}

    /** Cross-section of a cable, mm². */
    public static double areaMm2(PlugSize plug) {
        return ROUND * plug.bundleMm() * plug.bundleMm();
    }

    /**
     * What a length of cable takes where it is put away, litres.
     *
     * @param packing volume that it takes over its own
     */
    public static double litres(PlugSize plug, double lengthMm, double packing) {
        return areaMm2(plug) * lengthMm * packing / MM3_PER_L;
    }

    /** What boxes leave free of a box, litres: exact, however they overlap. */
    public static double freeL(SpaceBox box, List<SpaceBox> filled) {
        List<Integer> xs = cuts(box, filled, SpaceBox::x);
        List<Integer> ys = cuts(box, filled, SpaceBox::y);
        List<Integer> zs = cuts(box, filled, SpaceBox::z);
        double free = 0;
        for (int i = 0; i + 1 < xs.size(); i++) {
            for (int j = 0; j + 1 < ys.size(); j++) {
                for (int k = 0; k + 1 < zs.size(); k++) {
                    int x = xs.get(i);
                    int y = ys.get(j);
                    int z = zs.get(k);
                    if (filled.stream().noneMatch(f -> holds(f.x(), x) && holds(f.y(), y) && holds(f.z(), z))) {
                        free += (double) (xs.get(i + 1) - x) * (ys.get(j + 1) - y) * (zs.get(k + 1) - z);
                    }
                }
            }
        }
        return free / HMM3_PER_L;
    }

    private static boolean holds(SpaceBox.Reach reach, int from) {
        return reach.from() <= from && from < reach.to();
    }

    private static List<Integer> cuts(SpaceBox box, List<SpaceBox> filled, Function<SpaceBox, SpaceBox.Reach> along) {
        SpaceBox.Reach whole = along.apply(box);
        TreeSet<Integer> out = new TreeSet<>(List.of(whole.from(), whole.to()));
        for (SpaceBox each : filled) {
            for (int cut : List.of(along.apply(each).from(), along.apply(each).to())) {
                if (cut > whole.from() && cut < whole.to()) {
                    out.add(cut);
                }
            }
        }
        return new ArrayList<>(out);
    }
}
