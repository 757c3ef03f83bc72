package loopwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Cover;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Grille;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Reservoir;
import loopwright.catalog.part.Supply;
import loopwright.catalog.part.Tube;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The demo catalogue is large enough to plan with, and every brief reads against it. */
class DemoCatalogueTest {

    private static final Catalog CATALOG = CatalogReader.read(Path.of("catalogs"));

    @Test
    void hasEnoughOfEachKind() {
        Map<Class<? extends Part>, Integer> least = Map.ofEntries(
                Map.entry(Chassis.class, 5),
                Map.entry(Radiator.class, 36),
                Map.entry(Fan.class, 24),
                Map.entry(Pump.class, 8),
                Map.entry(Reservoir.class, 8),
                Map.entry(Block.class, 10),
                Map.entry(Board.class, 12),
                Map.entry(Processor.class, 14),
                Map.entry(GraphicsCard.class, 14),
                Map.entry(Supply.class, 16),
                Map.entry(Drive.class, 8),
                Map.entry(Memory.class, 8),
                Map.entry(Tube.class, 4),
                Map.entry(Coolant.class, 5),
                Map.entry(Cover.class, 6),
                Map.entry(Grille.class, 6));
        least.forEach((kind, count) ->
                assertThat(CATALOG.all(kind)).as(kind.getSimpleName()).hasSizeGreaterThanOrEqualTo(count));
    }

    @Test
    void radiatorsCoverTheFamiliesAndThicknesses() {
        List<Radiator> all = CATALOG.all(Radiator.class);
        assertThat(all.stream().map(r -> r.pattern().sizeMm()).collect(Collectors.toSet()))
                .contains(92, 120, 140, 200);
        assertThat(all.stream().map(r -> r.pattern().fans()).collect(Collectors.toSet()))
                .containsExactlyInAnyOrder(1, 2, 3, 4);
        assertThat(all.stream().mapToInt(r -> r.body().thicknessMm().valueHmm()))
                .allMatch(t -> t >= 1900 && t <= 8600)
                .anyMatch(t -> t <= 2100)
                .anyMatch(t -> t >= 7800);
    }

    @Test
    void everyChassisHasMountsModsAndSomethingThatComesOut() {
        for (Chassis chassis : CATALOG.all(Chassis.class)) {
            assertThat(chassis.mounts()).as(chassis.id()).hasSizeBetween(3, 6);
            assertThat(chassis.mods()).as(chassis.id()).hasSizeBetween(6, 14);
            assertThat(chassis.inside().removables()).as(chassis.id()).isNotEmpty();
        }
    }

    @Test
    void everyKindOfModIsInUse() {
        Set<Mod.Kind> used = CATALOG.all(Chassis.class).stream()
                .flatMap(c -> c.mods().stream())
                .map(Mod::kind)
                .collect(Collectors.toSet());
        assertThat(used).containsExactlyInAnyOrder(Mod.Kind.values());
    }

    static Stream<String> briefs() {
        return Stream.of(
                "demo",
                "tight-budget",
                "no-visible-cuts",
                "quiet-above-all",
                "nothing-fits",
                "micro",
                "small-box",
                "slim-desk");
    }

    @ParameterizedTest
    @MethodSource("briefs")
    void everyBriefReads(String name) {
        assertThat(CatalogReader.readBrief(Path.of("scenarios", name + ".yaml"), CATALOG)
                        .chassis())
                .isNotEmpty();
    }
}
