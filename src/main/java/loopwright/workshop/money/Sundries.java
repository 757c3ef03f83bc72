package loopwright.workshop.money;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import loopwright.workshop.fasten.Fasteners;
import loopwright.workshop.finish.Cans;
import loopwright.workshop.finish.Finish;
import loopwright.workshop.template.Nest;
import loopwright.workshop.template.Templates;

/** What has to be at hand besides what is ordered part by part: screws, paint, sheet. No line has a price of its own. */
public final class Sundries {

    private static final double HMM_PER_MM = 100;

    private Sundries() {}

    /**
     * Something to have.
     *
     * @param paidBy where its price is
     */
    public record Line(String what, int count, String unit, String paidBy) {}

    /** What a build wants. */
    public static List<Line> of(Fasteners fasteners, Finish finish, Templates templates) {
        List<Line> out = new ArrayList<>();
        for (Map.Entry<String, Integer> screw : fasteners.bag().entrySet()) {
            out.add(new Line("screw " + screw.getKey(), screw.getValue(), "piece", "stock of the workshop"));
        }
        for (Cans can : finish.cans()) {
            out.add(new Line(
                    can.product().name().toLowerCase(Locale.ROOT).replace('_', ' ') + " in cans",
                    can.cans() + can.spare(),
                    "can",
                    "material of the mods"));
        }
        templates.nests().forEach((material, nest) -> out.add(sheet(material.name(), nest)));
        return List.copyOf(out);
    }

    private static Line sheet(String material, Nest nest) {
        return new Line(
                String.format(
                        Locale.ROOT,
                        "sheet of %s, %.0f x %.0f mm",
                        material.toLowerCase(Locale.ROOT),
                        nest.lengthHmm() / HMM_PER_MM,
                        nest.widthHmm() / HMM_PER_MM),
                nest.sheets(),
                "sheet",
                "material of the mods");
    }
}
