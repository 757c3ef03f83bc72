package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import loopwright.answer.Inspection;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.Wiring;
import loopwright.catalog.standard.Cutting;
import loopwright.quantity.Hundredths;
import loopwright.workshop.drawing.Leaf;

/**
 * Every cut and drill template of a build: one for each panel that a mod cuts, and one for each sheet that is made.
 *
 * @param panels in the chassis's order, then plates inside the case
 * @param inserts insert panels and panes, in the order of the mods
 * @param nests stock for them, one for each material
 * @param notes what belongs to no panel
 */
public record Templates(
        Setting.Identity identity,
        List<PanelTemplate> panels,
        List<InsertPanel> inserts,
        SortedMap<Panel.Material, Nest> nests,
        List<Finding> notes) {

    /** Copies. */
    public Templates {
        panels = List.copyOf(panels);
        inserts = List.copyOf(inserts);
        nests = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(nests));
        notes = List.copyOf(notes);
    }

    /** Of a build, where its witness has everything. */
    public static Templates of(Inspection inspection) {
        return of(Setting.of(inspection));
    }

    /** Of a setting. */
    public static Templates of(Setting setting) {
        List<PanelTemplate> panels = new ArrayList<>();
        for (Panel panel : setting.chassis().shell().panels()) {
            PanelTemplate.of(setting, panel).ifPresent(panels::add);
        }
        List<InsertPanel> inserts = InsertPanel.allOf(setting, panels);
        panels.addAll(PlateTemplate.allOf(setting, panels));
        return new Templates(setting.identity(), panels, inserts, nests(setting, inserts), notes(setting, panels));
    }

    private static SortedMap<Panel.Material, Nest> nests(Setting setting, List<InsertPanel> inserts) {
        SortedMap<Panel.Material, Nest> out = new TreeMap<>();
        for (Cutting.Stock stock : setting.cutting().stock()) {
            List<Nest.Piece> pieces = inserts.stream()
                    .filter(i -> i.material() == stock.material())
                    .map(i -> new Nest.Piece(
                            i.id(), i.outline().widthHmm(), i.outline().heightHmm()))
                    .toList();
            if (!pieces.isEmpty()) {
                int saw = Cutting.hmm(setting.cutting().joint().sawMm());
                out.put(
                        stock.material(),
                        Nest.of(Cutting.hmm(stock.lengthMm()), Cutting.hmm(stock.widthMm()), saw, pieces));
            }
        }
        return out;
    }

    /** Holes for cables that lie in no panel and in no plate that a drawing can be made of. */
    private static List<Finding> notes(Setting setting, List<PanelTemplate> panels) {
        List<Finding> out = new ArrayList<>();
        for (Mod mod : setting.mods()) {
            for (Wiring.RoutingHole hole : mod.effect().routingHoles()) {
                if (panels.stream().noneMatch(p -> p.has(mod, hole))) {
                    out.add(Finding.note(
                            "hole " + hole.id() + " (" + hole.title() + ") is in no panel and in no plate of"
                                    + " this build: mark "
                                    + Hundredths.text(hole.longMm().valueHmm()) + " x "
                                    + Hundredths.text(hole.shortMm().valueHmm()) + " mm on the part itself"));
                }
            }
        }
        return out;
    }

    /** All templates, panels before inserts. */
    public List<PanelTemplate> all() {
        List<PanelTemplate> out = new ArrayList<>(panels);
        inserts.forEach(i -> out.add(i.template()));
        return List.copyOf(out);
    }

    /** What goes on paper: a leaf for each template, then one for each material that inserts are cut from. */
    public List<Leaf> leaves() {
        List<Leaf> out = new ArrayList<>();
        panels.forEach(p -> out.add(p.leaf()));
        inserts.forEach(i -> out.add(i.template().leaf()));
        out.addAll(nestLeaves().values());
        return List.copyOf(out);
    }

    /** How the inserts of each material lie on its stock, and in which order they are cut: not at true scale. */
    public SortedMap<Panel.Material, Leaf> nestLeaves() {
        SortedMap<Panel.Material, Leaf> out = new TreeMap<>();
        nests.forEach(
                (material, nest) -> out.put(material, new NestDrawing(nest).leaf(material, identity, stock(material))));
        return out;
    }

    /** How the pieces of a material lie on its stock, in words. */
    public List<String> stock(Panel.Material material) {
        Nest nest = nests.get(material);
        if (nest == null) {
            return List.of("The practice names no stock of " + PanelTemplate.words(material) + ".");
        }
        List<String> out = new ArrayList<>();
        out.add("Stock: " + nest.sheets() + " of " + PanelTemplate.words(material) + " "
                + Hundredths.text(nest.lengthHmm()) + " x " + Hundredths.text(nest.widthHmm()) + " mm, waste "
                + String.format(Locale.ROOT, "%.0f %%, %.0f mm\u00b2", nest.wastePercent(), nest.wasteSquareMm())
                + ", saw cuts of " + Hundredths.text(nest.sawHmm()) + " counted in.");
        nest.laid()
                .forEach(l -> out.add("- " + l.piece().id() + ": "
                        + Hundredths.text(l.piece().lengthHmm()) + " x "
                        + Hundredths.text(l.piece().widthHmm()) + ", sheet " + l.sheet() + ", corner at "
                        + Hundredths.text(l.xHmm()) + ", " + Hundredths.text(l.yHmm())));
        List<NestCuts.Cut> cuts = NestCuts.of(nest);
        for (int i = 0; i < cuts.size(); i++) {
            out.add("- cut " + (i + 1) + ": " + cuts.get(i).words());
        }
        nest.tooLarge().forEach(p -> out.add("- " + p.id() + " is larger than the stock: buy a larger sheet"));
        return out;
    }
}
