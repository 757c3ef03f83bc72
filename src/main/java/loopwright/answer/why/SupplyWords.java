package loopwright.answer.why;

import java.util.Locale;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.Practice;
import loopwright.fit.FitCase;
import loopwright.fit.rules.Chosen;
import loopwright.fit.rules.PlugRules;
import loopwright.fit.rules.Role;
import loopwright.power.LoadParts;
import loopwright.power.RailBudget;
import loopwright.power.Surge;
import loopwright.rank.CoreHeat;

/** What a supply's rails and plugs lack, with the parts' own numbers. */
final class SupplyWords {

    private final FitCase fitCase;

    SupplyWords(FitCase fitCase) {
        this.fitCase = fitCase;
    }

    /** The numbers of a rule on rails, bursts, codings or cables; empty where the supply does not say. */
    String figures(String rule, Chosen parts) {
        Supply supply = parts.the(Role.SUPPLY, Supply.class);
        LoadParts loads = CoreHeat.loadParts(fitCase, parts);
        Practice practice = fitCase.catalog().practice();
        RailBudget worst = loads.budget(LoadParts.State.WORST, practice);
        return supply.rails()
                .map(rails -> switch (rule) {
                    case "electric.twelve-volt" -> lack(worst.twelveMilliW(), RailBudget.twelveMilliW(rails), supply);
                    case "electric.low-rails" -> lack(worst.lowMilliW(), Math.round(rails.lowW() * 1000), supply);
                    case "electric.surge" ->
                        surge(
                                loads.surge(practice),
                                supply,
                                rails.surgePercent().orElse(0));
                    case "electric.surge-reserve" ->
                        lack(
                                worst.sumMilliW()
                                        + Math.round(practice.plannedElectric()
                                                        .draw()
                                                        .oldSupplyReserveW()
                                                * 1000),
                                Math.round(supply.output().ratedW() * 1000),
                                supply);
                    default -> plugs(rule, parts, supply);
                })
                .orElseGet(() -> plugs(rule, parts, supply));
    }

    private static String lack(long wantedMilliW, long thereMilliW, Supply supply) {
        return String.format(
                Locale.ROOT,
                "%.1f W wanted, %s has %.1f W, %.1f W short",
                LoadParts.watts(wantedMilliW),
                supply.id(),
                LoadParts.watts(thereMilliW),
                LoadParts.watts(wantedMilliW - thereMilliW));
    }

    private static String surge(Surge surge, Supply supply, int percent) {
        long stood = Surge.stoodScaled(supply.output(), percent);
        return String.format(
                Locale.ROOT,
                "card %.0f W, processor %.0f W, rest %.0f W come to %.1f W, %s stands %d %% of its rating, %.1f W, %.1f W"
                        + " short",
                Surge.watts(surge.cardScaled()),
                Surge.watts(surge.processorScaled()),
                Surge.watts(surge.restScaled()),
                Surge.watts(surge.scaled()),
                supply.id(),
                percent,
                Surge.watts(stood),
                Surge.watts(surge.scaled() - stood));
    }

    private static String plugs(String rule, Chosen parts, Supply supply) {
        GraphicsCard card = parts.the(Role.CARD, GraphicsCard.class);
        if (rule.equals("electric.card-coding")) {
            int wantedW =
                    card.electric().flatMap(GraphicsCard.Electric::sixteenPinW).orElse(0);
            int thereW = supply.rails().flatMap(Supply.Rails::sixteenPinW).orElse(0);
            return card.id() + " wants " + wantedW + " W, " + supply.id() + " is coded for " + thereW + " W";
        }
        return String.format(
                Locale.ROOT,
                "%s draws %.0f W through %d 8-pin plugs, %s has %d such cables",
                card.id(),
                card.power().worstW(),
                card.power().eightPinPlugs(),
                supply.id(),
                PlugRules.CardCablesAreOwn.cables(supply));
    }
}
