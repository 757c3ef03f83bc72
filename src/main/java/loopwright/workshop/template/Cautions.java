package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.chassis.Panel;
import loopwright.workshop.drawing.Row;

/** What stands on every sheet that leads to cutting. Usual cautions; local rules and makers' sheets come first. */
final class Cautions {

    private Cautions() {}

    /** Short lines for under a drawing. */
    static List<String> lines(String view, boolean refused) {
        List<String> out = new ArrayList<>();
        out.add((refused ? "DO NOT CUT: see REFUSED on its sheet of words. " : "") + view);
        out.add("Unplug; take out supply, board and all electronics first: swarf in them can kill. Glass is never cut"
                + " or drilled.");
        out.add("Eyes: goggles, a face shield for cut-off discs. Edges and swarf are sharp: gloves for sheet, none near"
                + " what turns.");
        out.add("Guard ears and lungs; no sparks near solvents. Local rules, makers' sheets and licensed practice come"
                + " first.");
        return out;
    }

    /** How to go about it. */
    static List<Row> order(Panel.Material material) {
        List<Row> out = new ArrayList<>();
        out.add(Row.heading("How"));
        for (String line : List.of(
                "1. Print at 100 % (no \"fit to page\"). Measure both bars: 100.0 \u00b10.3 or do not use. Join tiles"
                        + " at the marks R.",
                "2. Masking tape on the show face and on both sides of the cut; edges A and B of the paper on those of"
                        + " the sheet.",
                "3. Check against the case: measure two holes from A and B with a rule before you punch. Dimensions are"
                        + " nominal.",
                "4. Centre punch. Drill 2, then to size, on a backing board. Corners of windows first.",
                "5. Cut 0.5 to 1 inside the line, file to the line. " + tool(material),
                "6. Take the burr off both faces, round the edge 0.3 to 0.5, prime bare steel the same day.")) {
            out.addAll(Row.wrapped(line));
        }
        return out;
    }

    private static String tool(Panel.Material material) {
        return switch (material) {
            case STEEL -> "Steel: slow for large holes, oil.";
            case ALUMINIUM -> "Aluminium: a drop of light oil, chips clear.";
            case PLASTIC -> "Plastic: slow, it melts.";
            case ACRYLIC -> "Acrylic: film stays on, 60 to 90 degree point, slow; holes 0.5 to 1 over the screw.";
            case GLASS -> "Glass: never.";
        };
    }
}
