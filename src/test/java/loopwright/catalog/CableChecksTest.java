package loopwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Checks of holes for cables, of where cable is put away, and of drives' screws, each with its message. */
class CableChecksTest {

    private static final String CUBE = "catalogs/chassis/cube.yaml";

    private static final String WIRING = """
                wiring:
                  holes:
                    - {id: h, title: Hole, at: {x_mm: 50, y_mm: 200, z_mm: 31.5}, long_mm: 40, short_mm: 20}
                  behind_tray_mm: 20
                  parking:
                    - {id: p, title: Parking, box: {x_mm: [0, 10], y_mm: [0, 10], z_mm: [0, 10]}}
                mounts:
            """;

    private static String wired(String from, String to) {
        assertThat(WIRING).contains(from);
        return WIRING.replace(from, to).stripTrailing();
    }

    private static java.util.List<String> problems(Path folder, String from, String to) {
        return CheckAcrossItemsTest.broken(folder, CUBE, "    mounts:", wired(from, to));
    }

    @Test
    void aHoleInTheTrayIsSound(@TempDir Path folder) {
        assertThat(problems(folder, "x_mm: 50", "x_mm: 50")).isEmpty();
        assertThat(problems(folder, "x_mm: 50", "x_mm: 30")).isEmpty();
    }

    @Test
    void aHoleBesideEverySheetIsRefused(@TempDir Path folder) {
        assertThat(problems(folder, "z_mm: 31.5", "z_mm: 40"))
                .hasSize(1)
                .allMatch(p -> p.contains("chassis \"cube\": wiring.holes[0].at: found (50.0, 200.0, 40.0), allowed a"
                        + " point in a sheet at most 5.0 mm thick, with the whole hole inside that sheet. Sheets are"
                        + " the boxes of obstructions, removables and added bodies."));
    }

    @Test
    void aHoleOverTheSheetsEdgeIsRefused(@TempDir Path folder) {
        assertThat(problems(folder, "x_mm: 50", "x_mm: 19.99"))
                .hasSize(1)
                .allMatch(p -> p.contains("wiring.holes[0].at: found (19.99, 200.0, 31.5)"));
    }

    @Test
    void theLongSideIsTheLonger(@TempDir Path folder) {
        assertThat(problems(folder, "long_mm: 40, short_mm: 20", "long_mm: 20, short_mm: 40"))
                .hasSize(1)
                .allMatch(p -> p.contains("wiring.holes[0].long_mm: found 20.0, allowed at least its short_mm, 40.0"));
    }

    @Test
    void cableIsPutAwayInside(@TempDir Path folder) {
        assertThat(problems(folder, "box: {x_mm: [0, 10]", "box: {x_mm: [245, 251]"))
                .hasSize(1)
                .allMatch(p -> p.contains("wiring.parking[0].box.x_mm: found [245.0, 251.0], allowed a box inside the"
                        + " chassis, 0 to 250.0"));
    }

    @Test
    void aCutHoleCutsAHole(@TempDir Path folder) {
        assertThat(CheckAcrossItemsTest.broken(folder, CUBE, "kind: take-out", "kind: cut-hole"))
                .hasSize(1)
                .allMatch(p -> p.contains("mods[0].effect: found an effect without a hole for cables, allowed what the"
                        + " kind of mod says. Or give the mod another kind."));
    }

    /** SFF-8201 gives 2.5-inch drives M3. */
    @Test
    void aDriveHasTheThreadOfItsForm(@TempDir Path folder) {
        String file = "catalogs/drives.yaml";
        String screws = "    screws: {thread: m3, depth_mm: 3, spins: false}";
        assertThat(CheckAcrossItemsTest.broken(folder, file, "    heat_W: 4", "    heat_W: 4\n" + screws))
                .isEmpty();
        assertThat(CheckAcrossItemsTest.broken(
                        folder, file, "    heat_W: 4", "    heat_W: 4\n" + screws.replace("m3", "6-32")))
                .hasSize(1)
                .allMatch(p -> p.contains("drive \"d-1\": screws.thread: found 6-32, allowed m3, as SFF-8201 has it for"
                        + " 2.5-inch drives. A screw that is forced into the other thread falls out later."));
    }

    @Test
    void onlyAPlaceForDrivesHoldsOne(@TempDir Path folder) {
        String touches = "          touches: [strip]";
        String hold = "\n          drive: {from: sides, damped: false}";
        assertThat(CheckAcrossItemsTest.broken(folder, CUBE, touches, touches + hold))
                .hasSize(1)
                .allMatch(
                        p -> p.contains("inside.places[2].drive: found how a drive is held, allowed it only at a place"
                                + " that holds drives"));
    }
}
