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

    @TempDir
    private Path folder = Path.of("");

    /** 52 mm from the roof down to the memory; radiator 30 and fan 25 want 55. */
    @Test
    void threeMillimetresShortAtTheMemory() {
        UnlockAnswer answer = withMemoryHeight("80");
        AtMount roof = answer.mounts().get(0);
        assertThat(roof.unlocked()).isEmpty();
        assertThat(roof.impossible()).singleElement().satisfies(i -> {
            assertThat(i.shortfall().shortfallHmm()).contains(300);
            assertThat(i.shortfall().blockedBy()).contains("memory");
        });
        assertThat(answer.combinations()).isEmpty();
        assertThat(answer.asDeliveredOverRoomK()).isEmpty();
    }

    @Test
    void threeMillimetresLowerItFits() {
        AtMount roof = withMemoryHeight("77").mounts().get(0);
        assertThat(roof.impossible()).isEmpty();
        assertThat(roof.unlocked())
                .singleElement()
                .satisfies(u -> assertThat(u.ways()).allMatch(w -> w.gain().isEmpty()));
        assertThat(withMemoryHeight("77.01").mounts().get(0).impossible())
                .singleElement()
                .satisfies(i -> assertThat(i.shortfall().shortfallHmm()).contains(1));
    }

    /** Roof at 300, board's top at 166.5 + 1.5; the seat keeps clear of the card; the supply lies under the tray. */
    private UnlockAnswer withMemoryHeight(String mm) {
        return unlock(roof(mm));
    }

    private TinyCatalog roof(String mm) {
        String chassis = "catalogs/chassis/cube.yaml";
        return TinyCatalog.in(folder)
                .change("catalogs/memory.yaml", "height_mm: 34", "height_mm: " + mm)
                .change(
                        "catalogs/graphics-cards.yaml",
                        "height_mm: 130, top_room_mm: 40",
                        "height_mm: 80, top_room_mm: 20")
                .change(chassis, "y_mm: 330, z_mm: 40}", "y_mm: 330, z_mm: 166.5}")
                .change(chassis, "sideways_mm: [[120, 130]]", "sideways_mm: [[84, 86]]")
                .change(chassis, "{x_mm: 120, y_mm: 60, z_mm: 5}", "{x_mm: 245, y_mm: 335, z_mm: 5}")
                .change(chassis, "z_mm: [30, 33]", "z_mm: [150, 153]")
                .change("scenarios/brief.yaml", "drives: [d-1]", "drives: []");
    }

    private static UnlockAnswer unlock(TinyCatalog tiny) {
        Catalog catalog = CatalogReader.read(tiny.folder());
        FitCase fitCase = new FitCase(
                catalog, catalog.chassis("cube"), CatalogReader.readBrief(tiny.file("scenarios/brief.yaml"), catalog));
        return new UnlockAnswer(fitCase, FitWish.ALL, List.of(), Halt.NEVER);
    }
}
