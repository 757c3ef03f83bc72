package loopwright.catalog.check;

import java.util.List;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Cover;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Screw;
import loopwright.catalog.read.ChoiceName;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Problems;
import loopwright.catalog.standard.Practice;
import loopwright.catalog.standard.Standards;

/** Every fan size, board form and thread that a part uses has its row among the standards. */
final class StandardsCoverParts implements Check {

    @Override
    public void run(Items items, Problems problems) {
        items.findOnly(Standards.class).ifPresent(standards -> {
            List<Integer> sizes =
                    standards.fans().stream().map(Standards.FanPattern::sizeMm).toList();
            List<Board.BoardForm> forms = standards.boards().stream()
                    .map(Standards.BoardOutline::form)
                    .toList();
            items.of(Fan.class)
                    .forEach(f -> row(
                            f.item(), "frame.size_mm", sizes, f.value().frame().sizeMm(), "a fan size", problems));
            items.of(Radiator.class)
                    .forEach(r ->
                            row(r.item(), "pattern", sizes, r.value().pattern().sizeMm(), "a fan size", problems));
            items.of(Board.class)
                    .forEach(b -> row(b.item(), "form", forms, b.value().form(), "a board form", problems));
            items.of(Chassis.class).forEach(c -> chassis(c, sizes, forms, problems));
            threads(items, standards, problems);
        });
    }

    private static void chassis(
            Items.Placed<Chassis> chassis, List<Integer> sizes, List<Board.BoardForm> forms, Problems problems) {
        for (Board.BoardForm form : chassis.value().inside().board().forms()) {
            row(chassis.item(), "inside.board.forms", forms, form, "a board form", problems);
        }
        for (PlacedSeat seat : PlacedSeat.allOf(chassis)) {
            row(
                    chassis.item(),
                    seat.path() + ".pattern",
                    sizes,
                    seat.seat().pattern().sizeMm(),
                    "a fan size",
                    problems);
        }
    }

    private static void threads(Items items, Standards standards, Problems problems) {
        var threads =
                standards.threads().stream().map(Standards.ThreadRow::thread).toList();
        items.of(Radiator.class)
                .forEach(r -> row(
                        r.item(),
                        "body.seat.thread",
                        threads,
                        r.value().body().seat().thread(),
                        "a thread",
                        problems));
        items.of(Cover.class)
                .forEach(c -> row(
                        c.item(), "fixing.thread", threads, c.value().fixing().thread(), "a thread", problems));
        items.of(Practice.class)
                .forEach(p -> row(
                        p.item(),
                        "fastening.fan.thread",
                        threads,
                        p.value().fastening().fan().thread(),
                        "a thread",
                        problems));
        items.of(Screw.class)
                .forEach(s -> row(s.item(), "thread", threads, s.value().thread(), "a thread", problems));
    }

    private static <T> void row(
            Item item, String path, List<? extends T> rows, T used, String what, Problems problems) {
        if (!rows.contains(used)) {
            String word = used instanceof Enum<?> value ? ChoiceName.of(value) : String.valueOf(used);
            problems.add(item.problem(path, word, what + " that shared/standards.yaml has a row for", ""));
        }
    }
}
