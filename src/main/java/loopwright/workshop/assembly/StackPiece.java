package loopwright.workshop.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.standard.Standards;
import loopwright.fit.Arrangement;
import loopwright.fit.MountFrame;
import loopwright.fit.Shape;
import loopwright.fit.StandingBody;
import loopwright.fit.Witness;
import loopwright.geometry.SpaceBox;
import loopwright.quantity.Hundredths;
import loopwright.workshop.assembly.Piece.Body;
import loopwright.workshop.assembly.Piece.Screws;
import loopwright.workshop.fasten.Clamped;
import loopwright.workshop.fasten.Joint;
import loopwright.workshop.fasten.ScrewSet;

/**
 * A stack as a piece: all that its bolts hold, inside and outside, comes loose together.
 *
 * @param at where it hangs
 * @param sets the screws of its mount
 * @param outside what its bolts hold on the outside
 * @param withPanel whether its panel comes off: then it goes on and comes off with it, bolted on the bench
 */
record StackPiece(Witness.At at, List<ScrewSet> sets, List<Body> outside, boolean withPanel, Standards standards) {

    /** Copies. */
    StackPiece {
        sets = List.copyOf(sets);
        outside = List.copyOf(outside);
    }

    /**
     * The piece.
     *
     * @param beside whether it lies beside the case on its tubes when it is off: the loop stays closed
     */
    Piece piece(StandingBody standing, Set<String> carries, boolean beside) {
        List<Body> bodies = new ArrayList<>();
        List<SpaceBox> solids = standing.boxes().stream().filter(b -> !b.room()).toList();
        List<Arrangement.Layer> layers = arrangement().inside();
        for (int k = 0; k < layers.size(); k++) {
            bodies.add(layer(layers.get(k), k == layers.size() - 1, solids.get(k)));
        }
        bodies.addAll(outside);
        List<SpaceBox> rooms = standing.boxes().stream().filter(SpaceBox::room).toList();
        List<Screws> main = sets.stream()
                .filter(s -> s.joint().holding() == Joint.Holding.RADIATOR
                        || s.joint().holding() == Joint.Holding.BARE_FANS)
                .map(s -> main(s, solids))
                .toList();
        boolean wet = arrangement().hasRadiator() && !beside;
        Piece.Traits traits = new Piece.Traits(Piece.Kind.PART, wet, Turns.STACK);
        String title = mount() + " stack" + (withPanel ? " with its panel" : "");
        return new Piece(standing.id(), title, bodies, rooms, main, traits, carries);
    }

    private Arrangement arrangement() {
        return at.stack().shape().arrangement();
    }

    private MountFrame frame() {
        return at.stack().frame();
    }

    private String mount() {
        return frame().mount().id();
    }

    private Face face() {
        return frame().panel().face();
    }

    private Body layer(Arrangement.Layer layer, boolean last, SpaceBox solid) {
        boolean far = layer == Arrangement.Layer.FANS && last && hasFarFans();
        String what = layer == Arrangement.Layer.RADIATOR ? "radiator" : far ? "inner fans" : "fans";
        Optional<Face> lifts = withPanel ? Optional.of(face()) : Optional.empty();
        Optional<Screws> own = far ? set(Joint.Holding.FAR_FANS).map(s -> far(s, solid)) : Optional.empty();
        return new Body(mount() + " " + what, List.of(solid), lifts, own);
    }

    private boolean hasFarFans() {
        return set(Joint.Holding.FAR_FANS).isPresent();
    }

    private Optional<ScrewSet> set(Joint.Holding holding) {
        return sets.stream().filter(s -> s.joint().holding() == holding).findFirst();
    }

    private Screws far(ScrewSet set, SpaceBox fans) {
        String where = "from inside, on the bench";
        return new Screws(
                set.joint().count().holes(), where, screws(-inwards(fans), OutsideBoxes.opposite(face()), set));
    }

    /** How far a box reaches inwards from the seat plane. */
    private int inwards(SpaceBox box) {
        SpaceBox.Reach depth = box.along(frame().normal());
        int plane = frame().seatPlane().valueHmm();
        return face().isHigh() ? plane - depth.from() : depth.to() - plane;
    }

    private Screws main(ScrewSet set, List<SpaceBox> inside) {
        int count = set.joint().count().holes();
        String side = face().name().toLowerCase(Locale.ROOT);
        if (withPanel) {
            return new Screws(count, "on the bench, " + side + " panel off", List.of());
        }
        if (arrangement() == Arrangement.COVER_RADIATOR) {
            int depth = inwards(inside.get(inside.size() - 1));
            return new Screws(
                    count, "from inside, towards the " + side, screws(-depth, OutsideBoxes.opposite(face()), set));
        }
        String where = "from outside, " + side;
        return headsAreUnderSkin()
                ? new Screws(count, where + ", under the cover's skin", List.of())
                : new Screws(count, where, screws(headsHmm(set), face(), set));
    }

    private boolean headsAreUnderSkin() {
        return outside.stream().anyMatch(b -> b.title().equals(mount() + OutsideParts.COVER));
    }

    /** How far outwards from the seat plane the heads lie; in a bracket inside the sheet they are driven through it, from the wall on. */
    private int headsHmm(ScrewSet set) {
        boolean fansOutside = arrangement().inCover().contains(Arrangement.Layer.FANS);
        int layers = set.joint().layers().stream()
                .filter(l -> !l.name().startsWith("gasket"))
                .filter(l -> fansOutside || !l.name().equals("fan"))
                .mapToInt(Clamped::thicknessHmm)
                .sum();
        return Math.max(layers, frame().mount().insetMm().valueHmm());
    }

    private List<Driving.Screw> screws(int outwardsHmm, Face away, ScrewSet set) {
        int length = set.findScrew()
                .map(s -> s.lengthMm().valueHmm())
                .orElse(set.window().leastHmm());
        OutsideBoxes boxes = new OutsideBoxes(frame());
        Shape shape = at.stack().shape();
        List<Driving.Screw> out = new ArrayList<>();
        int half = pitchHmm(shape.pattern()) / 2;
        for (int fan = 0; fan < shape.pattern().fans(); fan++) {
            int middle =
                    (2 * fan - (shape.pattern().fans() - 1)) * shape.pattern().sizeMm() * Hundredths.PER_MM / 2;
            for (int along : List.of(middle - half, middle + half)) {
                for (int aside : List.of(-half, half)) {
                    out.add(new Driving.Screw(
                            boxes.point(outwardsHmm, at.alongHmm() + along, at.asideHmm() + aside), away, length));
                }
            }
        }
        return out;
    }

    private int pitchHmm(Pattern pattern) {
        return standards.fans().stream()
                .filter(f -> f.sizeMm() == pattern.sizeMm())
                .findFirst()
                .map(f -> f.holePitchMm().valueHmm())
                .orElseThrow(() -> new IllegalArgumentException("no hole pitch for fans of " + pattern.sizeMm()));
    }
}
