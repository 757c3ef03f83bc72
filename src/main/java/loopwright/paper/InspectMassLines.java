package loopwright.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loopwright.answer.Inspection;
import loopwright.answer.mass.BuildMass;
import loopwright.answer.mass.Mass;
import loopwright.answer.mass.Masses;
import loopwright.answer.mass.Stand;
import loopwright.catalog.chassis.Shell;

/** What a build weighs, how it stands and how it is lifted. */
final class InspectMassLines {

    /** Heaviest things shown. */
    private static final int SHOWN = 6;

    private static final double HMM_PER_MM = 100;

    private InspectMassLines() {}

    static Passages of(Inspection in) {
        BuildMass mass = BuildMass.of(in);
        String atLeast = mass.missing().isEmpty() ? "" : "at least ";
        Passages out = new Passages();
        mass.warnings().forEach(w -> out.say("WARN  ", w));
        out.say(
                "",
                "dry " + atLeast + kg(mass.dry().massKg()) + " kg, filled " + atLeast
                        + kg(mass.filled().massKg()) + " kg (coolant "
                        + kg(mass.filled().massKg() - mass.dry().massKg()) + " kg, tank full)");
        out.say(
                "centre, filled: ",
                spot(mass.filled().centre()) + " mm: " + words(mass.filled(), in) + "; dry "
                        + spot(mass.dry().centre()));
        if (!mass.missing().isEmpty()) {
            out.say("nobody has weighed: ", String.join(", ", mass.missing()));
        }
        out.say("heaviest: ", heaviest(mass));
        mass.stand().ifPresent(s -> stand(out, s));
        return out.say(
                "",
                "Left out: processor, screws, cables, strips that mods add. Chassis as a shell over its faces, parts at the"
                        + " middle of their boxes. Lift with straight back, drained or the cap tight; glass never carries."
                        + " Lifting points: makers' sheets and local rules for lifting come first.");
    }

    private static void stand(Passages out, Stand stand) {
        List<String> feet = new ArrayList<>();
        stand.feet().forEach(f -> feet.add(f.foot() + " " + kg(f.loadKg())));
        out.say("feet carry, kg: ", String.join(", ", feet));
        out.say("", "tips over " + stand.over() + " at " + Mm.rounded(stand.tipDeg(), 1) + " degrees");
        for (Stand.Hangs lift : stand.lifts()) {
            out.say(
                    "lift: ",
                    lift.title() + " carries " + kg(lift.loadKg()) + " kg, made for " + kg(lift.madeForKg())
                            + ", practice wants " + kg(lift.wantedKg()));
        }
    }

    private static String heaviest(BuildMass mass) {
        Map<String, Double> sums = new LinkedHashMap<>();
        mass.parts().forEach(m -> sums.merge(m.what(), m.massKg(), Double::sum));
        List<String> out = new ArrayList<>();
        sums.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .limit(SHOWN)
                .forEach(e -> out.add(e.getKey() + " " + kg(e.getValue())));
        return String.join(", ", out) + " kg";
    }

    /** Where the centre lies, against the middle of the inside. */
    static String words(Masses masses, Inspection in) {
        Shell.Interior interior = in.fitCase().chassis().shell().interior();
        double aside = masses.centre().xMm() - interior.widthMm().valueHmm() / HMM_PER_MM / 2;
        double along = masses.centre().yMm() - interior.depthMm().valueHmm() / HMM_PER_MM / 2;
        double up = masses.centre().zMm() / (interior.heightMm().valueHmm() / HMM_PER_MM);
        return side(aside, "left", "right") + ", " + side(along, "front", "rear") + ", at " + Mm.rounded(100 * up, 0)
                + " % of the inside height";
    }

    private static String side(double offMm, String low, String high) {
        String by = Mm.rounded(Math.abs(offMm), 0).toPlainString();
        return by.equals("0") ? "in the middle" : by + " mm to the " + (offMm < 0 ? low : high);
    }

    private static String spot(Mass.Spot spot) {
        return "x " + Mm.rounded(spot.xMm(), 0) + ", y " + Mm.rounded(spot.yMm(), 0) + ", z "
                + Mm.rounded(spot.zMm(), 0);
    }

    private static String kg(double kg) {
        return Mm.rounded(kg, 1).toPlainString();
    }

    static Map<String, Object> json(Inspection in) {
        BuildMass mass = BuildMass.of(in);
        Map<String, Object> out = Json.object();
        out.put("complete", mass.missing().isEmpty());
        out.put("not_weighed", mass.missing());
        out.put("dry", masses(mass.dry()));
        out.put("filled", masses(mass.filled()));
        out.put("parts", items(mass.parts()));
        out.put("coolant", items(mass.coolant()));
        mass.stand().ifPresent(s -> {
            List<Map<String, Object>> feet = new ArrayList<>();
            s.feet().forEach(f -> {
                Map<String, Object> one = Json.object();
                one.put("foot", f.foot());
                one.put("load_kg", Mm.rounded(f.loadKg(), 3));
                feet.add(one);
            });
            out.put("feet", feet);
            out.put("tips_at_deg", Mm.rounded(s.tipDeg(), 2));
            out.put("tips_over", s.over());
            List<Map<String, Object>> lifts = new ArrayList<>();
            s.lifts().forEach(l -> {
                Map<String, Object> one = Json.object();
                one.put("lift", l.lift());
                one.put("load_kg", Mm.rounded(l.loadKg(), 3));
                one.put("made_for_kg", Mm.rounded(l.madeForKg(), 3));
                one.put("wanted_kg", Mm.rounded(l.wantedKg(), 3));
                lifts.add(one);
            });
            out.put("lifts", lifts);
        });
        out.put("warnings", mass.warnings());
        return out;
    }

    private static List<Map<String, Object>> items(List<Mass> masses) {
        List<Map<String, Object>> out = new ArrayList<>();
        for (Mass mass : masses) {
            Map<String, Object> one = Json.object();
            one.put("of", mass.what());
            one.put("mass_kg", Mm.rounded(mass.massKg(), 3));
            one.put("at_mm", at(mass.at()));
            out.add(one);
        }
        return out;
    }

    private static Map<String, Object> masses(Masses masses) {
        Map<String, Object> out = Json.object();
        out.put("mass_kg", Mm.rounded(masses.massKg(), 3));
        out.put("centre_mm", at(masses.centre()));
        return out;
    }

    private static List<Object> at(Mass.Spot spot) {
        return List.of(Mm.rounded(spot.xMm(), 1), Mm.rounded(spot.yMm(), 1), Mm.rounded(spot.zMm(), 1));
    }

    /** Rows of a spreadsheet: what, and what is said. */
    static List<List<String>> rows(Inspection in) {
        BuildMass mass = BuildMass.of(in);
        List<List<String>> out = new ArrayList<>();
        String atLeast = mass.missing().isEmpty() ? "" : "at least ";
        out.add(List.of("dry", atLeast + kg(mass.dry().massKg()) + " kg"));
        out.add(List.of("filled", atLeast + kg(mass.filled().massKg()) + " kg"));
        out.add(List.of("centre", spot(mass.filled().centre())));
        mass.stand().ifPresent(s -> {
            s.feet().forEach(f -> out.add(List.of("foot " + f.foot(), kg(f.loadKg()) + " kg")));
            out.add(List.of("tips", "over " + s.over() + " at " + Mm.rounded(s.tipDeg(), 1) + " degrees"));
        });
        mass.warnings().forEach(w -> out.add(List.of("warning", w)));
        return out;
    }
}
