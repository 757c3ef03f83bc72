package loopwright.workshop.fasten;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.Catalog;
import loopwright.catalog.part.ScrewThread;
import loopwright.catalog.read.ChoiceName;
import loopwright.catalog.standard.Fastening;
import loopwright.catalog.standard.Standards.ThreadRow;
import loopwright.quantity.Hundredths;

/** Chooses the screws of joints. */
final class ScrewSets {

    private final Catalog catalog;
    private final Stock stock;

    ScrewSets(Catalog catalog, Stock stock) {
        this.catalog = catalog;
        this.stock = stock;
    }

    private ThreadRow row(ScrewThread thread) {
        return catalog.standards().threads().stream()
                .filter(r -> r.thread() == thread)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no row for thread " + thread));
    }

    /** The screws of a joint. */
    ScrewSet of(Joint joint, List<String> known) {
        ThreadSeat seat = joint.seat();
        ThreadRow row = row(seat.thread());
        Fastening practice = catalog.practice().fastening();
        LengthWindow window = LengthWindow.of(joint.layers(), seat, row, practice);
        List<String> warnings = new ArrayList<>(known);
        if (seat.isDepthGuessed()) {
            warnings.add("depth to the " + seat.before() + " is "
                    + ChoiceName.of(seat.behind().known()) + ": probe it, hole by hole, before any screw goes in");
        }
        for (Clamped layer : joint.layers()) {
            if (layer.thickness().isUnknown()) {
                warnings.add(layer.name() + ": thickness not known, counted as 0");
            }
            int holeHmm = practice.fan().holeMm().valueHmm();
            if (layer.name().equals("fan") && !ThreadMix.passes(row, holeHmm)) {
                warnings.add("does not pass the fan's holes of " + Hundredths.text(holeHmm) + " mm");
            }
        }
        int hole = (int) Math.round(row.clearanceMediumMm() * Hundredths.PER_MM);
        return new ScrewSet(joint, hole, window, stock.choose(seat.thread(), window), warnings);
    }
}
