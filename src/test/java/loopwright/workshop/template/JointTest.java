package loopwright.workshop.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import loopwright.catalog.chassis.Panel;
import org.junit.jupiter.api.Test;

class JointTest {

    /** A sheet maker's page: 100 mm, 15 K, 7.7e-5 /K is outside of ±0.1. */
    @Test
    void agreesWithThePublishedExample() {
        assertThat(Joint.playMm(100, 77, 15)).isCloseTo(0.1155, within(1e-9));
    }

    /** By hand: 0.5 m × 7e-5 /K × 40 K. */
    @Test
    void agreesWithAPanelWorkedByHand() {
        assertThat(Joint.playMm(500, 70, 40)).isCloseTo(1.40, within(1e-9));
    }

    @Test
    void refusesNaN() {
        assertThatThrownBy(() -> Joint.playMm(Double.NaN, 77, 15)).isInstanceOf(IllegalArgumentException.class);
    }

    /** By hand: 280 mm of acrylic in steel: 280 × (77 − 12)e-6 × 40 = 0.728; 0.5 + 0.364 = 0.864, up to 0.87; film 0.2. */
    @Test
    void isFitAndHalfThePlayAndTwoFilms() {
        Joint joint = Joint.of(Demo.alone("slim", "longer-feet"), 28_000, Panel.Material.ACRYLIC, Panel.Material.STEEL);
        assertThat(joint).isEqualTo(new Joint(107, 87, 100));
    }
}
