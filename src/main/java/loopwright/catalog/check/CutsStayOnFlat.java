package loopwright.catalog.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.read.Problems;
import loopwright.catalog.standard.Standards;
import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;

/**
 * Wherever seats let fans go, what a mod cuts before them keeps one sheet thickness to the edge of the panel's flat.
 *
 * <p>The cut goes where the fans go, so every position of every seat that can be had together with the mod counts; if
 * one of them were too near, {@code fit} would list layouts that must not be cut. Lengths: hundredths of a millimetre.
 * One sheet thickness: common practice of sheet metal work, no source.
 */
final class CutsStayOnFlat implements Check {

    /** Reach of a cut from the middle of a pattern. */
    private record Reach(int alongDoubled, int asideDoubled) {}

    @Override
    public void run(Items items, Problems problems) {
        items.findOnly(Standards.class).ifPresent(standards -> {
            for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
                List<Mod> mods = chassis.value().mods();
                for (int m = 0; m < mods.size(); m++) {
                    List<Airway> airways = mods.get(m).effect().airways();
                    for (int a = 0; a < airways.size(); a++) {
                        String path = "mods[" + m + "].effect.airways[" + a + "]";
                        worst(chassis, mods.get(m), airways.get(a), standards)
                                .ifPresent(w ->
                                        problems.add(chassis.item().problem(path, w.found(), w.allowed(), w.hint())));
                    }
                }
            }
        });
    }

    /** The seat position that brings a cut nearest to an edge, if that is too near. */
    private record Worst(PlacedSeat seat, int leftDoubled) {
        private int sheetHmm() {
            return seat.panel().thicknessMm().valueHmm();
        }

        String found() {
            return "a cut that comes within " + Hundredths.text(Math.floorDiv(leftDoubled, 2))
                    + " mm of the edge of the flat of panel \"" + seat.panel().id() + "\"";
        }

        String allowed() {
            return "at least one sheet thickness, " + Hundredths.text(sheetHmm()) + " mm, wherever "
                    + seat.seat().pattern() + " goes (" + seat.path() + ")";
        }

        String hint() {
            return "Make the cut or the range of the seat narrower.";
        }
    }

    private static Optional<Worst> worst(Items.Placed<Chassis> chassis, Mod mod, Airway airway, Standards standards) {
        List<Worst> near = new ArrayList<>();
        for (PlacedSeat seat : PlacedSeat.allOf(chassis)) {
            if (seat.mount().id().equals(airway.mount()) && goesWith(chassis.value(), mod, seat)) {
                reach(mod, airway, seat, standards)
                        .flatMap(reach -> left(seat, reach))
                        .filter(left -> left < 2 * seat.panel().thicknessMm().valueHmm())
                        .ifPresent(left -> near.add(new Worst(seat, left)));
            }
        }
        return near.stream().min((a, b) -> Integer.compare(a.leftDoubled(), b.leftDoubled()));
    }

    /** Whether a seat can be had together with a mod. */
    private static boolean goesWith(Chassis chassis, Mod mod, PlacedSeat seat) {
        return chassis.mods().stream()
                .filter(m -> seat.path().startsWith("mods[" + chassis.mods().indexOf(m) + "]"))
                .noneMatch(m -> m.rules().excludes().contains(mod.id())
                        || mod.rules().excludes().contains(m.id()));
    }

    private static Optional<Reach> reach(Mod mod, Airway airway, PlacedSeat seat, Standards standards) {
        Pattern pattern = seat.seat().pattern();
        Optional<Integer> cut = airway.cutMm().filter(d -> !d.isUnknown()).map(Dimension::valueHmm);
        Optional<Standards.FanPattern> fan = standards.fans().stream()
                .filter(f -> f.sizeMm() == pattern.sizeMm() && !f.ringMm().isUnknown())
                .findFirst();
        if (airway.cut().isEmpty() || fan.isEmpty()) {
            return Optional.empty();
        }
        int ring = fan.get().ringMm().valueHmm();
        int size = Hundredths.ofMm(pattern.sizeMm());
        int between = (pattern.fans() - 1) * size;
        return switch (airway.cut().get()) {
            case RINGS -> cut.map(c -> Math.min(c, ring)).map(c -> new Reach(between + c, c));
            case STRIP -> cut.map(c -> new Reach(between + ring, c));
            case FULL ->
                hasInsert(mod, airway.mount())
                        ? Optional.of(new Reach(between + size, size))
                        : Optional.of(new Reach(
                                between + ring,
                                Math.min(ring, fan.get().holePitchMm().valueHmm())));
        };
    }

    private static boolean hasInsert(Mod mod, String mount) {
        return mod.effect().inserts().stream().anyMatch(i -> i.mount().equals(mount));
    }

    private static Optional<Integer> left(PlacedSeat seat, Reach reach) {
        Axis along = seat.mount().lengthwise();
        Axis aside = PlacedSeat.sideways(seat.mount(), seat.panel());
        List<Integer> out = new ArrayList<>();
        seat.flatAlong(along).ifPresent(flat -> add(out, flat, seat.seat().lengthwiseMm(), reach.alongDoubled()));
        seat.flatAlong(aside).ifPresent(flat -> add(out, flat, seat.seat().sidewaysMm(), reach.asideDoubled()));
        return out.stream().min(Integer::compare);
    }

    private static void add(List<Integer> out, Span flat, List<Span> spans, int reachDoubled) {
        for (Span span : spans) {
            if (!span.from().isUnknown() && !span.to().isUnknown()) {
                out.add(2 * (span.from().valueHmm() - flat.from().valueHmm()) - reachDoubled);
                out.add(2 * (flat.to().valueHmm() - span.to().valueHmm()) - reachDoubled);
            }
        }
    }
}
