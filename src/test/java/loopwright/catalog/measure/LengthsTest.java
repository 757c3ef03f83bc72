package loopwright.catalog.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.read.FileKind;
import loopwright.quantity.Dimension;
import loopwright.quantity.Known;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Addresses of lengths; the values are read off the demo's files by hand. */
class LengthsTest {

    private static final Catalog CATALOG = CatalogReader.read(Path.of("catalogs"));
    private static final Lengths LENGTHS = new Lengths(CATALOG);

    @ParameterizedTest
    @CsvSource({
        "short-tower, shell.interior.height_mm, 43400",
        "short-tower, shell.panels.roof-sheet.features.slots.roof-slot-right.at.x_mm.to, 13300",
        "short-tower, inside.board.pose.corner.y_mm, 35600",
        "short-tower, inside.places.atx-shelf.pose.corner.z_mm, 14400",
        "short-tower, inside.obstructions.tray.boxes.1.x_mm.from, 18600",
        "short-tower, inside.removables.supply-shelf.boxes.2.x_mm.to, 18600",
        "short-tower, mounts.roof.seats.1.lengthwise_mm.2.to, 20800",
        "short-tower, mounts.roof.gasket.squeezed_mm, 100",
        "short-tower, mods.front-insert-140.effect.seats.1.seat.lengthwise_mm.1.from, 16600",
        "short-tower, mods.sfx-plate-in.effect.adds.sfx-plate.boxes.1.z_mm.to, 14600",
        "short-tower, mods.longer-feet.effect.airways.1.added_depth_mm, 1200",
        "rad-1x92-30a, body.thickness_mm, 3000",
        "rad-1x92-30a, body.seat.depth_to_tube_mm, 400",
        "rad-1x92-30a, ports.at.1.aside_mm, -1700",
        "practice, room.port_room_mm, 3600",
    })
    void aPathIsTheFieldsOfTheFile(String id, String path, int valueHmm) {
        assertThat(LENGTHS.find(id, path).orElseThrow().dimension().valueHmm()).isEqualTo(valueHmm);
        assertThat(LENGTHS.find(id, path).orElseThrow().address()).isEqualTo(id + "." + path);
    }

    @Test
    void everyAddressIsThereOnce() {
        List<String> all = LENGTHS.ids().stream()
                .flatMap(id -> LENGTHS.of(id).stream().map(Length::address))
                .toList();
        assertThat(all).hasSizeGreaterThan(2000).doesNotHaveDuplicates();
        assertThat(all).anyMatch(a -> a.startsWith("standards.boards.1.holes."));
    }

    @Test
    void onlyLengthsWithTheirPlusMinusCount() {
        assertThat(LENGTHS.find("rad-1x92-30a", "core.depth_mm")).isEmpty();
        assertThat(LENGTHS.hasOther("rad-1x92-30a", "core.depth_mm")).isTrue();
        assertThat(LENGTHS.hasOther("rad-1x92-30a", "core.length_mm")).isFalse();
        assertThat(LENGTHS.of("none")).isEmpty();
    }

    @Test
    void carriesTheRangeOfTheField() {
        assertThat(LENGTHS.find("rad-1x92-30a", "body.thickness_mm")
                        .orElseThrow()
                        .range()
                        .words())
                .isEqualTo("10 to 120");
        assertThat(LENGTHS.find("short-tower", "mounts.roof.seats.1.lengthwise_mm.2.to")
                        .orElseThrow()
                        .range()
                        .words())
                .isEqualTo("-1000 to 2000");
    }

    @ParameterizedTest
    @CsvSource({
        "shell.interior.heigth_mm, Maybe shell.interior.height_mm?",
        "interior.height, Maybe shell.interior.height_mm?",
        "interior.heigth, Maybe interior.height?",
        "quite.another.thing, ''",
    })
    void hintsAtTheNearest(String typed, String hint) {
        assertThat(LENGTHS.hint("short-tower", typed)).isEqualTo(hint);
    }

    @Test
    void replacedLengthsAreSeen() {
        Dimension to = new Dimension(43310, 15, Known.MEASURED);
        Length was = LENGTHS.find("short-tower", "shell.interior.height_mm").orElseThrow();
        Lengths after =
                LENGTHS.with(List.of(new Replacement("short-tower", was.path(), was.dimension(), to, "a test")));
        assertThat(after.find("short-tower", was.path()).orElseThrow().dimension())
                .isEqualTo(to);
        assertThat(LENGTHS.find("short-tower", was.path()).orElseThrow()).isEqualTo(was);
    }

    @Test
    void namesTheItemsOfAKind() {
        assertThat(LENGTHS.ids(FileKind.CHASSIS))
                .contains("short-tower", "slim")
                .isSorted();
        assertThat(LENGTHS.ids(FileKind.PRACTICE)).containsExactly("practice");
    }
}
