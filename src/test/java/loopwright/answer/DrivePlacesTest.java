package loopwright.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Place;
import org.junit.jupiter.api.Test;

/** What goes with the drive tower of the demo's case, read off its file by hand. */
class DrivePlacesTest {

    private static final Chassis TOWER = CatalogReader.read(Path.of("catalogs")).chassis("short-tower");

    private static DrivePlaces with(String... mods) {
        List<Mod> done = TOWER.mods().stream()
                .filter(m -> Arrays.asList(mods).contains(m.id()))
                .toList();
        return DrivePlaces.of(TOWER, done);
    }

    private static List<String> ids(List<Place> places) {
        return places.stream().map(Place::id).toList();
    }

    @Test
    void nothingGoesAsDelivered() {
        DrivePlaces places = with();
        assertThat(places.gone()).isEmpty();
        assertThat(ids(places.left())).containsExactly("tower-low", "tower-middle", "tower-top", "bay-drive");
        assertThat(ids(places.possible())).containsExactly("tray-back");
    }

    @Test
    void theTowerTakesItsPlacesWithIt() {
        DrivePlaces places = with("drive-tower-out");
        assertThat(ids(places.gone())).containsExactly("tower-low", "tower-middle", "tower-top");
        assertThat(ids(places.left())).containsExactly("bay-drive");
        assertThat(places.opened()).isEmpty();
        assertThat(ids(places.possible())).containsExactly("tray-back");
    }

    @Test
    void aModMakesAPlace() {
        DrivePlaces places = with("drive-tower-out", "front-bay-out", "drive-behind-tray");
        assertThat(places.left()).isEmpty();
        assertThat(ids(places.opened())).containsExactly("tray-back");
        assertThat(places.possible()).isEmpty();
    }
}
