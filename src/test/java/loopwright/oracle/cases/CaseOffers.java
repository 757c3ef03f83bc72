package loopwright.oracle.cases;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.ModSeat;
import loopwright.catalog.chassis.RaisedCover;

/** The mods that a drawn chassis could have. */
final class CaseOffers {
    private final Dice dice;
    private final CaseParts parts;
    private final List<CaseMount> mounts;
    private final Pattern second;
    private final CaseMods mods;
    private final Map<String, List<String>> onPanel = new HashMap<>();

    CaseOffers(Dice dice, CaseParts parts, List<CaseMount> mounts, Pattern second) {
        this.dice = dice;
        this.parts = parts;
        this.mounts = mounts;
        this.second = second;
        this.mods = new CaseMods(dice);
    }

    List<Mod> mods(CaseInside inside, int fanHmm, int thickHmm, int lengthHmm) {
        for (Inside.Removable r : inside.removables) {
            CaseMods.Draft draft = new CaseMods.Draft();
            draft.removes.add(r.id());
            mods.offer("take-" + r.id(), Mod.Kind.TAKE_OUT, draft);
        }
        moveDrive(inside);
        for (int i = 0; i < mounts.size(); i++) {
            CaseMount mount = mounts.get(i);
            Inside.Obstruction bracket = inside.brackets.get(i);
            if (dice.chance(mount.airless ? 80 : 10)) {
                open(mount);
            }
            if (mount.outsideHmm < 1000) {
                feet(mount);
            }
            if (dice.chance(35)) {
                cover(mount, fanHmm, thickHmm, lengthHmm, RaisedCover.Over.RINGS, bracket);
            }
            if (dice.chance(45)) {
                cover(mount, fanHmm, thickHmm, lengthHmm, RaisedCover.Over.WINDOW, bracket);
            }
            if (dice.chance(45)) {
                drill(mount, bracket, inside);
            }
        }
        return mods.drawn(dice.between(2, 5));
    }

    private void moveDrive(CaseInside inside) {
        CaseMods.Draft draft = new CaseMods.Draft();
        draft.opens.add("drive-3");
        if (dice.chance(50)) {
            draft.closes.add("drive-1");
        }
        if (dice.chance(40)) {
            draft.adds.add(inside.brackets.get(inside.brackets.size() - 1));
        }
        mods.offer("move-drive", Mod.Kind.MOVE_DRIVE, draft);
        if (inside.driveCount() > 0 && dice.chance(50)) {
            CaseMods.Draft close = new CaseMods.Draft();
            close.closes.add("drive-2");
            close.adds.add(dice.oneOf(inside.brackets));
            mods.offer("bracket", Mod.Kind.CHANGE_BRACKET, close);
        }
    }

    private void open(CaseMount mount) {
        CaseMods.Draft draft = new CaseMods.Draft();
        Airway.Cut cut = dice.oneOf(List.of(Airway.Cut.values()));
        draft.airways.add(
                CaseMods.airway(mount.id, Optional.of(cut), dice.oneOf(List.of(7000, 4000, 7700)), Optional.empty()));
        panelMod("open-" + mount.id, mount, Mod.Kind.OPEN_PANEL, draft);
    }

    private void feet(CaseMount mount) {
        CaseMods.Draft draft = new CaseMods.Draft();
        draft.airways.add(
                CaseMods.airway(mount.id, Optional.empty(), 0, Optional.of(dice.oneOf(List.of(299, 300, 301, 600)))));
        mods.offer("feet", Mod.Kind.LONGER_FEET, draft);
    }

    private void cover(
            CaseMount mount,
            int fanHmm,
            int thickHmm,
            int lengthHmm,
            RaisedCover.Over over,
            Inside.Obstruction bracket) {
        String id = (over == RaisedCover.Over.RINGS ? "rings-" : "window-") + mount.id;
        boolean solid = dice.chance(30);
        int plenum = parts.plenumHmm + (solid ? 500 : 0);
        int inside = (dice.chance(60) ? fanHmm : thickHmm) + plenum + dice.small(-2, 6);
        int free = (dice.chance(50) ? 8000 : lengthHmm) + 2 * dice.small(-1, 5);
        parts.cover("cover-" + id, free + 400, 8000 + 2 * dice.small(-1, 6) + 400, inside, solid ? 0.2 : 0.6);
        CaseMods.Draft draft = new CaseMods.Draft();
        draft.covers.add(new RaisedCover(
                mount.id,
                "cover-" + id,
                over,
                Dice.hmm(mount.centreUHmm + dice.small(-2, 3)),
                Dice.hmm(mount.centreVHmm + dice.small(-1, 2))));
        if (over == RaisedCover.Over.WINDOW || dice.chance(30)) {
            Pattern pattern = dice.chance(75) ? new Pattern(1, 80) : second;
            draft.seats.add(new ModSeat(mount.id, mount.seat(dice, pattern, dice.small(-4, 4), "drill")));
        }
        if (dice.chance(30)) {
            draft.adds.add(bracket);
        }
        panelMod(id, mount, Mod.Kind.RAISE_COVER, draft);
    }

    private void drill(CaseMount mount, Inside.Obstruction bracket, CaseInside inside) {
        CaseMods.Draft draft = new CaseMods.Draft();
        Pattern pattern = dice.chance(60) ? second : new Pattern(1, 80);
        draft.seats.add(new ModSeat(mount.id, mount.seat(dice, pattern, dice.small(-5, 5), "drill")));
        if (dice.chance(30)) {
            draft.adds.add(bracket);
        }
        if (!inside.removables.isEmpty() && dice.chance(30)) {
            draft.requires.add("take-" + inside.removables.get(0).id());
        }
        mods.offer("drill-" + mount.id, Mod.Kind.DRILL_PATTERN, draft);
    }

    /** Only one of these can be done to a panel. */
    private void panelMod(String id, CaseMount mount, Mod.Kind kind, CaseMods.Draft draft) {
        List<String> others = onPanel.computeIfAbsent(mount.id, m -> new ArrayList<>());
        draft.excludes.addAll(others);
        others.add(id);
        mods.offer(id, kind, draft);
    }
}
