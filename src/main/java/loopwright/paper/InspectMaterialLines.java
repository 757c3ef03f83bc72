package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loopwright.answer.BuildMaterials;
import loopwright.answer.Inspection;
import loopwright.loop.material.Finding;
import loopwright.loop.material.MaterialRules;
import loopwright.loop.material.MaterialVerdict;

/** Whether the materials of a build's loop go together. */
final class InspectMaterialLines {

    private InspectMaterialLines() {}

    static List<String> of(Inspection in) {
        List<Finding> findings = BuildMaterials.of(in);
        List<String> out = new ArrayList<>();
        for (Finding finding : findings) {
            if (finding.verdict() != MaterialVerdict.OK) {
                out.addAll(Lines.wrap(word(finding.verdict()), finding.sentence() + " [" + shortId(finding) + "]"));
            }
        }
        for (Finding finding : findings) {
            if (finding.verdict() == MaterialVerdict.OK) {
                out.addAll(Lines.wrap(word(finding.verdict()), finding.sentence()));
            }
        }
        out.add("Coolant: gloves, a closed labelled bottle, nothing down the drain that local rules forbid. Makers'");
        out.add("sheets come first; most of this is common practice, materials.md says where each line comes from.");
        return out;
    }

    private static String shortId(Finding finding) {
        return finding.rule();
    }

    private static String word(MaterialVerdict verdict) {
        return switch (verdict) {
            case OK -> "ok       ";
            case WARN -> "WARN     ";
            case UNKNOWN -> "UNKNOWN  ";
            case BROKEN -> "BROKEN   ";
        };
    }

    static Map<String, Object> json(Inspection in) {
        List<Finding> findings = BuildMaterials.of(in);
        Map<String, Object> out = Json.object();
        out.put("verdict", JsonWords.of(MaterialRules.worst(findings)));
        List<Map<String, Object>> rules = new ArrayList<>();
        for (Finding finding : findings) {
            Map<String, Object> one = Json.object();
            one.put("rule", finding.rule());
            one.put("verdict", JsonWords.of(finding.verdict()));
            one.put("sentence", finding.sentence());
            one.put("source", finding.source());
            rules.add(one);
        }
        out.put("rules", rules);
        return out;
    }

    /** A row a rule: what it is and what it says. */
    static List<List<String>> rows(Inspection in) {
        return BuildMaterials.of(in).stream()
                .map(f -> List.of(f.rule(), JsonWords.of(f.verdict()) + ": " + f.sentence()))
                .toList();
    }
}
