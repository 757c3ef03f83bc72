package loopwright.catalog.check;

import java.util.List;
import loopwright.catalog.read.ChoiceName;
import loopwright.catalog.read.Problems;
import loopwright.catalog.standard.Finishing;
import loopwright.catalog.standard.Finishing.Surface;
import loopwright.catalog.standard.Practice;

/** The practice has one paint system for each surface, each with colour, and its bands and windows run forwards. */
final class PaintSystemsAreWhole implements Check {

    private static final double MIN_PER_H = 60;

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Practice> practice : items.of(Practice.class)) {
            Finishing finishing = practice.value().finishing();
            for (Surface surface : Surface.values()) {
                long count = finishing.systems().stream()
                        .filter(s -> s.surface() == surface)
                        .count();
                if (count != 1) {
                    problems.add(practice.item()
                            .problem(
                                    "finishing.systems",
                                    count + " systems for " + ChoiceName.of(surface),
                                    "exactly one for each surface",
                                    ""));
                }
            }
            for (int i = 0; i < finishing.systems().size(); i++) {
                boolean colour = finishing.systems().get(i).steps().stream()
                        .anyMatch(s -> s.product()
                                .filter(p -> p == Finishing.Product.COLOUR)
                                .isPresent());
                if (!colour) {
                    problems.add(practice.item()
                            .problem("finishing.systems[" + i + "].steps", "no step with colour", "at least one", ""));
                }
            }
            flashes(practice, finishing, problems);
            rises(practice, finishing, problems);
        }
    }

    /** A flash that outlasts the recoat window would lead every next coat into the time in which solvent lifts the film. */
    private static void flashes(Items.Placed<Practice> practice, Finishing finishing, Problems problems) {
        for (int i = 0; i < finishing.systems().size(); i++) {
            List<Finishing.Step> steps = finishing.systems().get(i).steps();
            for (int k = 0; k < steps.size(); k++) {
                int most = steps.get(k).flash().map(Finishing.Minutes::highMin).orElse(0);
                double withinH = finishing.cure().recoatWithinH();
                if (most > withinH * MIN_PER_H) {
                    problems.add(practice.item()
                            .problem(
                                    "finishing.systems[" + i + "].steps[" + k + "].flash.high_min",
                                    String.valueOf(most),
                                    "at most cure.recoat_within_h, " + withinH + " h",
                                    ""));
                }
            }
        }
    }

    private static void rises(Items.Placed<Practice> practice, Finishing finishing, Problems problems) {
        Finishing.Cure cure = finishing.cure();
        if (!(cure.recoatWithinH() <= cure.recoatAfterH())) {
            note(
                    practice,
                    problems,
                    "cure.recoat_within_h",
                    cure.recoatWithinH(),
                    "at most recoat_after_h",
                    cure.recoatAfterH());
        }
        if (!(finishing.climate().leastC() <= finishing.climate().mostC())) {
            note(
                    practice,
                    problems,
                    "climate.least_C",
                    finishing.climate().leastC(),
                    "at most most_C",
                    finishing.climate().mostC());
        }
        if (!(finishing.colour().justVisible() <= finishing.colour().visible())) {
            note(
                    practice,
                    problems,
                    "colour.just_visible",
                    finishing.colour().justVisible(),
                    "at most visible",
                    finishing.colour().visible());
        }
        int face = finishing.film().faceMm().valueHmm();
        int most = finishing.film().faceMostMm().valueHmm();
        if (face > most) {
            note(practice, problems, "film.face_mm", face / 100.0, "at most face_most_mm", most / 100.0);
        }
    }

    private static void note(
            Items.Placed<Practice> practice,
            Problems problems,
            String field,
            double found,
            String allowed,
            double limit) {
        problems.add(practice.item().problem("finishing." + field, String.valueOf(found), allowed + ", " + limit, ""));
    }
}
