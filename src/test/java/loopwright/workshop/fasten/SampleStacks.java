package loopwright.workshop.fasten;

import static loopwright.testing.Mm.hmm;
import static loopwright.testing.Mm.mm;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.part.Screw;
import loopwright.catalog.part.ScrewThread;
import loopwright.catalog.standard.Fastening;
import loopwright.catalog.standard.Fastening.SeatMaterial;
import loopwright.catalog.standard.Standards.ThreadRow;

/** Stacks of layers over a thread, and the demo workshop's stock of screws. */
final class SampleStacks {

    static final Catalog CATALOG = CatalogReader.read(Path.of("catalogs"));
    static final Fastening PRACTICE = CATALOG.practice().fastening();
    static final Stock STOCK = new Stock(CATALOG.all(Screw.class), PRACTICE);

    /** A flange of 1.2 with 4 to the first tube, which the trade's samples are for. */
    static final double FLANGE_MM = 1.2;

    static final double GAP_MM = 4;

    private SampleStacks() {}

    static ThreadRow row(ScrewThread thread) {
        return CATALOG.standards().threads().stream()
                .filter(r -> r.thread() == thread)
                .findFirst()
                .orElseThrow();
    }

    static ThreadSeat seat(ScrewThread thread, SeatMaterial material, double threadedMm, double behindMm) {
        return new ThreadSeat(thread, material, mm(threadedMm), mm(behindMm), "first tube");
    }

    static List<Clamped> layers(double... thicknessesMm) {
        List<Clamped> out = new ArrayList<>();
        for (double thicknessMm : thicknessesMm) {
            out.add(Clamped.exactly("layer", hmm(thicknessMm)));
        }
        return out;
    }

    /** The window over the samples' flange. */
    static LengthWindow window(ScrewThread thread, double... thicknessesMm) {
        return LengthWindow.of(
                layers(thicknessesMm), seat(thread, SeatMaterial.STEEL, FLANGE_MM, GAP_MM), row(thread), PRACTICE);
    }
}
