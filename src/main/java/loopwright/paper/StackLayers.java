package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.part.Cover;
import loopwright.fit.Arrangement;
import loopwright.fit.FitCase;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;

/**
 * The layers of a stack, outside in, and what each does: the panel is the screw seat unless it is cut away under a cover
 * or behind an insert panel; the bolts run from the outermost layer that is bolted to the radiator, and the fans on its far
 * side have screws of their own.
 */
final class StackLayers {

    /** Where a layer is. */
    enum At {
        /** Outside the panel. */
        IN_COVER,
        /** The panel itself, or what replaces it. */
        PANEL,
        /** Inside the chassis. */
        INSIDE
    }

    /** What a layer does. */
    enum Hold {
        /** The screw heads bear on it. */
        SEAT,
        /** It is held between others. */
        CLAMPED,
        /** It has fasteners of its own, or none. */
        LOOSE
    }

    /**
     * One layer.
     *
     * @param isThere false when it is cut away
     * @param sharesBolts whether the bolts that hold the radiator run through it
     */
    record Layer(String name, At at, int thicknessHmm, boolean isThere, Hold hold, boolean sharesBolts) {}

    private final FitCase fitCase;

    StackLayers(FitCase fitCase) {
        this.fitCase = fitCase;
    }

    /** Thickness of the insert at a mount; 0 where a cut is closed by nothing but the stack itself. */
    private int insertHmm(Mount mount, ModSet mods) {
        return mods.mods(fitCase.chassis()).stream()
                .flatMap(m -> m.effect().inserts().stream())
                .filter(i -> i.mount().equals(mount.id()))
                .mapToInt(i -> i.thicknessMm().valueHmm())
                .max()
                .orElse(0);
    }

    /** The layers of a stack with a mod set. */
    List<Layer> of(Stack stack, ModSet mods) {
        Mount mount = stack.frame().mount();
        Optional<RaisedCover> cover = fitCase.openings().cover(mount, mods);
        boolean window = cover.filter(c -> c.over() == RaisedCover.Over.WINDOW).isPresent();
        boolean insert = !window && isCutAway(mount, mods);
        int panelHmm = stack.frame().panel().thicknessMm().valueHmm();
        List<Layer> out = new ArrayList<>();
        cover.map(c -> fitCase.catalog().part(Cover.class, c.cover()))
                .ifPresent(c -> out.add(new Layer(
                        "cover",
                        At.IN_COVER,
                        c.body().skinMm().valueHmm(),
                        true,
                        window ? Hold.SEAT : Hold.LOOSE,
                        window)));
        List<Arrangement.Layer> inCover = stack.shape().arrangement().inCover();
        inCover.forEach(l -> out.add(layer(l, stack, At.IN_COVER, true)));
        if (insert) {
            out.add(new Layer("insert", At.PANEL, insertHmm(mount, mods), true, Hold.SEAT, true));
        }
        boolean there = !window && !insert;
        out.add(new Layer("panel", At.PANEL, panelHmm, there, there ? Hold.SEAT : Hold.LOOSE, there));
        mount.gasket()
                .ifPresent(g ->
                        out.add(new Layer("gasket", At.INSIDE, g.squeezedMm().valueHmm(), true, Hold.CLAMPED, false)));
        boolean radiatorPassed = inCover.contains(Arrangement.Layer.RADIATOR);
        for (Arrangement.Layer layer : stack.shape().arrangement().inside()) {
            boolean beyond = radiatorPassed && !inCover.contains(Arrangement.Layer.RADIATOR);
            out.add(layer(layer, stack, At.INSIDE, !beyond));
            radiatorPassed |= layer == Arrangement.Layer.RADIATOR;
        }
        return List.copyOf(out);
    }

    private static Layer layer(Arrangement.Layer layer, Stack stack, At at, boolean sharesBolts) {
        boolean fans = layer == Arrangement.Layer.FANS;
        int thickness =
                fans ? stack.shape().fanThickness().valueHmm() : stack.shape().thicknessHmm();
        return new Layer(fans ? "fans" : "radiator", at, thickness, true, Hold.CLAMPED, sharesBolts);
    }

    private boolean isCutAway(Mount mount, ModSet mods) {
        return mods.mods(fitCase.chassis()).stream()
                .filter(m -> m.kind() == Mod.Kind.FIT_INSERT)
                .flatMap(m -> m.effect().airways().stream())
                .anyMatch(a -> a.mount().equals(mount.id())
                        && a.cut().filter(c -> c == Airway.Cut.FULL).isPresent());
    }
}
