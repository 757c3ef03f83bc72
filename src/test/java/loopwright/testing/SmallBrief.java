package loopwright.testing;

import static loopwright.testing.Mm.mm;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.BriefLimits;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.brief.LoopWish;
import loopwright.catalog.brief.Terms;
import loopwright.catalog.brief.Wanted;
import loopwright.catalog.part.Board;
import loopwright.catalog.standard.Standards;

/** A brief that takes whatever the small catalogue has, and the few standards a small case needs. */
final class SmallBrief {

    private static final Choice ANY = new Choice(List.of(), Optional.empty());

    private SmallBrief() {}

    static Brief any(List<String> drives, int headroomPercent, boolean noTightPlaces) {
        return new Brief(
                "brief",
                "brief",
                "nobody",
                List.of("chassis"),
                new Wanted(ANY, ANY, ANY, ANY, drives, ANY, Optional.empty()),
                new LoopWish(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        ANY,
                        2,
                        ANY,
                        1,
                        Optional.empty()),
                new BriefLimits(
                        Optional.empty(),
                        28,
                        60,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        0.3,
                        new BriefLimits.ModLimits(List.of(), Optional.empty(), Optional.empty(), noTightPlaces),
                        Optional.empty()),
                new Terms("EUR", 4200, 10, 900, 6, 50, headroomPercent));
    }

    static Standards standards() {
        return new Standards(
                List.of(new Standards.BoardOutline(
                        Board.BoardForm.MINI_ITX, mm(170), mm(170), List.of(), "mini-ITX outline")),
                List.of(),
                List.of(),
                Pattern.SIZES_MM.stream()
                        .map(size -> new Standards.FanPattern(size, mm(size - 15), mm(size - 4), "invented"))
                        .toList(),
                List.of());
    }
}
