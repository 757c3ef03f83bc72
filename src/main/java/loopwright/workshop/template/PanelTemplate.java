package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.Wiring;
import loopwright.fit.MountFrame;
import loopwright.quantity.Hundredths;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Layer;
import loopwright.workshop.drawing.Leaf;
import loopwright.workshop.drawing.TitleBlock;

/**
 * The template of one sheet: what is cut and drilled, what is to be known, and how it looks.
 *
 * @param id of the panel, or of the insert
 * @param view seen from outside; the coordinates of {@code holes} are its
 * @param holes what is cut and drilled, numbered
 * @param existing screws in holes that are there already
 * @param findings the gravest first
 * @param leaf the drawing with its words
 */
public record PanelTemplate(
        String id, PanelView view, List<Hole> holes, List<Hole> existing, List<Finding> findings, Leaf leaf) {

    /** How far past the flat its folds and what else is there are drawn. */
    private static final int NEAR_HMM = 800;

    /** Copies. */
    public PanelTemplate {
        holes = List.copyOf(holes);
        existing = List.copyOf(existing);
        findings = findings.stream().sorted().toList();
    }

    /** Whether something in it must not be cut. */
    public boolean isRefused() {
        return findings.stream().anyMatch(f -> f.severity() == Finding.Severity.REFUSED);
    }

    /** Whether it has a mod's hole for cables. */
    boolean has(Mod mod, Wiring.RoutingHole hole) {
        return holes.stream()
                .anyMatch(h -> h.tag().purpose() == Hole.Purpose.CABLE
                        && h.tag().what().equals(hole.title())
                        && h.tag().mod().equals(mod.id()));
    }

    /** Of a panel; empty where nothing is cut in it. */
    static Optional<PanelTemplate> of(Setting setting, Panel panel) {
        PanelView view = PanelView.outside(setting.chassis(), panel);
        Holes holes = new Holes();
        List<Mount> mounts = setting.chassis().mounts();
        for (int i = 0; i < mounts.size(); i++) {
            if (mounts.get(i).panel().equals(panel.id())) {
                new MountHoles(setting, MountFrame.of(setting.chassis(), i), view, holes).collect();
            }
        }
        new WindowHoles(setting, view, holes).collect();
        if (holes.holes().isEmpty()) {
            return Optional.empty();
        }
        List<Hole> numbered = holes.numbered();
        Sight sight = new Sight(setting, view, holes.lids());
        List<Finding> findings = new ArrayList<>(holes.findings());
        findings.addAll(new WebCheck(setting, view).of(numbered, holes.existing()));
        findings.addAll(sight.findings(numbered));
        if (panel.material() == Panel.Material.GLASS) {
            findings.add(Finding.refused("the panel is glass: it is never cut and never drilled"));
        }
        Plan plan = new Plan(edge(view, numbered), patches(view, holes.lids()), numbered, holes.existing());
        return Optional.of(new PanelTemplate(
                panel.id(),
                view,
                numbered,
                holes.existing(),
                findings,
                leaf(setting, view, plan, sight::word, findings)));
    }

    /** The drawing with its words. */
    static Leaf leaf(Setting setting, PanelView view, Plan plan, Function<Hole, String> sight, List<Finding> findings) {
        boolean refused = findings.stream().anyMatch(f -> f.severity() == Finding.Severity.REFUSED);
        String sheet = view.panel().id() + ", " + words(view.panel().material()) + " "
                + Hundredths.text(view.panel().thicknessMm().valueHmm());
        TitleBlock title = new TitleBlock(
                "Panel " + sheet,
                view.words(),
                setting.identity().line(),
                "Cut and drill template",
                "1:1",
                setting.identity().date());
        return new Leaf(
                title,
                PlanDrawing.of(plan),
                TemplateWords.of(
                        head(setting, view, plan.holes()),
                        plan,
                        sight,
                        findings,
                        view.panel().material()),
                Cautions.lines(sheet + ", " + view.words() + ".", refused));
    }

    private static List<String> head(Setting setting, PanelView view, List<Hole> holes) {
        Area flat = view.flat();
        Plan.Edge edge = edge(view, holes);
        List<String> out = new ArrayList<>();
        out.add(setting.chassis().title() + " (" + setting.chassis().id() + "), panel "
                + view.panel().id() + ", "
                + words(view.panel().material()) + " "
                + Hundredths.text(view.panel().thicknessMm().valueHmm()) + " mm, " + view.words() + ".");
        out.add("A is the " + view.edgeWords(view.right(), edge.fromRight()) + " edge of its flat, "
                + Hundredths.text(
                        edge.fromRight()
                                ? view.walls().rightHmm() - flat.rightHmm()
                                : flat.leftHmm() - view.walls().leftHmm())
                + " from the inside of that wall; B the " + view.edgeWords(view.up(), edge.fromTop()) + " edge, "
                + Hundredths.text(
                        edge.fromTop()
                                ? view.walls().topHmm() - flat.topHmm()
                                : flat.bottomHmm() - view.walls().bottomHmm())
                + " from the inside of that wall. The flat is " + Hundredths.text(flat.widthHmm()) + " wide and "
                + Hundredths.text(flat.heightHmm()) + " high: if yours is not, stop.");
        out.add("For: "
                + String.join(
                        ", ", holes.stream().map(h -> h.tag().mod()).distinct().toList()) + ".");
        return out;
    }

    /** A material as it is written. */
    static String words(Panel.Material material) {
        return material.name().toLowerCase(Locale.ROOT);
    }

    /** Measured from the sides that have a fold; where both or none has, from those that are nearer to the holes. */
    static Plan.Edge edge(PanelView view, List<Hole> holes) {
        Area flat = view.flat();
        List<Area> folds = view.panel().features().folds().stream()
                .flatMap(f -> view.area(f.at()).stream())
                .toList();
        boolean left = folds.stream().anyMatch(f -> f.rightHmm() <= flat.leftHmm());
        boolean right = folds.stream().anyMatch(f -> f.leftHmm() >= flat.rightHmm());
        boolean bottom = folds.stream().anyMatch(f -> f.topHmm() <= flat.bottomHmm());
        boolean top = folds.stream().anyMatch(f -> f.bottomHmm() >= flat.topHmm());
        Area cut = holes.stream().map(Hole::reach).reduce(Area::with).orElse(flat);
        boolean nearRight = flat.rightHmm() - cut.rightHmm() < cut.leftHmm() - flat.leftHmm();
        boolean nearTop = flat.topHmm() - cut.topHmm() < cut.bottomHmm() - flat.bottomHmm();
        return new Plan.Edge(flat, 0, Layer.PANEL, left == right ? nearRight : right, bottom == top ? nearTop : top);
    }

    private static List<Plan.Patch> patches(PanelView view, List<Lid> lids) {
        List<Plan.Patch> out = new ArrayList<>();
        Panel.Features features = view.panel().features();
        add(out, view, features.perforated(), Layer.EXISTING);
        add(out, view, features.slots(), Layer.EXISTING);
        add(out, view, features.folds(), Layer.KEEP_OUT);
        add(out, view, features.clips(), Layer.KEEP_OUT);
        lids.forEach(l -> out.add(
                new Plan.Patch(Layer.BESIDE, l.outline(), "edge of " + l.cover().id())));
        return out;
    }

    static void add(List<Plan.Patch> out, PanelView view, List<Panel.Feature> features, Layer layer) {
        Area near = view.flat().grown(NEAR_HMM);
        features.forEach(f -> view.area(f.at())
                .flatMap(near::common)
                .ifPresent(area -> out.add(new Plan.Patch(layer, area, f.id()))));
    }
}
