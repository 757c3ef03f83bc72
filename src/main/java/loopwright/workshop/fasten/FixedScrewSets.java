package loopwright.workshop.fasten;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.answer.Inspection;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Drive.DriveForm;
import loopwright.catalog.standard.Fastening.FixedScrews;
import loopwright.catalog.standard.Fastening.Holds;
import loopwright.catalog.standard.Standards;
import loopwright.fit.FitCase;
import loopwright.fit.rules.Role;
import loopwright.quantity.Hundredths;

/** Board, supply, drives, card and feet: sizes of the trade, from memory; what comes with a part goes first. */
final class FixedScrewSets {

    /** Feet of a chassis that does not say; common practice. */
    private static final int USUAL_FEET = 4;

    private final FitCase fitCase;
    private final Stock stock;
    private final List<FixedSet> sets = new ArrayList<>();

    private FixedScrewSets(FitCase fitCase, Stock stock) {
        this.fitCase = fitCase;
        this.stock = stock;
    }

    static List<FixedSet> of(Inspection in, Stock stock) {
        FixedScrewSets made = new FixedScrewSets(in.fitCase(), stock);
        var chosen = in.build().chosen();
        chosen.find(Role.BOARD, Board.class).ifPresent(b -> made.add(Holds.BOARD, b.title(), made.holes(b), ""));
        Optional.ofNullable(chosen.parts().get(Role.SUPPLY)).ifPresent(p -> made.add(Holds.SUPPLY, p.title(), 1, ""));
        Optional.ofNullable(chosen.parts().get(Role.CARD)).ifPresent(p -> made.add(Holds.CARD, p.title(), 1, ""));
        made.fitCase.placedDrives().forEach(made::drive);
        made.feet(in.build().mods().mods(made.fitCase.chassis()));
        return List.copyOf(made.sets);
    }

    private int holes(Board board) {
        return fitCase.catalog().standards().boards().stream()
                .filter(o -> o.form() == board.form())
                .map(Standards.BoardOutline::holes)
                .mapToInt(List::size)
                .findFirst()
                .orElse(0);
    }

    private void drive(Drive drive) {
        Holds holds = drive.form() == DriveForm.D3_5 ? Holds.DRIVE_LARGE : Holds.DRIVE_SMALL;
        add(
                holds,
                drive.title(),
                1,
                drive.screws().map(s -> depthNote(holds, s)).orElse(""));
    }

    private String depthNote(Holds holds, Drive.Screwing screwing) {
        return row(holds)
                .map(row -> {
                    if (row.thread() != screwing.thread()) {
                        return "the drive has another thread: use its own screws";
                    }
                    int more = row.lengthMm().valueHmm() - screwing.depthMm().valueHmm();
                    return more > 0
                            ? "at least " + Hundredths.text(more) + " mm under the head, or it bottoms in the drive"
                            : "";
                })
                .orElse("");
    }

    private void feet(List<Mod> done) {
        if (done.stream().anyMatch(m -> m.kind() == Mod.Kind.LONGER_FEET)) {
            Chassis chassis = fitCase.chassis();
            int feet = chassis.standing()
                    .map(s -> s.feet().size())
                    .filter(n -> n > 0)
                    .orElse(USUAL_FEET);
            add(Holds.FOOT, "longer feet", feet, "longer where the foot itself is thick");
        }
    }

    private Optional<FixedScrews> row(Holds holds) {
        return fitCase.catalog().practice().fastening().fixed().stream()
                .filter(f -> f.holds() == holds)
                .findFirst();
    }

    /**
     * Adds a set.
     *
     * @param times how many things, or holes where the practice counts by holes
     */
    private void add(Holds holds, String what, int times, String note) {
        row(holds).ifPresent(row -> {
            int length = row.lengthMm().valueHmm();
            int count = row.count() == 0 ? times : times * row.count();
            sets.add(new FixedSet(what, row.thread(), length, count, stock.find(row.thread(), length), note));
        });
    }
}
