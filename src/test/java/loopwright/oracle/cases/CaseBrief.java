package loopwright.oracle.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.BriefLimits;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.brief.LoopWish;
import loopwright.catalog.brief.Terms;
import loopwright.catalog.brief.Wanted;
import loopwright.catalog.chassis.Mod;

/** What the invented client of a case wants. */
final class CaseBrief {

    private static final Choice ANY = new Choice(List.of(), Optional.empty());

    private CaseBrief() {}

    static Brief draw(Dice dice, CaseParts parts, List<Mod> mods, boolean noTightPlaces) {
        List<String> drives = new ArrayList<>();
        for (int i = 0; i < parts.driveCount; i++) {
            drives.add("drive-a");
        }
        if (dice.chance(30)) {
            drives.add("drive-m");
        }
        Wanted wanted = new Wanted(
                ANY,
                new Choice(List.of(), Optional.of(50)),
                ANY,
                ANY,
                drives,
                ANY,
                dice.chance(50) ? Optional.empty() : Optional.of(ANY));
        LoopWish loop = new LoopWish(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                ANY,
                2,
                ANY,
                1,
                Optional.empty());
        BriefLimits.ModLimits limits = new BriefLimits.ModLimits(
                dice.chance(10) ? List.of(dice.oneOf(mods).id()) : List.of(),
                dice.chance(15) ? Optional.of(dice.between(0, 3)) : Optional.empty(),
                dice.chance(10) ? Optional.of(dice.between(1, 4)) : Optional.empty(),
                noTightPlaces);
        int headroom = dice.chance(3) ? 60 : 20;
        return new Brief(
                "brief-g",
                "brief-g",
                "nobody",
                List.of("chassis-g"),
                wanted,
                loop,
                new BriefLimits(
                        Optional.empty(),
                        22,
                        45,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        0.5,
                        limits,
                        Optional.empty()),
                new Terms("EUR", 6000, 5, 240, 8, 5, headroom));
    }
}
