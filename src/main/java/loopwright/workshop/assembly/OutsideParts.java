package loopwright.workshop.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.part.Cover;
import loopwright.catalog.part.Grille;
import loopwright.fit.CoveredLayers;
import loopwright.fit.FitCase;
import loopwright.fit.MountFrame;
import loopwright.fit.Witness;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.SpaceBox.Reach;
import loopwright.quantity.Hundredths;
import loopwright.workshop.assembly.Piece.Body;
import loopwright.workshop.assembly.Piece.Screws;

/** What is on the outside of a build: fans or radiators in covers, grilles, inserts, covers, trims. */
record OutsideParts(FitCase fitCase, Witness witness) {

    /** What a cover's body is called, after its mount. */
    static final String COVER = " cover";

    /** What the bolts of a stack hold on the outside, from the seat plane outwards. */
    List<Body> held(Witness.At at) {
        MountFrame frame = at.stack().frame();
        Mount mount = frame.mount();
        OutsideBoxes boxes = new OutsideBoxes(frame);
        Pattern pattern = at.stack().shape().pattern();
        int size = pattern.sizeMm() * Hundredths.PER_MM;
        Reach along = OutsideBoxes.around(at.alongHmm(), pattern.fans() * size);
        Reach aside = OutsideBoxes.around(at.asideHmm(), size);
        List<Body> out = new ArrayList<>();
        int sheet = frame.panel().thicknessMm().valueHmm();
        for (Mod.Insert insert : done().stream()
                .flatMap(m -> m.effect().inserts().stream())
                .filter(i -> i.mount().equals(mount.id()))
                .toList()) {
            sheet = insert.thicknessMm().valueHmm();
            out.add(body(frame, "insert panel", List.of(boxes.slab("insert panel", 0, sheet, along, aside))));
        }
        Optional<Grille> grille = cover(mount).isPresent() ? Optional.empty() : grille(mount);
        if (grille.isPresent()) {
            int top = sheet + grille.get().thicknessMm().valueHmm();
            out.add(body(frame, "grille", List.of(boxes.slab("grille", sheet, top, along, aside))));
        }
        CoveredLayers.of(fitCase, witness).stream()
                .filter(b -> b.id().equals("stack:" + mount.id()))
                .flatMap(b -> b.boxes().stream())
                .forEach(b -> out.add(Body.outside(
                        b.what() + " in the cover", List.of(b), frame.panel().face())));
        cover(mount)
                .filter(c -> c.over() == RaisedCover.Over.WINDOW)
                .ifPresent(c -> out.add(body(frame, COVER.strip(), lid(frame, c))));
        return out;
    }

    private static Body body(MountFrame frame, String what, List<SpaceBox> solids) {
        return Body.outside(
                frame.mount().id() + " " + what, solids, frame.panel().face());
    }

    private List<Mod> done() {
        return witness.mods().mods(fitCase.chassis());
    }

    /** The raised cover on a mount. */
    Optional<RaisedCover> cover(Mount mount) {
        return fitCase.openings().cover(mount, witness.mods());
    }

    private Optional<Grille> grille(Mount mount) {
        return done().stream()
                .flatMap(m -> m.effect().airways().stream())
                .filter(a -> a.mount().equals(mount.id()))
                .flatMap((Airway a) -> a.grille().stream())
                .findFirst()
                .map(id -> fitCase.catalog().part(Grille.class, id));
    }

    /** The panel itself, where it comes off with what hangs on it. */
    Body panel(MountFrame frame) {
        Reach along = whole(frame, true);
        Reach aside = whole(frame, false);
        int sheet = frame.panel().thicknessMm().valueHmm();
        SpaceBox box = new OutsideBoxes(frame).slab("panel", 0, sheet, along, aside);
        return Body.outside(
                frame.panel().id().replace('-', ' '),
                List.of(box),
                frame.panel().face());
    }

    private Reach whole(MountFrame frame, boolean lengthwise) {
        var in = fitCase.chassis().shell().interior();
        int size = switch (lengthwise ? frame.lengthwise() : frame.sideways()) {
            case X -> in.widthMm().valueHmm();
            case Y -> in.depthMm().valueHmm();
            case Z -> in.heightMm().valueHmm();
        };
        return new Reach(0, size);
    }

    private List<SpaceBox> lid(MountFrame frame, RaisedCover raised) {
        Cover cover = fitCase.catalog().part(Cover.class, raised.cover());
        int base = raised.over() == RaisedCover.Over.WINDOW
                ? 0
                : frame.panel().thicknessMm().valueHmm();
        OutsideBoxes.Lid lid = new OutsideBoxes.Lid(
                OutsideBoxes.around(
                        raised.lengthwiseMm().valueHmm(),
                        cover.body().lengthMm().valueHmm()),
                OutsideBoxes.around(
                        raised.sidewaysMm().valueHmm(), cover.body().widthMm().valueHmm()),
                cover.body().wallMm().valueHmm(),
                base,
                cover.body().insideHeightMm().valueHmm(),
                cover.body().skinMm().valueHmm());
        return new OutsideBoxes(frame).lid(frame.mount().id() + COVER, lid);
    }

    /** Covers over rings and trims: they go on after what is under them. */
    List<Piece> lids() {
        List<Piece> out = new ArrayList<>();
        for (MountFrame frame : fitCase.frames()) {
            cover(frame.mount())
                    .filter(c -> c.over() == RaisedCover.Over.RINGS)
                    .ifPresent(c -> out.add(coverPiece(frame, c)));
        }
        for (Panel panel : fitCase.chassis().shell().panels()) {
            fitCase.frames().stream()
                    .filter(f -> f.panel().id().equals(panel.id()))
                    .filter(f -> isTrimmed(f))
                    .findFirst()
                    .ifPresent(f -> out.add(trim(f)));
        }
        return out;
    }

    private Piece coverPiece(MountFrame frame, RaisedCover raised) {
        Cover cover = fitCase.catalog().part(Cover.class, raised.cover());
        String side = frame.panel().face().name().toLowerCase(Locale.ROOT);
        Screws screws = new Screws(cover.fixing().screws(), "from outside, " + side, List.of());
        return new Piece(
                "cover:" + frame.mount().id(),
                frame.mount().id() + COVER,
                List.of(body(frame, COVER.strip(), lid(frame, raised))),
                List.of(),
                List.of(screws),
                new Piece.Traits(Piece.Kind.LID, false, Turns.COVER),
                Set.of());
    }

    /** A panel with clips, or one that breathes at its edges, has a trim before it. */
    private static boolean isTrimmed(MountFrame frame) {
        return !frame.panel().features().clips().isEmpty()
                || frame.mount().opening().where() == Mount.Where.EDGES;
    }

    /** As far off as the free depth outside, and as thick as the sheet it is clipped to. */
    private Piece trim(MountFrame frame) {
        int sheet = frame.panel().thicknessMm().valueHmm();
        int inset = frame.mount().insetMm().valueHmm();
        int off = inset + sheet + fitCase.openings().outsideDepthHmm(frame.mount(), witness.mods());
        SpaceBox box = new OutsideBoxes(frame).slab("trim", off, off + sheet, whole(frame, true), whole(frame, false));
        String title = frame.panel().face().name().toLowerCase(Locale.ROOT) + " trim";
        return new Piece(
                "trim:" + frame.panel().id(),
                title,
                List.of(Body.outside(title, List.of(box), frame.panel().face())),
                List.of(),
                List.of(),
                new Piece.Traits(Piece.Kind.LID, false, Turns.TRIM),
                Set.of());
    }
}
