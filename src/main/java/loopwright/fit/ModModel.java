package loopwright.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Place;
import loopwright.fit.rules.ModRule;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;

/** The Choco model of the mods: which sets are valid, and which places each leaves usable. */
final class ModModel {

    /**
     * A valid mod set.
     *
     * @param usable bit p: the chassis's p-th place can be used
     */
    record ModWorld(ModSet mods, long usable) {}

    private final Chassis chassis;
    private final Model model = new Model("mods");
    private final Map<String, BoolVar> vars = new LinkedHashMap<>();
    private final List<BoolVar> usable = new ArrayList<>();

    /**
     * Posts the rules.
     *
     * @param considered mods that may be in a set; the others are not done
     */
    ModModel(Chassis chassis, List<ModRule> rules, ModSet considered) {
        this.chassis = chassis;
        for (Mod mod : chassis.mods()) {
            vars.put(mod.id(), model.boolVar(mod.id()));
        }
        RulePoster poster = new RulePoster(model);
        for (ModRule rule : rules) {
            poster.post(rule, vars, this::cuts);
        }
        for (int i = 0; i < chassis.mods().size(); i++) {
            if (!considered.has(i)) {
                model.arithm(var(i), "=", 0).post();
            }
        }
        for (Place place : chassis.inside().places()) {
            usable.add(usable(place));
        }
    }

    private BoolVar var(int index) {
        return Objects.requireNonNull(vars.get(chassis.mods().get(index).id()));
    }

    private int cuts(String id, boolean visibleOnly) {
        Mod.Look look = chassis.mods().stream()
                .filter(m -> m.id().equals(id))
                .findFirst()
                .orElseThrow()
                .look();
        return look.visibleCuts() + (visibleOnly ? 0 : look.hiddenCuts());
    }

    /** A place is usable when nothing closes it, what it is in is still there, and what opens it (if needed) is done. */
    private BoolVar usable(Place place) {
        List<BoolVar> needed = new ArrayList<>();
        List<BoolVar> openers = new ArrayList<>();
        for (int i = 0; i < chassis.mods().size(); i++) {
            Mod.Effect effect = chassis.mods().get(i).effect();
            boolean closes = effect.closesPlaces().contains(place.id());
            boolean takesItsHome =
                    place.inside().filter(effect.removes()::contains).isPresent();
            if (closes || takesItsHome) {
                needed.add(var(i).not());
            }
            if (effect.opensPlaces().contains(place.id())) {
                openers.add(var(i));
            }
        }
        if (!openers.isEmpty()) {
            needed.add(model.or(openers.toArray(BoolVar[]::new)).reify());
        }
        return needed.isEmpty()
                ? model.boolVar("usable." + place.id(), true)
                : model.and(needed.toArray(BoolVar[]::new)).reify();
    }

    /**
     * Every valid set, smaller ones first.
     *
     * @param interrupted asked at each set: true stops, and the list is short
     */
    List<ModWorld> all(BooleanSupplier interrupted) {
        List<ModWorld> out = new ArrayList<>();
        BoolVar[] mods = vars.values().toArray(BoolVar[]::new);
        if (mods.length > 0) {
            model.getSolver().setSearch(Search.inputOrderLBSearch(mods));
        }
        while (!interrupted.getAsBoolean() && model.getSolver().solve()) {
            out.add(new ModWorld(new ModSet(bits(List.of(mods))), bits(usable)));
        }
        out.sort((a, b) -> a.mods().compareTo(b.mods()));
        return List.copyOf(out);
    }

    private static long bits(List<BoolVar> vars) {
        long bits = 0;
        for (int i = 0; i < vars.size(); i++) {
            bits |= (long) vars.get(i).getValue() << i;
        }
        return bits;
    }
}
