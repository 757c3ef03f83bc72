package loopwright.fit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.chassis.Shell;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.fit.Seating.Hindrance;
import loopwright.quantity.Dimension;

/**
 * The thickest radiator that a mount without one would still take, pattern by pattern.
 *
 * <p>Of a pattern, radiators are tried that measure like one of the brief's but for their thickness (where the brief has
 * none, like one of the catalogue's), at either end, in every arrangement, with the thinnest fans.
 */
final class EmptyMount {

    /** The thinnest that is looked for where the catalogue has no radiator that says, 20 mm; common practice, no source. */
    private static final int THINNEST_HMM = 2000;

    private final FitCase fitCase;
    private final RadiatorGrowth radiators;
    private final MountFrame frame;
    private final ModSet mods;
    private final Surroundings surroundings;

    EmptyMount(FitCase fitCase, RadiatorGrowth radiators, MountFrame frame, ModSet mods, Surroundings surroundings) {
        this.fitCase = fitCase;
        this.radiators = radiators;
        this.frame = frame;
        this.mods = mods;
        this.surroundings = surroundings;
    }

    /** What goes, for each pattern that has a seat. */
    List<Growth> growths() {
        List<Growth> out = new ArrayList<>();
        for (Pattern pattern : patterns()) {
            List<RadiatorOutline> outlines = outlines(pattern);
            Optional<Dimension> fans = thinnestFan(pattern);
            if (!outlines.isEmpty() && fans.isPresent()) {
                out.add(best(pattern, shapes(outlines, fans.get())));
            }
        }
        return out;
    }

    private SortedSet<Pattern> patterns() {
        SortedSet<Pattern> out = new TreeSet<>();
        fitCase.seating().seats(frame.mount(), mods).forEach(s -> out.add(s.pattern()));
        return out;
    }

    /** The outlines to try, as thin as any radiator is. */
    private List<RadiatorOutline> outlines(Pattern pattern) {
        List<RadiatorOutline> brief =
                outlines(pattern, fitCase.shapes().radiators().values().stream().flatMap(List::stream));
        return brief.isEmpty() ? outlines(pattern, fitCase.catalog().all(Radiator.class).stream()) : brief;
    }

    private List<RadiatorOutline> outlines(Pattern pattern, Stream<Radiator> all) {
        Map<String, RadiatorOutline> out = new TreeMap<>();
        all.filter(r -> r.pattern().equals(pattern))
                .map(RadiatorOutline::of)
                .filter(RadiatorOutline::isKnown)
                .map(o -> RadiatorGrowth.thick(o, thinnestHmm()))
                .forEach(o -> out.put(o.text(), o));
        return List.copyOf(out.values());
    }

    private int thinnestHmm() {
        return fitCase.catalog().all(Radiator.class).stream()
                .map(r -> r.body().thicknessMm())
                .filter(d -> !d.isUnknown())
                .mapToInt(Dimension::valueHmm)
                .min()
                .orElse(THINNEST_HMM);
    }

    private Optional<Dimension> thinnestFan(Pattern pattern) {
        Optional<Dimension> brief = thinnest(
                pattern,
                fitCase.shapes().fans().values().stream().flatMap(List::stream).toList());
        return brief.isPresent() ? brief : thinnest(pattern, fitCase.catalog().all(Fan.class));
    }

    private static Optional<Dimension> thinnest(Pattern pattern, Collection<Fan> fans) {
        return fans.stream()
                .filter(f -> f.frame().sizeMm() == pattern.sizeMm())
                .map(f -> f.frame().thicknessMm())
                .filter(d -> !d.isUnknown())
                .min(Comparator.comparingInt(Dimension::valueHmm));
    }

    private static List<Shape> shapes(List<RadiatorOutline> outlines, Dimension fans) {
        List<Shape> out = new ArrayList<>();
        for (Arrangement arrangement : Arrangement.OF_RADIATORS) {
            for (RadiatorOutline outline : outlines) {
                for (PortEnd end : PortEnd.values()) {
                    out.add(new Shape(outline, fans, arrangement, end));
                }
            }
        }
        return out;
    }

    /** The best so far: a shape as thin as it starts, and how much thicker it can be. */
    private record Best(Shape shape, GrowthLimit limit, int mostHmm) {

        int thicknessHmm() {
            return shape.thicknessHmm() + mostHmm;
        }
    }

    private Growth best(Pattern pattern, List<Shape> shapes) {
        Optional<Best> best = Optional.empty();
        for (Shape shape : shapes) {
            if (fitCase.seating().hindrance(frame, shape, mods) == Hindrance.NONE) {
                best = better(best, shape);
            }
        }
        return new Growth(
                Growth.Measure.RADIATOR_THICKNESS,
                Optional.of(new Growth.At(frame, pattern, best.map(b -> RadiatorGrowth.grown(b.shape(), b.mostHmm())))),
                Optional.empty(),
                best.map(Best::thicknessHmm),
                best.map(b -> b.limit().blocker().beyond(b.mostHmm())).orElseGet(() -> why(shapes)));
    }

    /** The shape, where its radiator can be thicker than the best so far. */
    private Optional<Best> better(Optional<Best> best, Shape shape) {
        GrowthLimit limit = new GrowthLimit(surroundings, radiators.of(frame, shape, mods), interior());
        int toBeat = best.map(b -> b.thicknessHmm() + 1 - shape.thicknessHmm()).orElse(0);
        if (!limit.standsAt(0) || (toBeat > 0 && !limit.standsAt(toBeat))) {
            return best;
        }
        OptionalInt most = limit.most();
        return most.isEmpty() || most.getAsInt() < toBeat ? best : Optional.of(new Best(shape, limit, most.getAsInt()));
    }

    /** Why not even the thinnest goes: the first single thing that is in the way, or the mildest hindrance. */
    private String why(List<Shape> shapes) {
        Hindrance mildest = Hindrance.NO_SEAT;
        boolean hangs = false;
        for (Shape shape : shapes) {
            Hindrance hindrance = fitCase.seating().hindrance(frame, shape, mods);
            if (hindrance != Hindrance.NONE) {
                mildest = hindrance.compareTo(mildest) > 0 ? hindrance : mildest;
                continue;
            }
            hangs = true;
            Optional<String> met = new GrowthLimit(surroundings, radiators.of(frame, shape, mods), interior())
                    .blocker()
                    .atAll();
            if (met.isPresent()) {
                return met.get();
            }
        }
        return hangs ? Blocker.several() : mildest.text();
    }

    private Shell.Interior interior() {
        return fitCase.chassis().shell().interior();
    }
}
