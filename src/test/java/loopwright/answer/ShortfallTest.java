package loopwright.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import loopwright.answer.Unlocks.AtMount;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.TinyCatalog;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How many millimetres are lacking, by hand. */
class ShortfallTest {

    /** 52 mm from the roof down to the memory; radiator 30 and fan 25 want 55. */
    @Test
    void threeMillimetresShortAtTheMemory(@TempDir Path folder) {
        // Board 40 + 1.57 over the floor, memory 80 high, roof 173.57: 52 between; the seat keeps clear of the card.
        TinyCatalog tiny = TinyCatalog.in(folder)
                .change("catalogs/memory.yaml", "height_mm: 34", "height_mm: 80")
                .change("catalogs/chassis/cube.yaml", "height_mm: 300}", "height_mm: 173.57}")
                .change("catalogs/chassis/cube.yaml", "z_mm: [0, 300]", "z_mm: [0, 170]")
                .change("catalogs/chassis/cube.yaml", "sideways_mm: [[120, 130]]", "sideways_mm: [[84, 86]]");
        Catalog catalog = CatalogReader.read(tiny.folder());
        FitCase fitCase = new FitCase(
                catalog, catalog.chassis("cube"), CatalogReader.readBrief(tiny.file("scenarios/brief.yaml"), catalog));
        UnlockAnswer answer = new UnlockAnswer(fitCase, FitWish.ALL, List.of(), Halt.NEVER);
        AtMount roof = answer.mounts().get(0);
        assertThat(roof.unlocked()).isEmpty();
        assertThat(roof.impossible()).singleElement().satisfies(i -> {
            assertThat(i.shortfall().shortfallHmm()).contains(300);
            assertThat(i.shortfall().blockedBy()).contains("memory");
        });
        assertThat(answer.combinations()).isEmpty();
        assertThat(answer.asDeliveredOverRoomK()).isEmpty();
    }
}
