package loopwright.rank;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.brief.Terms;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Cover;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Tube;
import loopwright.catalog.part.TubeFitting;
import loopwright.fit.FitCase;
import loopwright.fit.rules.Role;

/**
 * What a build's price is made of, line by line: what is bought, material, labour, contingency.
 *
 * <p>The lines are worked out from the catalogue's items, not from the sums that the search uses; {@link #priceCents} has to
 * come to the same as the build's own price.
 *
 * @param bought pieces, tube and coolant
 * @param materials of the mods, without covers
 * @param labourCents hands-on minutes at the brief's rate
 * @param contingencyCents what the brief's contingency makes of all that
 */
public record Bill(List<Bought> bought, List<Material> materials, long labourCents, long contingencyCents) {

    /** Copies. */
    public Bill {
        bought = List.copyOf(bought);
        materials = List.copyOf(materials);
    }

    /**
     * Something that is bought.
     *
     * @param role what it is for: {@code board}, {@code radiator front}
     * @param quantity pieces, or metres and litres of what is sold so
     * @param unit {@code piece}, {@code m} or {@code L}
     * @param cents the quantity at the item's price, rounded up
     */
    public record Bought(String role, Part part, BigDecimal quantity, String unit, long cents) {

        /** So many pieces. */
        public static Bought pieces(String role, Part part, int count) {
            return new Bought(
                    role,
                    part,
                    BigDecimal.valueOf(count),
                    "piece",
                    count * part.buy().priceCents());
        }

        /** An amount of what is sold by the metre or litre; its price is rounded up. */
        public static Bought amount(String role, Part part, BigDecimal quantity, String unit) {
            long cents = quantity.multiply(BigDecimal.valueOf(part.buy().priceCents()))
                    .setScale(0, RoundingMode.CEILING)
                    .longValueExact();
            return new Bought(role, part, quantity.stripTrailingZeros(), unit, cents);
        }
    }

    /** Material of a mod. */
    public record Material(Mod mod, long cents) {}

    /** The bill of a build. */
    public static Bill of(FitCase fitCase, Build build) {
        List<Bought> bought = new ArrayList<>();
        bought.add(Bought.pieces("case", fitCase.chassis(), 1));
        fitCase.drives().forEach(d -> add(bought, Bought.pieces("drive", d, 1)));
        build.chosen().parts().forEach((role, part) -> bought.add(Bought.pieces(name(role), part, 1)));
        for (Fitting fitting : build.fittings()) {
            String mount = fitting.stack().frame().mount().id();
            fitting.radiator().ifPresent(r -> bought.add(Bought.pieces("radiator " + mount, r, 1)));
            bought.add(Bought.pieces("fans " + mount, fitting.fan(), fitting.fans()));
        }
        List<Mod> mods = build.mods().mods(fitCase.chassis());
        for (Mod mod : mods) {
            mod.effect()
                    .covers()
                    .forEach(c -> bought.add(Bought.pieces(
                            "cover " + c.mount(), fitCase.catalog().part(Cover.class, c.cover()), 1)));
        }
        loop(bought, fitCase, build);
        List<Material> materials = mods.stream()
                .filter(m -> m.work().materialCents() > 0)
                .map(m -> new Material(m, m.work().materialCents()))
                .toList();
        return priced(bought, materials, build, fitCase.brief().terms());
    }

    private static Bill priced(List<Bought> bought, List<Material> materials, Build build, Terms terms) {
        Costing costing = new Costing(terms);
        long labour = costing.workCents(build.bill()) - build.bill().materialCents();
        long sum = bought.stream().mapToLong(Bought::cents).sum()
                + materials.stream().mapToLong(Material::cents).sum()
                + labour;
        return new Bill(bought, materials, labour, costing.priceCents(sum) - sum);
    }

    private static void loop(List<Bought> bought, FitCase fitCase, Build build) {
        Brief brief = fitCase.brief();
        Choice tube = brief.loop().tube();
        Choice coolant = brief.loop().coolant();
        bought.add(Bought.amount(
                "tube",
                Cores.cheapest(fitCase.catalog(), Tube.class, tube),
                BigDecimal.valueOf(brief.loop().tubeM()),
                "m"));
        bought.add(Bought.amount(
                "coolant",
                Cores.cheapest(fitCase.catalog(), Coolant.class, coolant),
                BigDecimal.valueOf(brief.loop().coolantL()),
                "L"));
        boolean reservoir = build.chosen().find(Role.RESERVOIR, Part.class).isPresent();
        int ported = LoopFittings.portedParts(build);
        int elbows = fitCase.catalog().practice().loop().elbowsPerPart();
        for (Map.Entry<TubeFitting.Kind, Integer> kind : Map.of(
                        TubeFitting.Kind.STRAIGHT,
                        LoopFittings.ENDS * (ported + (reservoir ? 1 : 0)),
                        TubeFitting.Kind.ELBOW_90,
                        elbows * ported,
                        TubeFitting.Kind.DRAIN,
                        1)
                .entrySet()
                .stream()
                .sorted(Map.Entry.comparingByKey())
                .toList()) {
            Optional<TubeFitting> fitting = LoopFittings.cheapest(fitCase, kind.getKey());
            if (fitting.isPresent() && kind.getValue() > 0) {
                bought.add(Bought.pieces("fittings", fitting.get(), kind.getValue()));
            }
        }
    }

    private static void add(List<Bought> bought, Bought one) {
        for (int i = 0; i < bought.size(); i++) {
            Bought other = bought.get(i);
            if (other.role().equals(one.role())
                    && other.part().id().equals(one.part().id())) {
                bought.set(
                        i,
                        Bought.pieces(one.role(), one.part(), other.quantity().intValueExact() + 1));
                return;
            }
        }
        bought.add(one);
    }

    private static String name(Role role) {
        return role == Role.BLOCK ? "processor block" : role.name().toLowerCase(Locale.ROOT);
    }

    /** What is bought, cents. */
    public long boughtCents() {
        return bought.stream().mapToLong(Bought::cents).sum();
    }

    /** Material, cents. */
    public long materialCents() {
        return materials.stream().mapToLong(Material::cents).sum();
    }

    /** The price: all of it. */
    public long priceCents() {
        return boughtCents() + materialCents() + labourCents + contingencyCents;
    }
}
