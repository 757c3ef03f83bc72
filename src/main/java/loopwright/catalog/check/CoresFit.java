package loopwright.catalog.check;

import java.util.Optional;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Problems;
import loopwright.catalog.standard.Practice;

/** Fins and tubes make a core: louvres are no longer than their fin is high, and tubes lie flat in the core's depth. */
final class CoresFit implements Check {

    @Override
    public void run(Items items, Problems problems) {
        Optional<Practice.Core> usual = items.findOnly(Practice.class).map(Practice::core);
        for (Items.Placed<Practice> practice : items.of(Practice.class)) {
            Practice.Core core = practice.value().core();
            fins(practice.item(), "core.fins", core.fins(), problems);
        }
        for (Items.Placed<Radiator> radiator : items.of(Radiator.class)) {
            Radiator.Core core = radiator.value().core();
            core.fins().ifPresent(fins -> fins(radiator.item(), "core.fins", fins, problems));
            core.tubes().or(() -> usual.map(Practice.Core::tubes)).ifPresent(tubes -> deep(radiator, tubes, problems));
        }
    }

    private static void fins(Item item, String path, Radiator.Fins fins, Problems problems) {
        if (fins.louvreLengthMm() > fins.heightMm()) {
            problems.add(item.problem(
                    path + ".louvre_length_mm",
                    Curve.plain(fins.louvreLengthMm()),
                    "at most the fin's height, " + Curve.plain(fins.heightMm()),
                    ""));
        }
    }

    /** A tube's long side lies along the air's way. */
    private static void deep(Items.Placed<Radiator> radiator, Radiator.Tubes tubes, Problems problems) {
        Radiator.Core core = radiator.value().core();
        if (core.depthMm() / core.tubeRows() < tubes.thicknessMm()) {
            problems.add(radiator.item()
                    .problem(
                            "core.tube_rows",
                            String.valueOf(core.tubeRows()),
                            "rows of tubes deeper than their thickness of " + Curve.plain(tubes.thicknessMm())
                                    + " mm in a core of " + Curve.plain(core.depthMm()) + " mm",
                            ""));
        }
    }
}
