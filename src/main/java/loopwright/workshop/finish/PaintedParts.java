package loopwright.workshop.finish;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import loopwright.catalog.brief.Look;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.part.Cover;
import loopwright.catalog.standard.Finishing.Surface;
import loopwright.fit.FitCase;
import loopwright.fit.ModSet;
import loopwright.workshop.finish.PaintedPart.Kind;
import loopwright.workshop.template.InsertPanel;
import loopwright.workshop.template.Templates;

/**
 * What a mod set leaves to paint: for a mod with minutes of paint its insert, else the panels it works on, else the bodies it
 * adds; and its raised covers, if it has such minutes or the brief asks for paint. Glass is never painted.
 *
 * @param all each part once
 * @param asBought covers that keep the finish they come with
 */
public record PaintedParts(List<PaintedPart> all, List<String> asBought, int faceFilmHmm) {

    /** Copies. */
    public PaintedParts {
        all = List.copyOf(all);
        asBought = List.copyOf(asBought);
    }

    /** Faces of a sheet. */
    private static final int FACES = 2;

    /** What an insert at a mount is called. */
    public static String insertId(Mount mount) {
        return "insert-" + mount.id();
    }

    /** What new paint adds to a part's thickness, both faces; empty where it gets none. */
    public OptionalInt filmHmm(String partId) {
        return all.stream().anyMatch(p -> p.id().equals(partId))
                ? OptionalInt.of(FACES * faceFilmHmm)
                : OptionalInt.empty();
    }

    /** The same with each insert as large as it is cut, where its template has an outline. */
    PaintedParts cutAs(Templates templates) {
        List<PaintedPart> sized = all.stream()
                .map(part -> templates.inserts().stream()
                        .filter(i -> part.kind() == Kind.INSERT && i.id().equals(InsertPanel.idOf(part.mod())))
                        .findFirst()
                        .map(i -> part.withArea((long) FACES
                                * i.outline().widthHmm()
                                * i.outline().heightHmm()))
                        .orElse(part))
                .toList();
        return new PaintedParts(sized, asBought, faceFilmHmm);
    }

    /** What a mod set leaves to paint; an insert counts as the flat of the panel that it goes into until it has an outline. */
    public static PaintedParts of(FitCase fitCase, ModSet mods) {
        Chassis chassis = fitCase.chassis();
        boolean asked = fitCase.brief()
                .look()
                .filter(l -> l.colours().stream().anyMatch(c -> c.on() == Look.On.PAINT))
                .isPresent();
        Map<String, PaintedPart> parts = new LinkedHashMap<>();
        List<String> asBought = new ArrayList<>();
        for (Mod mod : mods.mods(chassis)) {
            boolean hasMinutes = mod.work().paintMin() > 0;
            if (hasMinutes) {
                ofMod(chassis, mod).forEach(p -> parts.putIfAbsent(p.id(), p));
            }
            for (RaisedCover raised : mod.effect().covers()) {
                Cover cover = fitCase.catalog().part(Cover.class, raised.cover());
                if (hasMinutes || asked) {
                    parts.putIfAbsent(cover.id(), ofCover(cover, mod));
                } else {
                    asBought.add(cover.title());
                }
            }
        }
        return new PaintedParts(
                List.copyOf(parts.values()),
                asBought,
                fitCase.catalog().practice().finishing().film().faceMm().valueHmm());
    }

    private static List<PaintedPart> ofMod(Chassis chassis, Mod mod) {
        List<PaintedPart> out = new ArrayList<>();
        for (Mod.Insert insert : mod.effect().inserts()) {
            Mount mount = ModPanels.mount(chassis, insert.mount());
            Panel panel = ModPanels.panel(chassis, mount);
            out.add(new PaintedPart(
                    insertId(mount),
                    "insert panel at the " + mount.id(),
                    Kind.INSERT,
                    surface(insert.material()),
                    Areas.ofPanel(chassis, panel),
                    mod.id(),
                    true));
        }
        if (out.isEmpty()) {
            ModPanels.of(chassis, mod).stream()
                    .filter(p -> p.material() != Panel.Material.GLASS)
                    .forEach(p -> out.add(new PaintedPart(
                            p.id(), p.id(), Kind.PANEL, surface(p), Areas.ofPanel(chassis, p), mod.id(), true)));
        }
        if (out.isEmpty()) {
            for (Inside.Obstruction body : mod.effect().adds()) {
                out.add(new PaintedPart(
                        body.id(),
                        body.title(),
                        Kind.BODY,
                        Surface.METAL,
                        Areas.ofBoxes(body.boxes()),
                        mod.id(),
                        true));
            }
        }
        return out;
    }

    /** The catalogue does not say what covers are made of: taken to be metal. */
    private static PaintedPart ofCover(Cover cover, Mod mod) {
        return new PaintedPart(
                cover.id(),
                cover.title(),
                Kind.COVER,
                Surface.METAL,
                Areas.ofCover(cover),
                mod.id(),
                mod.work().paintMin() > 0);
    }

    private static Surface surface(Panel panel) {
        boolean soft = panel.coat().filter(c -> c == Panel.Coat.SOFT_TOUCH).isPresent();
        return soft ? Surface.SOFT_TOUCH : surface(panel.material());
    }

    private static Surface surface(Panel.Material material) {
        return switch (material) {
            case STEEL, ALUMINIUM -> Surface.METAL;
            case PLASTIC -> Surface.PLASTIC;
            case ACRYLIC -> Surface.ACRYLIC_BEHIND;
            case GLASS -> throw new IllegalArgumentException("glass is not painted");
        };
    }
}
