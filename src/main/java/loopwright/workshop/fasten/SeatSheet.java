package loopwright.workshop.fasten;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.part.Cover;
import loopwright.catalog.part.Grille;
import loopwright.fit.FitCase;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.workshop.finish.PaintedParts;

/**
 * The sheet that a stack hangs on, with what lies on it: the panel, an insert that takes its place, or the flange of a cover
 * over a window, which is taken to be as thick as the cover's skin.
 *
 * <p>A panel's thickness is over its own paint; what is painted here grows by two faces of film.
 *
 * @param grille what lies under the heads on the outside
 * @param layers the sheet and its new paint
 * @param gasket the strip between sheet and stack, squeezed
 */
record SeatSheet(Optional<Clamped> grille, List<Clamped> layers, Optional<Clamped> gasket, List<String> warnings) {

    SeatSheet {
        layers = List.copyOf(layers);
        warnings = List.copyOf(warnings);
    }

    static SeatSheet of(FitCase fitCase, Stack stack, ModSet mods, PaintedParts painted) {
        Mount mount = stack.frame().mount();
        List<Mod> done = mods.mods(fitCase.chassis());
        List<String> warnings = new ArrayList<>();
        Optional<RaisedCover> cover = fitCase.openings().cover(mount, mods);
        Optional<RaisedCover> window = cover.filter(c -> c.over() == RaisedCover.Over.WINDOW);
        Optional<Mod.Insert> insert = insert(done, mount);
        List<Clamped> layers = new ArrayList<>();
        String partId;
        Panel.Material material = stack.frame().panel().material();
        if (window.isPresent()) {
            Cover part = fitCase.catalog().part(Cover.class, window.get().cover());
            layers.add(new Clamped("cover flange", part.body().skinMm()));
            partId = part.id();
            warnings.add("flange of the cover taken to be as thick as its skin: measure it");
        } else if (insert.isPresent()) {
            layers.add(new Clamped("insert panel", insert.get().thicknessMm()));
            partId = PaintedParts.insertId(mount);
            material = insert.get().material();
        } else {
            layers.add(new Clamped("panel", stack.frame().panel().thicknessMm()));
            partId = stack.frame().panel().id();
            if (isCutAway(done, mount)) {
                warnings.add(
                        "the panel is cut away here and nothing says what the heads bear on: its thickness is taken");
            }
        }
        if (material == Panel.Material.ACRYLIC || material == Panel.Material.PLASTIC) {
            warnings.add("soft washers under the heads, and no thread-lock: the sheet cracks");
        }
        painted.filmHmm(partId).ifPresent(film -> layers.add(Clamped.exactly("paint, two faces", film)));
        Optional<Clamped> gasket = mount.gasket().map(g -> new Clamped("gasket, squeezed", g.squeezedMm()));
        return new SeatSheet(
                cover.isPresent() ? Optional.empty() : grille(fitCase, done, mount), layers, gasket, warnings);
    }

    private static Optional<Mod.Insert> insert(List<Mod> done, Mount mount) {
        return done.stream()
                .flatMap(m -> m.effect().inserts().stream())
                .filter(i -> i.mount().equals(mount.id()))
                .findFirst();
    }

    private static boolean isCutAway(List<Mod> done, Mount mount) {
        return done.stream()
                .flatMap(m -> m.effect().airways().stream())
                .anyMatch(a -> a.mount().equals(mount.id())
                        && a.cut().filter(c -> c == Airway.Cut.FULL).isPresent());
    }

    private static Optional<Clamped> grille(FitCase fitCase, List<Mod> done, Mount mount) {
        return done.stream()
                .flatMap(m -> m.effect().airways().stream())
                .filter(a -> a.mount().equals(mount.id()))
                .flatMap(a -> a.grille().stream())
                .findFirst()
                .map(id -> new Clamped(
                        "grille", fitCase.catalog().part(Grille.class, id).thicknessMm()));
    }

    /** Everything on the outside of the stack, outside in. */
    List<Clamped> outsideIn() {
        List<Clamped> out = new ArrayList<>();
        grille.ifPresent(out::add);
        out.addAll(layers);
        gasket.ifPresent(out::add);
        return out;
    }
}
