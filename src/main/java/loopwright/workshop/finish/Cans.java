package loopwright.workshop.finish;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import loopwright.catalog.standard.Finishing;
import loopwright.catalog.standard.Finishing.Product;
import loopwright.catalog.standard.Finishing.Step;

/**
 * Cans of one product: what all parts want in all planned coats, over what a can covers, begun ones counted whole.
 *
 * @param coatedHmm2 area times coats
 * @param spare bought besides, of the same batch
 */
public record Cans(Product product, long coatedHmm2, int cans, int spare) {

    /** The cans of parts, in the order of the work. */
    public static List<Cans> of(List<PaintedPart> parts, Finishing practice) {
        Map<Product, Long> coated = new EnumMap<>(Product.class);
        for (PaintedPart part : parts) {
            for (Step step : PaintPlan.system(practice, part.surface()).steps()) {
                step.product().ifPresent(product -> {
                    int coats = step.coats().orElseThrow().planned();
                    coated.merge(product, Math.multiplyExact(part.areaHmm2(), (long) coats), Math::addExact);
                });
            }
        }
        List<Cans> out = new ArrayList<>();
        coated.forEach((product, area) -> {
            int cans = Math.toIntExact(-Math.floorDiv(-area, practice.can().coversHmm2()));
            out.add(new Cans(
                    product,
                    area,
                    cans,
                    product == Product.COLOUR ? practice.can().spareColour() : 0));
        });
        return List.copyOf(out);
    }
}
