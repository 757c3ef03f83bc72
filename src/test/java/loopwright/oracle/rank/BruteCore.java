package loopwright.oracle.rank;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Tube;
import loopwright.loop.Machine;
import loopwright.loop.Sound;
import loopwright.loop.SoundPower;
import loopwright.oracle.OracleCase;

/** What everything but radiators, fans and mods comes to, for one choice of parts. */
record BruteCore(
        List<Part> parts, long cents, BruteLoop loop, long soundMillionths, int leadDays, Set<Radiator.Metal> metals) {

    static BruteCore of(OracleCase question, List<Part> parts, RankFault fault) {
        long cents = question.chassis().buy().priceCents();
        int lead = question.chassis().buy().leadDays();
        for (Part part : parts) {
            cents += part.buy().priceCents();
            lead = Math.max(lead, part.buy().leadDays());
        }
        for (String id : question.brief().parts().drives()) {
            Drive drive = question.catalog().part(Drive.class, id);
            cents += drive.buy().priceCents();
            lead = Math.max(lead, drive.buy().leadDays());
        }
        Tube tube = tube(question);
        Coolant coolant = cheapest(
                question.catalog().all(Coolant.class), question.brief().loop().coolant());
        cents += up(tube.buy().priceCents(), question.brief().loop().tubeM());
        cents += up(coolant.buy().priceCents(), question.brief().loop().coolantL());
        lead = Math.max(lead, Math.max(tube.buy().leadDays(), coolant.buy().leadDays()));
        BruteFittings fittings = BruteFittings.of(question, tube, fault);
        cents += fittings.fixedCents(parts);
        lead = Math.max(lead, fittings.leadDays());
        BruteLoop loop = BruteLoop.of(question, parts, tube, coolant, fault);
        Machine.PumpAt pump = loop.water().pump();
        long sound = SoundPower.ofDBA(Sound.levelDBA(pump.pump(), pump.duty())).millionths();
        sound += BruteSupplySound.millionths(question, parts, fault);
        return new BruteCore(parts, cents, loop, sound, lead, metals(parts, fault));
    }

    /** What the blocks are made of. */
    private static Set<Radiator.Metal> metals(List<Part> parts, RankFault fault) {
        Set<Radiator.Metal> out = EnumSet.of(only(Block.class, parts).flow().metal());
        GraphicsCard card = only(GraphicsCard.class, parts);
        if (card.cooling() == GraphicsCard.Cooling.BLOCK && fault != RankFault.CARD_BLOCK_OF_ANY_METAL) {
            out.add(card.power().block().orElseThrow().metal());
        }
        return out;
    }

    /** The tube that is taken. */
    static Tube tube(OracleCase question) {
        return cheapest(
                question.catalog().all(Tube.class), question.brief().loop().tube());
    }

    private static long up(long centsPerUnit, double units) {
        return BigDecimal.valueOf(centsPerUnit)
                .multiply(BigDecimal.valueOf(units))
                .setScale(0, RoundingMode.CEILING)
                .longValueExact();
    }

    private static <P extends Part> P cheapest(List<P> all, Choice allowed) {
        P best = null;
        for (P part : all) {
            boolean may = allowed.anyOf().isEmpty() || allowed.anyOf().contains(part.id());
            if (may && (best == null || part.buy().priceCents() < best.buy().priceCents())) {
                best = part;
            }
        }
        if (best == null) {
            throw new IllegalArgumentException("nothing is allowed by " + allowed);
        }
        return best;
    }

    /** The part of a kind. */
    static <P extends Part> P only(Class<P> kind, List<Part> parts) {
        return parts.stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .findFirst()
                .orElseThrow();
    }
}
