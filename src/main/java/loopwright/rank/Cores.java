package loopwright.rank;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Tube;
import loopwright.fit.FitCase;
import loopwright.fit.PartSet;
import loopwright.fit.rules.Chosen;
import loopwright.fit.rules.Role;
import loopwright.loop.MountSound;
import loopwright.loop.SoundPower;

/** Prices, heats and sounds of every choice of parts that goes together; those that another beats are left out. */
final class Cores {

    private Cores() {}

    /** Those that no other beats, cheapest first; none whose blocks mix metals that must not share a loop. */
    static List<Core> of(FitCase fitCase, List<PartSet> sets) {
        List<Core> all =
                all(fitCase, sets).stream().filter(c -> !c.metals().mixes()).toList();
        List<Core> out = new ArrayList<>(
                all.stream().filter(c -> all.stream().noneMatch(c::isBeatenBy)).toList());
        out.sort(Comparator.comparingLong(Core::cents));
        return List.copyOf(out);
    }

    /** Every choice of parts that goes together. */
    static List<Core> all(FitCase fitCase, List<PartSet> sets) {
        LoopFittings fittings = LoopFittings.of(fitCase);
        Purchase whatever = always(fitCase, fittings);
        List<Core> all = new ArrayList<>();
        CoreHeat heats = new CoreHeat(fitCase);
        Map<LoopHeat, LoopHeat> same = new HashMap<>(); // one object for equal heats: told apart by identity later
        for (PartSet set : sets) {
            for (Chosen chosen : set.choices()) {
                LoopHeat heat = heats.of(chosen);
                SoundPower sound = MountSound.of(heat.water().pump()).plus(heats.supplySound(chosen));
                all.add(core(chosen, fittings, set, whatever, same.computeIfAbsent(heat, h -> h), sound));
            }
        }
        return List.copyOf(all);
    }

    private static Core core(
            Chosen chosen, LoopFittings fittings, PartSet set, Purchase whatever, LoopHeat heat, SoundPower sound) {
        long cents = whatever.priceCents();
        int lead = whatever.leadDays();
        cents += fittings.partCents() * (1 + heat.water().blocks().size());
        cents += chosen.find(Role.RESERVOIR, Part.class).isPresent() ? fittings.reservoirCents() : 0;
        for (Part part : chosen.parts().values()) {
            cents += part.buy().priceCents();
            lead = Math.max(lead, part.buy().leadDays());
        }
        return new Core(chosen, set, cents, heat, sound, lead);
    }

    /** What is bought whatever the choice: chassis, drives, the cheapest tube, coolant and drain allowed. */
    private static Purchase always(FitCase fitCase, LoopFittings fittings) {
        Brief brief = fitCase.brief();
        long cents = fitCase.chassis().buy().priceCents() + fittings.drainCents();
        int lead = Math.max(fitCase.chassis().buy().leadDays(), fittings.leadDays());
        for (Drive drive : fitCase.drives()) {
            cents += drive.buy().priceCents();
            lead = Math.max(lead, drive.buy().leadDays());
        }
        Tube tube = cheapest(fitCase.catalog(), Tube.class, brief.loop().tube());
        Coolant coolant =
                cheapest(fitCase.catalog(), Coolant.class, brief.loop().coolant());
        cents += amountCents(tube.buy(), brief.loop().tubeM());
        cents += amountCents(coolant.buy(), brief.loop().coolantL());
        lead = Math.max(lead, Math.max(tube.buy().leadDays(), coolant.buy().leadDays()));
        return new Purchase(cents, lead);
    }

    /** Price of an amount, rounded up to whole cents; exact in the decimals of the file. */
    private static long amountCents(Purchase perUnit, double amount) {
        return BigDecimal.valueOf(amount)
                .multiply(BigDecimal.valueOf(perUnit.priceCents()))
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
