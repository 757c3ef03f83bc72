package loopwright.fit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Part;
import loopwright.catalog.standard.Practice;
import loopwright.catalog.standard.PracticeElectric;
import loopwright.fit.rules.Chosen;
import loopwright.fit.rules.PartRule;
import loopwright.fit.rules.PartRules;
import loopwright.fit.rules.PlugRules;
import loopwright.fit.rules.Role;
import loopwright.fit.rules.SupplyCarriesLoad;
import loopwright.fit.rules.SupplyCarriesTwelveVolt;
import loopwright.fit.rules.SupplyHasReserve;
import loopwright.fit.rules.SupplyStandsSurge;
import loopwright.power.Load;
import loopwright.power.LoadSum;
import loopwright.power.RailBudget;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;

/** The Choco model of the parts: which go together, and which supply carries and feeds them. */
final class PartModel {

    private final Map<Role, List<? extends Part>> parts = new EnumMap<>(Role.class);

    private final FitCase fitCase;

    PartModel(FitCase fitCase) {
        this.fitCase = fitCase;
        for (Role role : Role.values()) {
            parts.put(role, fitCase.candidates(role));
        }
    }

    /** The rules that are posted. */
    static List<PartRule> rules(FitCase fitCase) {
        List<Drive> drives = fitCase.drives();
        List<Load> always = new ArrayList<>();
        drives.forEach(d -> always.add(Load.of(d)));
        always.add(Load.ofSmallParts(fitCase.catalog().practice().heat()));
        int alwaysMilliW = Math.toIntExact(new LoadSum(always).milliwatts());
        Practice practice = fitCase.catalog().practice();
        PracticeElectric electric = practice.plannedElectric();
        int lowMilliW = Math.toIntExact(RailBudget.lowMilliW(drives, practice));
        return List.of(
                new PartRules.ProcessorFitsBoard(),
                new PartRules.BlockFitsProcessor(),
                new PartRules.MemoryFitsBoard(),
                new PartRules.BoardFitsBay(
                        EnumSet.copyOf(fitCase.chassis().inside().board().forms())),
                new PartRules.BoardTakesDrives(drives),
                new PartRules.SupplyFeedsProcessor(),
                new PartRules.SupplyFeedsCard(),
                new PartRules.SupplyFeedsDrives(fitCase.placedDrives().size()),
                new PartRules.ReservoirWithPump(),
                new SupplyCarriesLoad(fitCase.brief().terms().supplyHeadroomPercent(), alwaysMilliW),
                new SupplyCarriesTwelveVolt(alwaysMilliW - lowMilliW),
                new PlugRules.SupplyCarriesLow(lowMilliW),
                new SupplyStandsSurge(practice, alwaysMilliW),
                new SupplyHasReserve(milliW(electric.draw().oldSupplyReserveW()), alwaysMilliW),
                new PlugRules.BoardFeedsProcessor(),
                new PlugRules.SupplyCodesCard(),
                new PlugRules.CardCablesAreOwn(milliW(electric.plugs().cardOwnCableW())));
    }

    private static int milliW(double watts) {
        return Math.toIntExact(Load.milliwatts(watts));
    }

    private List<? extends Part> candidates(Role role) {
        return Objects.requireNonNull(parts.get(role));
    }

    /** Every choice of parts that goes together, in order of ids, role by role. */
    List<Chosen> all() {
        Model model = new Model("parts");
        Map<Role, IntVar> vars = new EnumMap<>(Role.class);
        for (Role role : Role.values()) {
            int size = candidates(role).size();
            if (size == 0 && role != Role.RESERVOIR) {
                return List.of();
            }
            int last = role == Role.RESERVOIR ? size : size - 1;
            vars.put(role, model.intVar(role.name(), 0, last));
        }
        RulePoster poster = new RulePoster(model);
        for (PartRule rule : rules(fitCase)) {
            poster.post(rule, vars, parts);
        }
        model.getSolver().setSearch(Search.inputOrderLBSearch(vars.values().toArray(IntVar[]::new)));
        List<Chosen> out = new ArrayList<>();
        while (model.getSolver().solve()) {
            Map<Role, Part> chosen = new EnumMap<>(Role.class);
            vars.forEach((role, var) -> {
                List<? extends Part> all = candidates(role);
                if (var.getValue() < all.size()) {
                    chosen.put(role, all.get(var.getValue()));
                }
            });
            out.add(new Chosen(chosen));
        }
        return List.copyOf(out);
    }
}
