package loopwright.oracle.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.ModSeat;
import loopwright.catalog.chassis.RaisedCover;

/** Mods of a case, drawn from what its chassis offers. */
final class CaseMods {
    private final Dice dice;
    private final List<Mod> offered = new ArrayList<>();

    CaseMods(Dice dice) {
        this.dice = dice;
    }

    /** An effect under construction. */
    static final class Draft {
        final List<String> removes = new ArrayList<>();
        final List<Inside.Obstruction> adds = new ArrayList<>();
        final List<String> opens = new ArrayList<>();
        final List<String> closes = new ArrayList<>();
        final List<ModSeat> seats = new ArrayList<>();
        final List<RaisedCover> covers = new ArrayList<>();
        final List<Airway> airways = new ArrayList<>();
        final List<String> requires = new ArrayList<>();
        final List<String> excludes = new ArrayList<>();
    }

    void offer(String id, Mod.Kind kind, Draft draft) {
        offered.add(new Mod(
                id,
                id,
                kind,
                new Mod.Rules(List.copyOf(draft.requires), List.copyOf(draft.excludes)),
                new Mod.Work(30, 0, 0, 100, 1),
                new Mod.Look(dice.between(0, 2), dice.between(0, 1), Mod.WayBack.NO, Dice.hmm(0)),
                new Mod.Effect(
                        List.copyOf(draft.removes),
                        List.copyOf(draft.adds),
                        List.copyOf(draft.opens),
                        List.copyOf(draft.closes),
                        List.copyOf(draft.seats),
                        List.copyOf(draft.covers),
                        List.copyOf(draft.airways),
                        List.of())));
    }

    /** Some of the offered mods, with a few more rules between them. */
    List<Mod> drawn(int most) {
        List<Mod> out = new ArrayList<>(offered);
        while (out.size() > most) {
            out.remove(dice.between(0, out.size() - 1));
        }
        List<Mod> ruled = new ArrayList<>();
        for (int i = 0; i < out.size(); i++) {
            Mod mod = out.get(i);
            List<String> requires = new ArrayList<>(mod.rules().requires());
            List<String> excludes = new ArrayList<>(mod.rules().excludes());
            requires.removeIf(id -> out.stream().noneMatch(m -> m.id().equals(id)));
            if (i > 0 && dice.chance(15)) {
                requires.add(out.get(dice.between(0, i - 1)).id());
            } else if (i > 0 && dice.chance(15)) {
                excludes.add(out.get(dice.between(0, i - 1)).id());
            }
            ruled.add(new Mod(
                    mod.id(),
                    mod.title(),
                    mod.kind(),
                    new Mod.Rules(List.copyOf(requires), List.copyOf(excludes)),
                    mod.work(),
                    mod.look(),
                    mod.effect()));
        }
        return ruled;
    }

    static Airway airway(String mount, Optional<Airway.Cut> cut, int cutHmm, Optional<Integer> addedHmm) {
        return new Airway(
                mount,
                cut,
                cut.isPresent() ? Optional.of(Dice.hmm(cutHmm)) : Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                addedHmm.map(Dice::hmm));
    }
}
