package loopwright.testing;

import static loopwright.testing.Mm.mm;
import static loopwright.testing.Mm.span;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Box;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.ModSeat;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.quantity.Dimension;

/** Modifications, each with one effect. */
public final class SmallMods {

    private SmallMods() {}

    /** Takes a removable out. */
    public static Mod takeOut(String id, String removable) {
        return mod(
                id,
                Mod.Kind.TAKE_OUT,
                List.of(),
                new Mod.Effect(
                        List.of(removable),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of()));
    }

    /** Builds something in. */
    public static Mod bracket(String id, Box box) {
        Inside.Obstruction added = new Inside.Obstruction(id + "-body", id, List.of(box));
        return mod(
                id,
                Mod.Kind.CHANGE_BRACKET,
                List.of(),
                new Mod.Effect(
                        List.of(), List.of(added), List.of(), List.of(), List.of(), List.of(), List.of(), List.of()));
    }

    /** A raised cover over rings: the panel stays and so do its seats. */
    public static Mod coverOverRings(String id, String mount, String cover, Spot spot) {
        return mod(
                id,
                Mod.Kind.RAISE_COVER,
                List.of(),
                covering(List.of(), new RaisedCover(mount, cover, RaisedCover.Over.RINGS, spot.along(), spot.aside())));
    }

    /** A raised cover over a window: its flange has the seats. */
    public static Mod coverOverWindow(String id, String mount, String cover, String pattern, Spot spot) {
        ModSeat seat = new ModSeat(mount, seat(pattern, spot));
        return mod(
                id,
                Mod.Kind.RAISE_COVER,
                List.of(),
                covering(
                        List.of(seat),
                        new RaisedCover(mount, cover, RaisedCover.Over.WINDOW, spot.along(), spot.aside())));
    }

    private static Mod.Effect covering(List<ModSeat> seats, RaisedCover cover) {
        return new Mod.Effect(List.of(), List.of(), List.of(), List.of(), seats, List.of(cover), List.of(), List.of());
    }

    /** The same mod, never together with another. */
    public static Mod without(Mod mod, String other) {
        return mod(mod.id(), mod.kind(), List.of(other), mod.effect());
    }

    private static Mod mod(String id, Mod.Kind kind, List<String> excludes, Mod.Effect effect) {
        return new Mod(
                id,
                id,
                kind,
                new Mod.Rules(List.of(), excludes),
                new Mod.Work(30, 0, 0, 100, 1),
                new Mod.Look(0, 0, Mod.WayBack.PARTLY, mm(0)),
                effect);
    }

    /** Where on a mount, mm along and across. */
    public record Spot(double alongMm, double asideMm) {
        Dimension along() {
            return mm(alongMm);
        }

        Dimension aside() {
            return mm(asideMm);
        }
    }

    /** A seat at one spot. */
    public static Mount.Seat seat(String pattern, Spot spot) {
        return new Mount.Seat(
                Pattern.parse(pattern),
                List.of(span(spot.alongMm(), spot.alongMm())),
                List.of(span(spot.asideMm(), spot.asideMm())));
    }

    /** A mount on a panel of its own name, fully open, with plenty of air outside. */
    public static Mount mount(String id, Axis lengthwise, Mount.Seat... seats) {
        return new Mount(
                id,
                id + "-panel",
                lengthwise,
                mm(0),
                List.of(seats),
                new Mount.Opening(1, Mount.Where.FACE, Optional.empty(), mm(200), Optional.empty()),
                Optional.empty(),
                List.of());
    }
}
