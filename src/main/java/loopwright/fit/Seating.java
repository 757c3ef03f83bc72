package loopwright.fit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.ModSeat;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.part.Cover;
import loopwright.geometry.Edges;
import loopwright.quantity.Dimension;
import loopwright.quantity.IntervalSet;

/**
 * Where on a mount a shape may hang with a mod set: seats, raised covers, flow opening, outside depth.
 *
 * <p>Unit: hundredths of a millimetre, chassis coordinates.
 */
public final class Seating {

    private final Catalog catalog;
    private final Chassis chassis;
    private final Openings openings;
    private final double freeAreaMin;

    Seating(Catalog catalog, Chassis chassis, Openings openings, double freeAreaMin) {
        this.catalog = catalog;
        this.chassis = chassis;
        this.openings = openings;
        this.freeAreaMin = freeAreaMin;
    }

    /** Why a shape cannot hang on a mount at all, or that it can. */
    public enum Hindrance {
        /** It can hang there. */
        NONE("can hang there"),
        /** No screw seat for its pattern. */
        NO_SEAT("no hole pattern of that size"),
        /** It wants a raised cover that is not there, or is too small or too low. */
        NO_COVER("no raised cover that takes it"),
        /** The panel is not open enough. */
        TOO_CLOSED("the panel is not open enough"),
        /** Too little air outside the panel. */
        NO_AIR_OUTSIDE("too little free depth outside the panel");

        private final String text;

        Hindrance(String text) {
            this.text = text;
        }

        /** In words. */
        public String text() {
            return text;
        }
    }

    /** Whether the mount has a seat for a pattern. */
    boolean hasSeat(Mount mount, Pattern pattern, ModSet mods) {
        return !seats(mount, pattern, mods).isEmpty();
    }

    /** Whether the panel is open enough in front of a pattern. */
    boolean isOpenEnough(Mount mount, Pattern pattern, ModSet mods) {
        return openings.freeArea(mount, pattern, mods) >= freeAreaMin;
    }

    /** Whether a shape has the air that it wants outside the panel. */
    boolean hasAirOutside(Mount mount, Shape shape, ModSet mods) {
        int outsideMin = catalog.practice().air().outsideDepthMinMm().valueHmm();
        return shape.arrangement().needsCover() || openings.outsideDepthHmm(mount, mods) >= outsideMin;
    }

    /** What keeps a shape from hanging on a mount. */
    Hindrance hindrance(MountFrame frame, Shape shape, ModSet mods) {
        Mount mount = frame.mount();
        if (!hasSeat(mount, shape.pattern(), mods)) {
            return Hindrance.NO_SEAT;
        }
        if (shape.arrangement().needsCover() && ranges(frame, shape, mods).isEmpty()) {
            return Hindrance.NO_COVER;
        }
        if (!isOpenEnough(mount, shape.pattern(), mods)) {
            return Hindrance.TOO_CLOSED;
        }
        return hasAirOutside(mount, shape, mods) ? Hindrance.NONE : Hindrance.NO_AIR_OUTSIDE;
    }

    /** The positions that seats and cover allow; empty if there are none. */
    List<Range> ranges(MountFrame frame, Shape shape, ModSet mods) {
        List<Range> out = new ArrayList<>();
        for (NamedSeat seat : seats(frame.mount(), shape.pattern(), mods)) {
            Range range = range(seat).withUnknowns(openings.unknowns(frame.mount(), shape.arrangement(), mods));
            if (shape.arrangement().needsCover()) {
                for (RaisedCover raised : openings.covers(frame.mount(), mods)) {
                    cutToCover(frame, shape, raised, range).ifPresent(out::add);
                }
            } else {
                out.add(range);
            }
        }
        out.removeIf(Range::isEmpty);
        return List.copyOf(out);
    }

    /** Every seat that a mount has with a mod set. */
    List<Mount.Seat> seats(Mount mount, ModSet mods) {
        return namedSeats(mount, mods).stream().map(NamedSeat::seat).toList();
    }

    /** A seat and where the catalogue has it. */
    private record NamedSeat(String address, Mount.Seat seat) {}

    private List<NamedSeat> seats(Mount mount, Pattern pattern, ModSet mods) {
        return namedSeats(mount, mods).stream()
                .filter(s -> s.seat().pattern().equals(pattern))
                .toList();
    }

    private List<NamedSeat> namedSeats(Mount mount, ModSet mods) {
        List<Mod> windows = mods.mods(chassis).stream()
                .filter(m -> m.effect().covers().stream()
                        .anyMatch(c -> c.mount().equals(mount.id()) && c.over() == RaisedCover.Over.WINDOW))
                .toList();
        List<NamedSeat> all = new ArrayList<>();
        if (windows.isEmpty()) {
            String address = MountFrame.address(chassis, mount) + ".seats.";
            for (int i = 0; i < mount.seats().size(); i++) {
                all.add(new NamedSeat(address + (i + 1), mount.seats().get(i)));
            }
        }
        for (Mod mod : windows.isEmpty() ? mods.mods(chassis) : windows) {
            String address = ModRules.address(chassis, mod) + ".effect.seats.";
            for (int i = 0; i < mod.effect().seats().size(); i++) {
                ModSeat made = mod.effect().seats().get(i);
                if (made.mount().equals(mount.id())) {
                    all.add(new NamedSeat(address + (i + 1) + ".seat", made.seat()));
                }
            }
        }
        return List.copyOf(all);
    }

    private static Range range(NamedSeat named) {
        Set<String> unknowns = new LinkedHashSet<>();
        IntervalSet along =
                positions(named.address() + ".lengthwise_mm", named.seat().lengthwiseMm(), unknowns);
        IntervalSet aside =
                positions(named.address() + ".sideways_mm", named.seat().sidewaysMm(), unknowns);
        return new Range(along, aside, List.copyOf(unknowns));
    }

    private static IntervalSet positions(String name, List<Span> spans, Set<String> unknowns) {
        List<IntervalSet.Interval> out = new ArrayList<>();
        for (int i = 0; i < spans.size(); i++) {
            Span span = spans.get(i);
            note(unknowns, name + "." + (i + 1) + ".from", span.from());
            note(unknowns, name + "." + (i + 1) + ".to", span.to());
            int from = span.from().valueHmm();
            int to = span.to().valueHmm();
            // Only an unknown end, which counts as 0, can make a span run backwards.
            out.add(new IntervalSet.Interval(Math.min(from, to), Math.max(from, to)));
        }
        return new IntervalSet(out);
    }

    private static void note(Set<String> unknowns, String name, Dimension dimension) {
        if (dimension.isUnknown()) {
            unknowns.add(name);
        }
    }

    private Optional<Range> cutToCover(MountFrame frame, Shape shape, RaisedCover raised, Range range) {
        Cover cover = catalog.part(Cover.class, raised.cover());
        int plenum = cover.skin().freeArea() >= catalog.practice().air().solidSkinFreeAreaMin()
                ? catalog.practice().room().plenumPerforatedMm().valueHmm()
                : catalog.practice().room().plenumSolidMm().valueHmm();
        boolean radiator = shape.arrangement() == Arrangement.COVER_RADIATOR;
        int height = radiator ? shape.thicknessHmm() : shape.fanThickness().valueHmm();
        if (height + plenum > cover.body().insideHeightMm().valueHmm()) {
            return Optional.empty();
        }
        Set<String> unknowns = new LinkedHashSet<>(range.unknowns());
        String address = openings.coverAddress(raised);
        note(unknowns, cover.id() + ".body.length_mm", cover.body().lengthMm());
        note(unknowns, cover.id() + ".body.width_mm", cover.body().widthMm());
        note(unknowns, cover.id() + ".body.wall_mm", cover.body().wallMm());
        note(unknowns, cover.id() + ".body.inside_height_mm", cover.body().insideHeightMm());
        note(unknowns, address + ".lengthwise_mm", raised.lengthwiseMm());
        note(unknowns, address + ".sideways_mm", raised.sidewaysMm());
        int wall = cover.body().wallMm().valueHmm();
        IntervalSet along = inCavity(
                range.along(),
                raised.lengthwiseMm().valueHmm(),
                cover.body().lengthMm().valueHmm() - 2 * wall,
                along(StackNames.of(frame, shape), radiator));
        IntervalSet aside = inCavity(
                range.aside(),
                raised.sidewaysMm().valueHmm(),
                cover.body().widthMm().valueHmm() - 2 * wall,
                aside(shape, radiator));
        return Optional.of(new Range(along, aside, List.copyOf(unknowns)));
    }

    /** Reach of what lies in the cover, relative to the stack's position. */
    private record Reach(int from, int to) {}

    private static Reach along(StackNames names, boolean radiator) {
        if (radiator) {
            Edges edges = StackBodies.radiatorLength(names);
            return new Reach(edges.from().valueHmm(), edges.to().valueHmm());
        }
        Pattern pattern = names.shape().pattern();
        int half = pattern.fans() * pattern.sizeMm() * 50;
        return new Reach(-half, half);
    }

    private static Reach aside(Shape shape, boolean radiator) {
        int half = radiator
                ? shape.outline().width().valueHmm() / 2
                : shape.pattern().sizeMm() * 50;
        return new Reach(-half, half);
    }

    /** The positions at which a reach lies inside a cavity of that width; the cavity's centre may fall on a half. */
    private static IntervalSet inCavity(IntervalSet positions, int centreHmm, int widthHmm, Reach reach) {
        int from = Math.floorDiv(2 * centreHmm - widthHmm + 1, 2) - reach.from();
        int to = Math.floorDiv(2 * centreHmm + widthHmm, 2) - reach.to();
        return from > to ? IntervalSet.EMPTY : positions.and(IntervalSet.of(from, to));
    }
}
