package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.standard.Cutting;
import loopwright.fit.MountFrame;
import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Layer;
import loopwright.workshop.drawing.Leaf;
import loopwright.workshop.drawing.TitleBlock;

/**
 * A sheet that the workshop makes: an insert panel that lies flush in an opening, or the pane of a window.
 *
 * @param outline its edge, in the view of the panel that it goes into
 * @param opening the opening, or for a pane the frame that it goes into
 * @param across joint at its left and right edges, each
 * @param up joint at its upper and lower edges, each
 */
public record InsertPanel(
        String id,
        Panel.Material material,
        Optional<Dimension> thickness,
        Area outline,
        Area opening,
        Joint across,
        Joint up,
        PanelTemplate template) {

    /** What the insert of a mod is called. */
    public static String idOf(String mod) {
        return "insert of " + mod;
    }

    /** Every insert and pane that the mods need, in the order of the mods. */
    static List<InsertPanel> allOf(Setting setting, List<PanelTemplate> panels) {
        List<InsertPanel> out = new ArrayList<>();
        for (Mod mod : setting.mods()) {
            for (Mod.Insert insert : mod.effect().inserts()) {
                flush(setting, panels, mod, insert).ifPresent(out::add);
            }
            if (mod.kind() == Mod.Kind.CUT_WINDOW) {
                panes(setting, panels, mod, out);
            }
        }
        return out;
    }

    private static Optional<InsertPanel> flush(
            Setting setting, List<PanelTemplate> panels, Mod mod, Mod.Insert insert) {
        Optional<MountFrame> frame = frame(setting.chassis(), insert.mount());
        Optional<PanelTemplate> panel = panels.stream()
                .filter(p -> p.id().equals(frame.map(f -> f.panel().id()).orElse("")))
                .findFirst();
        Optional<Hole> window = panel.stream()
                .flatMap(p -> p.holes().stream())
                .filter(h -> h.tag().purpose() == Hole.Purpose.WINDOW)
                .findFirst();
        return window.map(w -> {
            Made made =
                    new Made(setting, mod, panel.get().view(), insert.material(), Optional.of(insert.thicknessMm()));
            Holes holes = new Holes();
            new InsertHoles(setting, frame.get(), made.view(), holes).collect(w.reach());
            return made.in(w.reach(), holes, true);
        });
    }

    private static Optional<MountFrame> frame(Chassis chassis, String mount) {
        for (int i = 0; i < chassis.mounts().size(); i++) {
            if (chassis.mounts().get(i).id().equals(mount)) {
                return Optional.of(MountFrame.of(chassis, i));
            }
        }
        return Optional.empty();
    }

    private static void panes(Setting setting, List<PanelTemplate> panels, Mod mod, List<InsertPanel> out) {
        for (PanelTemplate panel : panels) {
            WindowHoles windows = new WindowHoles(setting, panel.view(), new Holes());
            mod.effect().adds().stream()
                    .flatMap(rim -> rim.boxes().stream())
                    .flatMap(box -> windows.pane(box).stream())
                    .forEach(pane ->
                            out.add(new Made(setting, mod, panel.view(), Panel.Material.ACRYLIC, Optional.empty())
                                    .in(pane, new Holes(), false)));
        }
    }

    /** How an insert is made. */
    private record Made(
            Setting setting, Mod mod, PanelView panelView, Panel.Material material, Optional<Dimension> thickness) {

        /** The insert as a sheet of its own: nothing of the panel's past is in it. */
        PanelView view() {
            Panel was = panelView.panel();
            Panel sheet = new Panel(
                    was.id(),
                    was.face(),
                    thickness.orElse(was.thicknessMm()),
                    material,
                    was.flat(),
                    new Panel.Features(List.of(), List.of(), List.of(), List.of()));
            return new PanelView(sheet, panelView.right(), panelView.up(), panelView.walls(), panelView.words());
        }

        InsertPanel in(Area opening, Holes holes, boolean flush) {
            Joint across = Joint.of(
                    setting, opening.widthHmm(), material, panelView.panel().material());
            Joint up = Joint.of(
                    setting, opening.heightHmm(), material, panelView.panel().material());
            Area outline = new Area(
                    opening.leftHmm() + across.bareHmm(),
                    opening.bottomHmm() + up.bareHmm(),
                    opening.rightHmm() - across.bareHmm(),
                    opening.topHmm() - up.bareHmm());
            List<Hole> numbered = holes.numbered();
            int corner = flush
                    ? Math.max(
                            0,
                            Cutting.hmm(setting.cutting().stay().cornerRadiusMm())
                                    - Math.max(across.bareHmm(), up.bareHmm()))
                    : 0;
            List<Finding> findings = new ArrayList<>(holes.findings());
            findings.addAll(new WebCheck(setting, edged(outline)).of(numbered, List.of()));
            Plan plan =
                    new Plan(new Plan.Edge(outline, corner, Layer.CUT, false, false), List.of(), numbered, List.of());
            List<String> head = head(opening, outline, across, up, flush);
            PanelTemplate template =
                    new PanelTemplate(id(), view(), numbered, List.of(), findings, leaf(plan, head, findings));
            return new InsertPanel(id(), material, thickness, outline, opening, across, up, template);
        }

        private String id() {
            return mod.kind() == Mod.Kind.CUT_WINDOW ? "pane of " + mod.id() : idOf(mod.id());
        }

        private PanelView edged(Area outline) {
            return InsertHoles.edged(view(), outline);
        }

        private Leaf leaf(Plan plan, List<String> head, List<Finding> findings) {
            boolean refused = findings.stream().anyMatch(f -> f.severity() == Finding.Severity.REFUSED);
            String sheet = id() + ", " + PanelTemplate.words(material)
                    + thickness.map(t -> " " + Hundredths.text(t.valueHmm())).orElse(", thickness not given");
            TitleBlock title = new TitleBlock(
                    sheet.substring(0, 1).toUpperCase(Locale.ROOT) + sheet.substring(1),
                    panelView.words(),
                    setting.identity().line(),
                    "Cut and drill template",
                    "1:1",
                    setting.identity().date());
            return new Leaf(
                    title,
                    PlanDrawing.of(plan),
                    TemplateWords.of(head, plan, h -> "on the insert", findings, material),
                    Cautions.lines(sheet + ", " + panelView.words() + ".", refused));
        }

        private List<String> head(Area opening, Area outline, Joint across, Joint up, boolean flush) {
            Cutting.Joint rule = setting.cutting().joint();
            String where = flush ? "the opening" : "the rim";
            List<String> out = new ArrayList<>();
            out.add(id() + " in panel " + panelView.panel().id() + ", " + PanelTemplate.words(material) + ": "
                    + size(outline) + " mm in " + where + " of " + size(opening) + " mm. A is its left edge, B its"
                    + " lower edge.");
            out.add("Joint at each side edge " + Hundredths.text(across.bareHmm()) + " mm bare, "
                    + Hundredths.text(across.paintedHmm()) + " with paint on both edges; above and below "
                    + Hundredths.text(up.bareHmm()) + " bare, " + Hundredths.text(up.paintedHmm())
                    + " painted. Even to \u00b1" + Hundredths.text(across.unevenHmm())
                    + " as cut (both edges), painted or not: file until it is even.");
            out.add("Of this, " + rule.fitMm() + " to get it in, half of what " + rule.swingK()
                    + " K do to it against the panel, and twice " + rule.filmMm() + " of film (practice).");
            return out;
        }

        private static String size(Area area) {
            return Hundredths.text(area.widthHmm()) + " x " + Hundredths.text(area.heightHmm());
        }
    }
}
