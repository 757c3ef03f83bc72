package loopwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ports of the loop's parts, each fault with its literal message. */
class PortsCheckTest {

    private static final String FILE = "catalogs/reservoirs.yaml";

    private static String port(String id, String at, String looks, String way) {
        return "      - {id: " + id + ", " + at + ", looks: " + looks + ", way: " + way + "}\n";
    }

    private static final String SOUND = port("a", "along_mm: 60, across_mm: 20, over_mm: 10", "length-high", "in");

    private static List<String> with(Path folder, String ports) {
        return CheckAcrossItemsTest.broken(
                folder, FILE, "    port_room_mm: 30", "    port_room_mm: 30\n    ports:\n" + ports);
    }

    @Test
    void soundPortsPass(@TempDir Path folder) {
        String ports = SOUND + port("b", "along_mm: 0, across_mm: 20, over_mm: 10", "length-low", "out");
        assertThat(with(folder, ports)).isEmpty();
    }

    @Test
    void aPortLiesInTheFaceItLooksOutOf(@TempDir Path folder) {
        String ports = SOUND + port("b", "along_mm: 59, across_mm: 20, over_mm: 10", "length-high", "out");
        assertThat(with(folder, ports))
                .containsExactly(
                        FILE + ":12:27: reservoir \"t-1\": ports[1].along_mm: found 59.0, allowed 60.0, where the"
                                + " face it looks out of lies");
    }

    @Test
    void aPortIsOnTheBody(@TempDir Path folder) {
        String ports = SOUND + port("b", "along_mm: 60, across_mm: 61, over_mm: 10", "length-high", "out");
        assertThat(with(folder, ports))
                .containsExactly(FILE
                        + ":12:42: reservoir \"t-1\": ports[1].across_mm: found 61.0, allowed 0 to 60.0, the body");
    }

    @Test
    void coolantGoesThrough(@TempDir Path folder) {
        String ports = SOUND + port("b", "along_mm: 60, across_mm: 40, over_mm: 10", "length-high", "in");
        assertThat(with(folder, ports))
                .containsExactly(
                        FILE + ":11:7: reservoir \"t-1\": ports: found no port in with another port out, allowed at"
                                + " least two ports: one that may be in, another that may be out");
    }

    @Test
    void idsOfPortsAreTheirOwn(@TempDir Path folder) {
        String ports = SOUND + port("a", "along_mm: 60, across_mm: 40, over_mm: 10", "length-high", "out");
        assertThat(with(folder, ports))
                .containsExactly(
                        FILE + ":12:14: reservoir \"t-1\": ports[1].id: found a, allowed ids of their own for a"
                                + " part's ports");
    }

    @Test
    void theFillCapLiesInItsFaceToo(@TempDir Path folder) {
        String fill = "    fill: {id: cap, along_mm: 30, across_mm: 30, over_mm: 140, looks: height-high, way: in}";
        assertThat(CheckAcrossItemsTest.broken(folder, FILE, "    port_room_mm: 30", "    port_room_mm: 30\n" + fill))
                .containsExactly(FILE + ":10:59: reservoir \"t-1\": fill.over_mm: found 140.0, allowed 150.0, where the"
                        + " face it looks out of lies");
    }
}
