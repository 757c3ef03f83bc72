package loopwright.workshop.finish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.brief.Look;
import loopwright.catalog.brief.Look.Colour;
import loopwright.catalog.brief.Look.Gloss;
import loopwright.catalog.brief.Look.Lab;
import loopwright.catalog.brief.Look.Match;
import loopwright.catalog.brief.Look.On;
import loopwright.catalog.standard.Finishing.ColourSteps;
import loopwright.workshop.finish.ColourMatch.Seen;
import org.junit.jupiter.api.Test;

/** Pairs that are meant to match: just visible from 1, visible from 2; common practice, no source. */
class ColourMatchTest {

    private static final ColourSteps STEPS = new ColourSteps(1, 2);

    private static Colour colour(String id, Gloss gloss, Lab lab) {
        return new Colour(id, id, On.PAINT, lab, gloss, Optional.empty());
    }

    private static ColourMatch match(Colour one, Colour other) {
        return ColourMatch.of(new Look(List.of(one, other), List.of(new Match(one.id(), other.id()))), STEPS)
                .get(0);
    }

    @Test
    void aStepItselfIsNotYetOverIt() {
        assertThat(ColourMatch.seen(1.0, STEPS)).isEqualTo(Seen.ALIKE);
        assertThat(ColourMatch.seen(1.000001, STEPS)).isEqualTo(Seen.JUST);
        assertThat(ColourMatch.seen(2.0, STEPS)).isEqualTo(Seen.JUST);
        assertThat(ColourMatch.seen(2.000001, STEPS)).isEqualTo(Seen.VISIBLE);
    }

    /** Greys of L* 50 and 51: ΔL* of 1 over a weight of about 1. */
    @Test
    void greysOneApartAreAboutOne() {
        ColourMatch greys =
                match(colour("a", Gloss.SATIN, new Lab(50, 0, 0)), colour("b", Gloss.SATIN, new Lab(51, 0, 0)));
        assertThat(greys.difference()).isBetween(0.99, 1.0);
        assertThat(greys.seen()).isEqualTo(Seen.ALIKE);
        assertThat(greys.glossDiffers()).isFalse();
    }

    @Test
    void theSameColourShinesDifferently() {
        Lab lab = new Lab(20, 1, 1);
        ColourMatch same = match(colour("a", Gloss.SATIN, lab), colour("b", Gloss.MATTE, lab));
        assertThat(same.difference()).isZero();
        assertThat(same.glossDiffers()).isTrue();
    }

    @Test
    void dyeIsCountedInWholeDrops() {
        assertThat(Dyeing.of("amber", 6, 1.2).drops()).isEqualTo(7);
        assertThat(Dyeing.of("amber", 5, 1.5).drops()).isEqualTo(8);
    }
}
