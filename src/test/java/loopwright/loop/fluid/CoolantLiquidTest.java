package loopwright.loop.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Optional;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Coolant.BaseLiquid;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which liquid a coolant of the catalogue is. */
class CoolantLiquidTest {

    private static final Optional<Double> NONE = Optional.empty();

    private static Coolant coolant(BaseLiquid base, Optional<Double> massPercent, Optional<Double> volumePercent) {
        return new Coolant("c", "c", Optional.empty(), new Purchase(1, 1), base, massPercent, volumePercent, true, 12);
    }

    @Test
    void waterIsWaterWhetherItSaysZeroOrNothing() {
        assertThat(CoolantLiquid.of(coolant(BaseLiquid.WATER, NONE, NONE))).isInstanceOf(Water.class);
        assertThat(CoolantLiquid.of(coolant(BaseLiquid.WATER, Optional.of(0.0), NONE)))
                .isInstanceOf(Water.class);
        assertThat(CoolantLiquid.of(coolant(BaseLiquid.PROPYLENE_GLYCOL, NONE, Optional.of(0.0))))
                .isInstanceOf(Water.class);
    }

    /** 40 % is another mixture by volume than by mass: 39.6 % and 37.5 % by volume are 40 % by mass (ASHRAE). */
    @ParameterizedTest
    @CsvSource({"PROPYLENE_GLYCOL, PROPYLENE, 39.6", "ETHYLENE_GLYCOL, ETHYLENE, 37.5"})
    void takesTheShareByMassOrByVolume(BaseLiquid base, Glycol glycol, double volumePercent) {
        GlycolWater byMass = (GlycolWater) CoolantLiquid.of(coolant(base, Optional.of(40.0), NONE));
        assertThat(byMass.glycol()).isEqualTo(glycol);
        assertThat(byMass.massFraction()).isCloseTo(0.40, within(1e-12));

        GlycolWater byVolume = (GlycolWater) CoolantLiquid.of(coolant(base, NONE, Optional.of(volumePercent)));
        assertThat(byVolume.massFraction()).isCloseTo(0.40, within(1e-12));

        GlycolWater fortyByVolume = (GlycolWater) CoolantLiquid.of(coolant(base, NONE, Optional.of(40.0)));
        assertThat(fortyByVolume.viscosityPaS(25)).isGreaterThan(byMass.viscosityPaS(25));
    }

    @Test
    void refusesAShareSaidTwiceOrNotAtAll() {
        String message = "coolant c must give its glycol once, by mass or by volume";
        assertThatThrownBy(() -> CoolantLiquid.of(coolant(BaseLiquid.ETHYLENE_GLYCOL, NONE, NONE)))
                .hasMessage(message);
        assertThatThrownBy(() ->
                        CoolantLiquid.of(coolant(BaseLiquid.PROPYLENE_GLYCOL, Optional.of(25.0), Optional.of(24.4))))
                .hasMessage(message);
    }

    @Test
    void everyCoolantOfTheDemoHasALiquid() {
        for (Coolant coolant : CatalogReader.read(Path.of("catalogs")).all(Coolant.class)) {
            Liquid liquid = CoolantLiquid.of(coolant);
            assertThat(liquid.viscosityPaS(30)).as(coolant.id()).isBetween(0.7e-3, 4e-3);
            assertThat(liquid.freezingC()).as(coolant.id()).isBetween(-25.0, 0.0);
        }
    }
}
