package loopwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.chassis.Wiring;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Plug;
import loopwright.catalog.part.Screw;
import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.Cabling;
import org.junit.jupiter.api.Test;

/** The demo's data of cables and drives goes together. */
class DemoCablesTest {

    private static final Catalog DEMO = CatalogReader.read(Path.of("catalogs"));
    private static final Cabling CABLING = DEMO.practice().cabling().orElseThrow();

    @Test
    void everyPlugIsListed() {
        assertThat(CABLING.plugs().stream().map(Cabling.PlugSize::plug)).containsExactly(Plug.values());
    }

    @Test
    void suppliesHaveTheirPlugsOnCables() {
        for (Supply supply : DEMO.all(Supply.class)) {
            Supply.Output output = supply.output();
            assertThat(plugs(supply, Plug.MAIN_24)).as(supply.id()).isEqualTo(1);
            assertThat(plugs(supply, Plug.PROCESSOR_8)).as(supply.id()).isEqualTo(output.processorPlugs());
            assertThat(plugs(supply, Plug.CARD_8)).as(supply.id()).isEqualTo(output.cardEightPinPlugs());
            assertThat(plugs(supply, Plug.CARD_16)).as(supply.id()).isEqualTo(output.cardSixteenPinPlugs());
            assertThat(plugs(supply, Plug.SATA)).as(supply.id()).isEqualTo(output.sataPlugs());
        }
    }

    private static int plugs(Supply supply, Plug plug) {
        return supply.cables().stream()
                .filter(c -> c.plug() == plug)
                .mapToInt(Supply.Cable::plugs)
                .sum();
    }

    /** The catalogue has a screw for each drive that goes in but not too deep: at least half of what it may. */
    @Test
    void everyDriveHasItsScrew() {
        for (Drive drive : DEMO.all(Drive.class)) {
            drive.screws().ifPresent(s -> {
                double depthMm = s.depthMm().valueHmm() / 100.0;
                double sheetMm = CABLING.drives().sheetMm();
                assertThat(DEMO.all(Screw.class).stream()
                                .filter(x -> x.thread() == s.thread())
                                .mapToDouble(x -> x.lengthMm().valueHmm() / 100.0))
                        .as(drive.id())
                        .anyMatch(mm -> mm <= sheetMm + depthMm && mm >= sheetMm + depthMm / 2);
            });
            assertThat(drive.screws().isPresent()).as(drive.id()).isEqualTo(drive.form() != Drive.DriveForm.M2);
        }
    }

    @Test
    void everyChassisSaysWhereCablesGo() {
        double lip = CABLING.way().grommetLipMm();
        for (Chassis chassis : DEMO.all(Chassis.class)) {
            Wiring wiring = chassis.wiring().orElseThrow();
            assertThat(wiring.parking()).as(chassis.id()).isNotEmpty();
            // The slim case has no tray.
            assertThat(wiring.holes().size())
                    .as(chassis.id())
                    .isBetween(chassis.id().equals("slim") ? 0 : 3, 6);
            for (Wiring.RoutingHole hole : wiring.holes()) {
                Cabling.PlugSize sata = CABLING.find(Plug.SATA).orElseThrow();
                assertThat(hole.longMm().valueHmm() / 100.0 - lip).as(hole.id()).isGreaterThanOrEqualTo(sata.longMm());
                assertThat(hole.shortMm().valueHmm() / 100.0 - lip)
                        .as(hole.id())
                        .isGreaterThanOrEqualTo(sata.shortMm());
            }
            List<Place> drives = chassis.inside().places().stream()
                    .filter(p ->
                            p.holds().contains(Place.Holds.D2_5) || p.holds().contains(Place.Holds.D3_5))
                    .toList();
            assertThat(drives).as(chassis.id()).allMatch(p -> p.drive().isPresent());
        }
    }
}
