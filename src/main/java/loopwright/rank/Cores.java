package loopwright.rank;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Tube;
import loopwright.fit.FitCase;
import loopwright.fit.PartSet;
import loopwright.fit.rules.Chosen;
import loopwright.fit.rules.Role;
import loopwright.loop.Duty;
import loopwright.loop.Sound;
import loopwright.loop.SoundPower;

/** Prices, heats and sounds of every choice of parts that goes together; those that another beats are left out. */
final class Cores {

    /** Duty a pump runs at: the trade keeps it fixed at 60 % or more; common practice, no source. */
    static final Duty PUMP_DUTY = new Duty(60);

    private Cores() {}

    static List<Core> of(FitCase fitCase, List<PartSet> sets) {
        Purchase whatever = always(fitCase);
        List<Core> all = new ArrayList<>();
        for (PartSet set : sets) {
            for (Chosen chosen : set.choices()) {
                all.add(core(chosen, set, whatever));
            }
        }
        List<Core> out = new ArrayList<>(
                all.stream().filter(c -> all.stream().noneMatch(c::isBeatenBy)).toList());
        out.sort(Comparator.comparingLong(Core::cents));
        return List.copyOf(out);
    }

    private static Core core(Chosen chosen, PartSet set, Purchase whatever) {
        long cents = whatever.priceCents();
        int lead = whatever.leadDays();
        for (Part part : chosen.parts().values()) {
            cents += part.buy().priceCents();
            lead = Math.max(lead, part.buy().leadDays());
        }
        Pump pump = chosen.the(Role.PUMP, Pump.class);
        SoundPower sound = SoundPower.ofDBA(Sound.levelDBA(pump, PUMP_DUTY));
        return new Core(chosen, set, cents, heatW(chosen), sound, lead);
    }

    /** Heat into the coolant at full load: all of the processor's, of a card with a block, and of the pump. */
    static double heatW(Chosen chosen) {
        GraphicsCard card = chosen.the(Role.CARD, GraphicsCard.class);
        double cardW =
                card.cooling() == GraphicsCard.Cooling.BLOCK ? card.power().worstW() : 0;
        return chosen.the(Role.PROCESSOR, Processor.class).heat().worstW()
                + cardW
                + chosen.the(Role.PUMP, Pump.class).electric().heatToCoolantW();
    }

    /** What is bought whatever the choice: chassis, drives, the cheapest tube and coolant allowed. */
    private static Purchase always(FitCase fitCase) {
        Brief brief = fitCase.brief();
        long cents = fitCase.chassis().buy().priceCents();
        int lead = fitCase.chassis().buy().leadDays();
        for (Drive drive : fitCase.drives()) {
            cents += drive.buy().priceCents();
            lead = Math.max(lead, drive.buy().leadDays());
        }
        Tube tube = cheapest(fitCase.catalog(), Tube.class, brief.loop().tube());
        Coolant coolant =
                cheapest(fitCase.catalog(), Coolant.class, brief.loop().coolant());
        cents += roundedUp(tube.buy().priceCents(), brief.loop().tubeM());
        cents += roundedUp(coolant.buy().priceCents(), brief.loop().coolantL());
        lead = Math.max(lead, Math.max(tube.buy().leadDays(), coolant.buy().leadDays()));
        return new Purchase(cents, lead);
    }

    /** In decimals as people write them: 1.1 m at 1.10 is 1.21, not a cent more. */
    private static long roundedUp(long centsPerUnit, double units) {
        return BigDecimal.valueOf(centsPerUnit)
                .multiply(BigDecimal.valueOf(units))
                .setScale(0, RoundingMode.CEILING)
                .longValueExact();
    }

    /** The cheapest part a wish allows. */
    static <P extends Part> P cheapest(Catalog catalog, Class<P> kind, Choice wish) {
        return catalog.all(kind).stream()
                .filter(p -> wish.anyOf().isEmpty() || wish.anyOf().contains(p.id()))
                .min(Comparator.comparingLong((P p) -> p.buy().priceCents()).thenComparing(Part::id))
                .orElseThrow(() -> new IllegalArgumentException("no " + kind.getSimpleName() + " is allowed"));
    }
}
