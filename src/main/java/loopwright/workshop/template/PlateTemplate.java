package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Wiring;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Layer;

/** Templates of plates inside the case: holes for cables, with standoffs, folds and the holes that are there. */
final class PlateTemplate {

    private PlateTemplate() {}

    /** Templates of plates in which mods cut holes that no panel has. */
    static List<PanelTemplate> allOf(Setting setting, List<PanelTemplate> panels) {
        List<PanelTemplate> out = new ArrayList<>();
        for (Plate plate : Plate.all(setting)) {
            Holes holes = new Holes();
            PanelView view = plate.view();
            for (Mod mod : setting.mods()) {
                for (Wiring.RoutingHole hole : mod.effect().routingHoles()) {
                    boolean drawn = panels.stream().anyMatch(p -> p.has(mod, hole))
                            || out.stream().anyMatch(p -> p.has(mod, hole));
                    if (!drawn && plate.holds(hole)) {
                        holes.holes().add(hole(setting, view, mod, hole));
                    }
                }
            }
            if (!holes.holes().isEmpty()) {
                out.add(template(setting, plate, view, holes));
            }
        }
        return out;
    }

    /** The way round that leaves more metal to the plate's edge. */
    private static Hole hole(Setting setting, PanelView view, Mod mod, Wiring.RoutingHole hole) {
        WindowHoles windows = new WindowHoles(setting, view, new Holes());
        Hole across = windows.hole(mod.id(), hole, true);
        Hole upright = windows.hole(mod.id(), hole, false);
        Area flat = view.flat();
        return flat.insideHmm(upright.reach()) > flat.insideHmm(across.reach()) ? upright : across;
    }

    private static PanelTemplate template(Setting setting, Plate plate, PanelView view, Holes holes) {
        List<Hole> numbered = holes.numbered();
        int plane = plate.box().along(plate.through()).from().valueHmm();
        List<Plan.Patch> pads = new Standoffs(setting, view).pads(plane);
        List<Plan.Patch> patches = new ArrayList<>(pads);
        PanelTemplate.add(patches, view, view.panel().features().folds(), Layer.KEEP_OUT);
        FindingGroups groups = new FindingGroups();
        numbered.forEach(hole -> Standoffs.check(groups, hole, pads));
        List<Hole> existing = existing(setting, plate, view);
        List<Finding> findings = new ArrayList<>(groups.findings());
        findings.addAll(new WebCheck(setting, view).of(numbered, List.of()));
        existing.forEach(old -> patches.add(
                new Plan.Patch(Layer.EXISTING, old.reach(), old.tag().what())));
        findings.addAll(apart(numbered, existing, view.panel().thicknessMm().valueHmm()));
        findings.add(
                Finding.note("the catalogue has this plate as a box: its material, its bends and which way the long"
                        + " side of a hole lies are not in it; look at the plate before you mark it"));
        Plan plan = new Plan(PanelTemplate.edge(view, numbered), patches, numbered, List.of());
        return new PanelTemplate(
                plate.id(),
                view,
                numbered,
                List.of(),
                findings,
                PanelTemplate.leaf(setting, view, plan, h -> "inside the case", findings));
    }

    /** Holes for cables that it has as delivered. */
    private static List<Hole> existing(Setting setting, Plate plate, PanelView view) {
        return setting.chassis().wiring().stream()
                .flatMap(w -> w.holes().stream())
                .filter(plate::holds)
                .map(h -> new WindowHoles(setting, view, new Holes()).hole("", h, true))
                .toList();
    }

    private static List<Finding> apart(List<Hole> holes, List<Hole> existing, int sheetHmm) {
        FindingGroups groups = new FindingGroups();
        for (Hole hole : holes) {
            for (Hole old : existing) {
                double metal = Metal.between(hole, old);
                if (metal < 2 * sheetHmm) {
                    boolean refused = metal < sheetHmm;
                    FindingGroups.Kind kind = new FindingGroups.Kind(
                            refused ? Finding.Severity.REFUSED : Finding.Severity.WARNING,
                            "of metal to " + old.tag().what(),
                            "two sheet thicknesses are " + FindingGroups.mm(2 * sheetHmm));
                    groups.add(kind, hole.tag().id(), metal);
                }
            }
        }
        return groups.findings();
    }
}
