package loopwright.workshop.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.answer.Inspection;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.Look;
import loopwright.catalog.brief.Look.Colour;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.standard.Finishing;
import loopwright.catalog.standard.Finishing.Surface;
import loopwright.rank.Build;
import loopwright.workshop.template.Templates;

/**
 * Paint and colours of a build.
 *
 * @param painted what is painted
 * @param plans one a surface
 * @param colours what the brief says of them, with pairs that are meant to match
 */
public record Finish(
        PaintedParts painted,
        List<PaintPlan> plans,
        List<Cans> cans,
        Shielded shielded,
        List<FilmLoss> losses,
        Colours colours,
        Finishing practice) {

    /** Copies. */
    public Finish {
        plans = List.copyOf(plans);
        cans = List.copyOf(cans);
        losses = List.copyOf(losses);
    }

    /** What paint must not reach, and what it has to reach the same day. */
    public record Shielded(List<Mask> masks, List<BareEdge> edges) {
        /** Copies. */
        public Shielded {
            masks = List.copyOf(masks);
            edges = List.copyOf(edges);
        }
    }

    /** Colours of the brief; the first one for paint is what parts are painted in. */
    public record Colours(List<Colour> all, List<ColourMatch> matches, Optional<Dyeing> dye) {
        /** Copies. */
        public Colours {
            all = List.copyOf(all);
            matches = List.copyOf(matches);
        }

        static Colours of(Brief brief, Finishing practice, double coolantL) {
            Look look = brief.look().orElse(new Look(List.of(), List.of()));
            Optional<Dyeing> dye = look.colours().stream()
                    .filter(c -> c.dropsPerL().isPresent())
                    .findFirst()
                    .map(c -> Dyeing.of(c.title(), c.dropsPerL().orElseThrow(), coolantL));
            return new Colours(look.colours(), ColourMatch.of(look, practice.colour()), dye);
        }

        /** Colours for paint. */
        public List<Colour> paints() {
            return all.stream().filter(c -> c.on() == Look.On.PAINT).toList();
        }
    }

    /** The finish of a build with as much coolant as the brief says. */
    public static Finish of(Inspection in) {
        return of(in, in.fitCase().brief().loop().coolantL());
    }

    /**
     * The finish of a build.
     *
     * @param coolantL that is bought, above 0
     */
    public static Finish of(Inspection in, double coolantL) {
        Build build = in.build();
        Finishing practice = in.fitCase().catalog().practice().finishing();
        PaintedParts painted = PaintedParts.of(in.fitCase(), build.mods()).cutAs(Templates.of(in));
        List<Mod> done = build.mods().mods(in.fitCase().chassis());
        return new Finish(
                painted,
                plans(painted.all(), practice),
                Cans.of(painted.all(), practice),
                new Shielded(
                        Mask.of(in.fitCase(), painted.all(), done, build.stacks()),
                        BareEdge.of(in.fitCase(), done, build.stacks())),
                FilmLoss.of(painted.all(), practice.film()),
                Colours.of(in.fitCase().brief(), practice, coolantL),
                practice);
    }

    private static List<PaintPlan> plans(List<PaintedPart> parts, Finishing practice) {
        List<PaintPlan> out = new ArrayList<>();
        for (Surface surface : Surface.values()) {
            List<PaintedPart> mine =
                    parts.stream().filter(p -> p.surface() == surface).toList();
            if (!mine.isEmpty()) {
                out.add(PaintPlan.of(PaintPlan.system(practice, surface), mine));
            }
        }
        return out;
    }

    /** All that is painted, both sides, square hundredths of a millimetre. */
    public long areaHmm2() {
        return painted.all().stream().mapToLong(PaintedPart::areaHmm2).sum();
    }
}
