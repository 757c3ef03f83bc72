package loopwright.answer.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import loopwright.answer.Cooling;
import loopwright.answer.Halt;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.part.Radiator;
import loopwright.fit.Breaches;
import loopwright.fit.Candidate;
import loopwright.fit.FitCase;
import loopwright.fit.Layout;
import loopwright.fit.ModSet;
import loopwright.fit.MountFrame;
import loopwright.fit.Narrowed;
import loopwright.fit.Shape;
import loopwright.fit.Wish;
import loopwright.fit.WishedCase;
import loopwright.loop.Band;

/**
 * What can be had in the stead of a radiator that cannot: the thickest other one of its pattern, and the largest of another pattern, with
 * all other wishes kept; each found by a search of its own.
 */
final class Instead {

    /** Other thicknesses and patterns tried, each with a search. */
    private static final int TRIES_MAX = 8;

    private final WishedCase wished;
    private final Halt halt;

    Instead(WishedCase wished, Halt halt) {
        this.wished = wished;
        this.halt = halt;
    }

    /** What can be had; nothing for wishes that are not about a radiator of a pattern. */
    List<Stated> of(Wish wish) {
        if (!(wish instanceof Wish.RadiatorAt at)
                || at.mounts().size() != 1
                || at.pick().pattern().isEmpty()) {
            return List.of();
        }
        Pattern pattern = at.pick().pattern().get();
        List<Wish.RadiatorAt> same = new ArrayList<>();
        List<Wish.RadiatorAt> others = new ArrayList<>();
        for (Size size : sizes()) {
            if (size.pattern().equals(pattern)) {
                same.add(size.at(at.mounts().get(0)));
            } else {
                others.add(size.at(at.mounts().get(0)));
            }
        }
        List<Stated> out = new ArrayList<>();
        first(at, same).ifPresent(out::add);
        first(at, others).ifPresent(out::add);
        return out;
    }

    private record Size(Pattern pattern, int thicknessHmm) {
        Wish.RadiatorAt at(String mount) {
            return new Wish.RadiatorAt(
                    mount + "=" + pattern + "/" + WishWords.mm(thicknessHmm),
                    List.of(mount),
                    new Wish.Pick(Optional.of(pattern), Optional.of(thicknessHmm), Optional.empty()));
        }

        int area() {
            return pattern.fans() * pattern.sizeMm() * pattern.sizeMm();
        }
    }

    /** The brief's classes of radiators, largest and thickest first. */
    private List<Size> sizes() {
        return wished.asked().shapes().radiators().values().stream()
                .flatMap(List::stream)
                .map((Radiator r) ->
                        new Size(r.pattern(), r.body().thicknessMm().valueHmm()))
                .distinct()
                .sorted(Comparator.comparingInt(Size::area)
                        .thenComparingInt(Size::thicknessHmm)
                        .reversed())
                .toList();
    }

    private Optional<Stated> first(Wish.RadiatorAt given, List<Wish.RadiatorAt> tries) {
        for (Wish.RadiatorAt other : tries.subList(0, Math.min(TRIES_MAX, tries.size()))) {
            if (other.pick().equals(given.pick()) || halt.because().isPresent()) {
                continue;
            }
            List<Wish> wishes = wished.wishes().stream()
                    .map(w -> w.equals(given) ? other : w)
                    .toList();
            WishedCase tried = new WishedCase(wished.asked(), wishes);
            Optional<Candidate> had = new Breaches(tried, () -> halt.because().isPresent()).whole();
            if (had.isPresent()) {
                return Optional.of(stated(given, other, had.get()));
            }
        }
        return Optional.empty();
    }

    private Stated stated(Wish.RadiatorAt given, Wish.RadiatorAt other, Candidate had) {
        String work = had.mods().size() == 0
                ? "as delivered"
                : "with " + String.join("+", had.mods().ids(wished.asked().chassis()));
        Optional<Warmer> warmer = warmer(given, had);
        return new Stated(
                "instead:" + other.text(),
                "instead " + other.text() + " fits " + work
                        + warmer.map(Warmer::text).orElse(""),
                warmer.map(w -> new Stated.Lack(w.kelvin(), "K")));
    }

    /** How much warmer, and half the band of that. */
    private record Warmer(double kelvin, double halfBandK) {
        String text() {
            return ": " + BuildWish.number(Math.abs(kelvin), 1) + " +-" + BuildWish.number(halfBandK, 1) + " K "
                    + (kelvin >= 0 ? "warmer" : "cooler") + " than with what was wished";
        }
    }

    /** The coolant with what fits against the coolant if what was wished could hang there instead, everything else alike. */
    private Optional<Warmer> warmer(Wish.RadiatorAt given, Candidate had) {
        FitCase wide = Narrowed.of(wished, Set.of()).fitCase();
        List<Layout.Stack> fits = new ArrayList<>();
        List<Layout.Stack> ideal = new ArrayList<>();
        for (MountFrame frame : wide.frames()) {
            Optional<Shape> shape = had.shapeAt(frame);
            if (shape.isPresent()) {
                fits.add(new Layout.Stack(frame, shape.get()));
                boolean here = given.mounts().contains(frame.mount().id());
                Optional<Shape> instead = here ? alike(given, shape.get()) : shape;
                if (instead.isEmpty()) {
                    return Optional.empty();
                }
                ideal.add(new Layout.Stack(frame, instead.get()));
            }
        }
        return compare(wide, fits, ideal, had.mods());
    }

    private static Optional<Warmer> compare(
            FitCase wide, List<Layout.Stack> fits, List<Layout.Stack> ideal, ModSet mods) {
        Cooling cooling = new Cooling(wide);
        String chassis = wide.chassis().id();
        Optional<Cooling.Cooled> real = cooling.coolest(new Layout(chassis, fits), mods);
        Optional<Cooling.Cooled> dream = cooling.coolest(new Layout(chassis, ideal), mods);
        if (real.isEmpty() || dream.isEmpty()) {
            return Optional.empty();
        }
        Band band = cooling.gainBand(real.get(), dream.get());
        return Optional.of(new Warmer(
                cooling.overRoomK(real.get()) - cooling.overRoomK(dream.get()), (band.highK() - band.lowK()) / 2));
    }

    /** The wished radiator, arranged like the one that fits. */
    private Optional<Shape> alike(Wish.RadiatorAt given, Shape shape) {
        return wished.widened().shapes().all().stream()
                .filter(s -> wished.meets(s, given))
                .filter(s -> s.arrangement() == shape.arrangement())
                .filter(s -> s.fanThickness().valueHmm() == shape.fanThickness().valueHmm())
                .findFirst();
    }
}
